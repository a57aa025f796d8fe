import { intersection, offset } from "../geometry/clip.ts";
import { isConvex } from "../geometry/convex.ts";
import { signedArea } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";

/**
 * Cutting and drawing in of ground, quick where it is convex, as the parts of most beds are: cut along one straight line
 * after another it stays one convex ring.
 */

/** Area of rings of ground of which those that run the other way are holes, mm². */
export const groundArea = (rings: readonly Ring[]): number =>
  rings.reduce((sum, ring) => sum + signedArea(ring), 0);

export const boxRing = ({ minX, minY, maxX, maxY }: Box): Ring => [
  [minX, minY],
  [maxX, minY],
  [maxX, maxY],
  [minX, maxY],
];

/** The part of some ground that lies in an upright box. */
export function clipToBox(rings: readonly Ring[], box: Box): readonly Ring[] {
  const convex = onlyConvex(rings);
  if (!convex) return rings.length > 0 ? intersection(rings, [boxRing(box)]) : [];
  let cut = cutAlong(convex, 1, 0, box.minX);
  cut = cutAlong(cut, -1, 0, -box.maxX);
  cut = cutAlong(cut, 0, 1, box.minY);
  cut = cutAlong(cut, 0, -1, -box.maxY);
  return cut.length < 3 ? [] : [cut];
}

/** Ground that is at least so far from the edge. @param by mm, above 0 */
export function drawnIn(rings: readonly Ring[], by: number): readonly Ring[] {
  const convex = onlyConvex(rings);
  if (!convex) return rings.length > 0 ? offset(rings, -by, "round") : [];
  let left = convex;
  let from = convex.at(-1)!;
  for (const to of convex) {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(dx, dy);
    // Inwards of a side of a clockwise ring lies a quarter turn clockwise.
    const [x, y] = [-dy / length, dx / length];
    if (length > 0) left = cutAlong(left, x, y, from[0] * x + from[1] * y + by);
    if (left.length < 3) return [];
    from = to;
  }
  return [left];
}

function onlyConvex(rings: readonly Ring[]): Ring | null {
  const [only, another] = rings;
  return only && !another && isConvex(only) ? only : null;
}

/**
 * What of a convex ring lies where x·nx + y·ny is at least `least`.
 * @source I. Sutherland, G. Hodgman, "Reentrant polygon clipping", 1974
 */
function cutAlong(ring: Ring, nx: number, ny: number, least: number): Ring {
  const over = ring.map(([x, y]) => x * nx + y * ny - least);
  if (over.every((above) => above >= 0)) return ring;
  const left: Point[] = [];
  let before = ring.length - 1;
  for (let i = 0; i < ring.length; i++) {
    const [was, is] = [over[before]!, over[i]!];
    if ((was > 0 && is < 0) || (was < 0 && is > 0))
      left.push(between(ring[before]!, ring[i]!, was / (was - is)));
    if (is >= 0) left.push(ring[i]!);
    before = i;
  }
  return left;
}

const between = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + (bx - ax) * share,
  ay + (by - ay) * share,
];
