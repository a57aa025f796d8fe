import { Clipper, EndType, JoinType } from "clipper2-ts";
import { obstaclesOf } from "../../src/access/obstacles.ts";
import { difference, regionsOf } from "../../src/geometry/clip.ts";
import { contains } from "../../src/geometry/ring.ts";
import { type Garden, type ItemOf, outlineOf, type Point, type Region, type Ring } from "../../src/index.ts";

/**
 * The slow, plain way to ask whether somebody gets through: shrink the free ground by half the width and see whether a
 * place at the entrance and one at the bed lie in the same piece.
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
  return { half: width / 2, regions: regionsOf(shrunk(free, width / 2), contains) };
}

/** Whole micrometres, and arcs whose chords lie within 20 of them. */
const PER_MM = 1000;
const ARC_TOLERANCE = 20;

function shrunk(rings: readonly Ring[], by: number): Ring[] {
  const paths = rings.map((ring) =>
    ring.map(([x, y]) => ({ x: Math.round(x * PER_MM), y: Math.round(y * PER_MM) })),
  );
  const { Round } = JoinType;
  return Clipper.inflatePaths(paths, -by * PER_MM, Round, EndType.Polygon, 2, ARC_TOLERANCE).map((path) =>
    path.map(({ x, y }): Point => [x / PER_MM, y / PER_MM]),
  );
}

/** Rounding to micrometres, of the ground and of what is shrunk. */
const SLACK = 0.005;

/** Whether a disc that touches the point can come to touch the bed. */
export function joins({ half, regions }: Eroded, from: Point, bed: ItemOf<"bed">): boolean {
  const outline = outlineOf(bed);
  return regions.some(
    (region) => nearRegion(region, [from], half + SLACK) && nearRegion(region, outline, half + SLACK),
  );
}

/** The pieces of ground that a disc which touches any of some points can be in. */
export const enteredFrom = ({ half, regions }: Eroded, points: readonly Point[]): Eroded => ({
  half,
  regions: regions.filter((region) => points.some((point) => nearRegion(region, [point], half + SLACK))),
});

/** Whether a disc's middle can be at a place. */
export const holds = ({ regions }: Eroded, middle: Point): boolean =>
  regions.some((region) => nearRegion(region, [middle], SLACK));

function nearRegion({ outer, holes }: Region, ring: Ring, within: number): boolean {
  const inRegion = ([x, y]: Point) =>
    contains(outer, [x, y]) && !holes.some((hole) => contains(hole, [x, y]));
  return ring.some(inRegion) || [outer, ...holes].some((other) => areNear(ring, other, within));
}

/** Whether two outlines come so near each other: every corner against every side, both ways. */
const areNear = (a: Ring, b: Ring, within: number): boolean =>
  isCornerNear(a, b, within) || isCornerNear(b, a, within);

function isCornerNear(corners: Ring, sides: Ring, within: number): boolean {
  let [ax, ay] = sides.at(-1)!;
  for (const [bx, by] of sides) {
    const [ux, uy] = [bx - ax, by - ay];
    const square = ux * ux + uy * uy || 1;
    const [left, right] = ux < 0 ? [bx - within, ax + within] : [ax - within, bx + within];
    const [above, below] = uy < 0 ? [by - within, ay + within] : [ay - within, by + within];
    for (const [x, y] of corners) {
      if (x < left || x > right || y < above || y > below) continue;
      const along = ((x - ax) * ux + (y - ay) * uy) / square;
      const t = along < 0 ? 0 : Math.min(1, along);
      if ((x - ax - t * ux) ** 2 + (y - ay - t * uy) ** 2 <= within * within) return true;
    }
    [ax, ay] = [bx, by];
  }
  return false;
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
