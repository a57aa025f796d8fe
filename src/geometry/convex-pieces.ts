import { isConvex } from "./convex.ts";
import type { Point, Ring } from "./types.ts";

/**
 * Cuts ground into convex pieces: the ring itself where it is convex, otherwise slabs from one corner's height to the next.
 * @param rings of ground that do not cross each other; rings within rings are holes
 */
export function convexPieces(rings: readonly Ring[]): readonly Ring[] {
  const [only, another] = rings;
  if (only && !another && isConvex(only)) return [only];
  const heights = [...new Set(rings.flatMap((ring) => ring.map(([, y]) => y)))].sort((a, b) => a - b);
  return heights.slice(1).flatMap((bottom, i) => slabPieces(rings, heights[i]!, bottom));
}

// No corner lies inside a slab, so the sides that cross it bound trapezia, every second of them ground.
function slabPieces(rings: readonly Ring[], top: number, bottom: number): Ring[] {
  const middle = (top + bottom) / 2;
  const sides = rings
    .flatMap((ring) => ring.map((corner, i) => [corner, ring[(i + 1) % ring.length]!] as const))
    .filter(([[, ay], [, by]]) => ay > middle !== by > middle)
    .sort((a, b) => xAt(a, middle) - xAt(b, middle));
  const pieces: Ring[] = [];
  for (let i = 0; i + 1 < sides.length; i += 2) {
    const [left, right] = [sides[i]!, sides[i + 1]!];
    pieces.push([
      [xAt(left, top), top],
      [xAt(right, top), top],
      [xAt(right, bottom), bottom],
      [xAt(left, bottom), bottom],
    ]);
  }
  return pieces;
}

function xAt([[ax, ay], [bx, by]]: readonly [Point, Point], y: number): number {
  if (y === ay) return ax; // exact at corners
  if (y === by) return bx;
  return ax + ((y - ay) * (bx - ax)) / (by - ay);
}

/** The two parts of a convex ring on either side of an upright (axis 0) or level (axis 1) line. */
export function halves(ring: Ring, axis: 0 | 1, at: number): readonly [Ring, Ring] {
  const [low, high]: [Point[], Point[]] = [[], []];
  let before = ring.at(-1)!;
  for (const corner of ring) {
    if (before[axis] < at !== corner[axis] < at && before[axis] !== at && corner[axis] !== at) {
      const share = (at - before[axis]) / (corner[axis] - before[axis]);
      const crossing: Point = [
        before[0] + share * (corner[0] - before[0]),
        before[1] + share * (corner[1] - before[1]),
      ];
      low.push(crossing);
      high.push(crossing);
    }
    if (corner[axis] <= at) low.push(corner);
    if (corner[axis] >= at) high.push(corner);
    before = corner;
  }
  return [low, high];
}
