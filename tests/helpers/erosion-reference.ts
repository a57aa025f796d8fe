import { obstaclesOf } from "../../src/access/obstacles.ts";
import { difference, offset, regionsOf } from "../../src/geometry/clip.ts";
import { contains } from "../../src/geometry/ring.ts";
import { type Garden, type ItemOf, outlineOf, type Point, type Region, type Ring } from "../../src/index.ts";

/**
 * The slow, plain way to ask whether somebody gets through: shrink the free ground by half the width and see whether a
 * place at the entrance and one at the bed lie in the same piece. Rounding of the library that shrinks: 0.05 mm.
 */

export interface Eroded {
  readonly half: number;
  readonly regions: readonly Region[];
}

export function eroded(garden: Garden, width: number): Eroded {
  const free = difference(
    [garden.yard],
    obstaclesOf(garden).map(({ ring }) => ring),
  );
  return { half: width / 2, regions: regionsOf(offset(free, -width / 2, "round"), contains) };
}

const SLACK = 0.05;

/** Whether a disc that touches the point can come to touch the bed. */
export function joins({ half, regions }: Eroded, from: Point, bed: ItemOf<"bed">): boolean {
  const outline = outlineOf(bed);
  return regions.some(
    (region) => nearRegion(region, [from], half + SLACK) && nearRegion(region, outline, half + SLACK),
  );
}

function nearRegion({ outer, holes }: Region, ring: Ring, within: number): boolean {
  const inRegion = ([x, y]: Point) =>
    contains(outer, [x, y]) && !holes.some((hole) => contains(hole, [x, y]));
  return ring.some(inRegion) || [outer, ...holes].some((other) => apart(ring, other) <= within);
}

/** Distance between two outlines, every corner against every side, both ways. */
function apart(a: Ring, b: Ring): number {
  return Math.min(cornersTo(a, b), cornersTo(b, a));
}

function cornersTo(corners: Ring, sides: Ring): number {
  let least = Infinity;
  sides.forEach(([ax, ay], i) => {
    const [bx, by] = sides[(i + 1) % sides.length]!;
    const [ux, uy] = [bx - ax, by - ay];
    for (const [x, y] of corners) {
      const along = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy || 1);
      const t = Math.min(1, Math.max(0, along));
      least = Math.min(least, Math.hypot(x - ax - t * ux, y - ay - t * uy));
    }
  });
  return least;
}

/** Widest width for which `joins` holds for any of the points, by halving the span, to 0.2 mm. */
export function widestByErosion(
  garden: Garden,
  from: readonly Point[],
  bed: ItemOf<"bed">,
  most = 4000,
): number {
  const fits = (width: number) => {
    const ground = eroded(garden, width);
    return from.some((point) => joins(ground, point, bed));
  };
  let [low, high] = [0, most];
  if (fits(most)) return most;
  while (high - low > 0.2) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}
