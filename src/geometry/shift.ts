import { difference, intersection, swept, union } from "./clip.ts";
import { convexHull, convexSum, isConvex } from "./convex.ts";
import { boxDistance, boxOf, overlaps } from "./gap.ts";
import { contains, perimeter, ringArea } from "./ring.ts";
import { nearestOnSegment } from "./segment.ts";
import type { Point, Ring } from "./types.ts";
import { add, scale, subtract } from "./vector.ts";

/** A move over the plan, [dx, dy] in mm. */
export type Shift = Point;

export interface Overlap {
  /** Length of the smallest shift that parts the two, mm. */
  readonly depth: number;
  /** That shift, of the first. */
  readonly by: Shift;
}

/**
 * Above this many pairs of corners an outline that is not convex is parted as if its bays were filled: the shift still
 * clears, but may be longer than it need be. A U against a round stays below it, a keyhole against a round does not.
 */
const MOST_PAIRS = 1500;

/**
 * How deep two outlines overlap, as the smallest shift of the first that parts them.
 * @returns null where they only touch or stand apart
 */
export function overlapOf(first: Ring, second: Ring): Overlap | null {
  if (!overlaps(first, second)) return null;
  const by = nearestShift([blockedShifts(first, second)], null);
  return by && { depth: Math.hypot(...by), by };
}

/**
 * Shifts of the first outline that would bring it over the second: what may be left out of any move.
 * @returns rings in the plane of shifts; those running the other way are holes
 * @source the Minkowski sum of the second outline and the first turned about the origin: T. Lozano-Perez, "Spatial
 *   planning: a configuration space approach", 1983
 */
export function blockedShifts(moving: Ring, fixed: Ring): Ring[] {
  const turned = moving.map((corner) => scale(corner, -1));
  if (isConvex(turned) && isConvex(fixed)) return [convexSum(turned, fixed)];
  if (turned.length * fixed.length > MOST_PAIRS) return [convexSum(convexHull(turned), convexHull(fixed))];
  // Where no outline crosses the other, one lies in the other: a copy of each set at a corner of the other covers that.
  const covered = [copyAt(turned, fixed[0]), copyAt(fixed, turned[0])];
  return withoutSeams(union([...swept(turned, fixed), ...covered]));
}

/** Shifts of an outline that keep it in the yard; empty where it is too large for it. */
export function shiftsWithin(moving: Ring, yard: Ring): Ring[] {
  const turned = moving.map((corner) => scale(corner, -1));
  // In the yard is: one corner is in it, and no side of the yard comes into the outline.
  return withoutSeams(difference([copyAt(yard, turned[0])], swept(turned, yard)));
}

/**
 * The shortest shift that is not blocked.
 * @param blocked from `blockedShifts`, one list for each thing to keep clear of
 * @param within shifts to choose from, from `shiftsWithin`; null for all
 * @returns null where there is none
 */
export function nearestShift(
  blocked: readonly (readonly Ring[])[],
  within: readonly Ring[] | null,
): Shift | null {
  const all = blocked.flat();
  if (within === null) {
    const covered = all.length > 1 ? withoutSeams(union(all)) : all;
    return isIn(covered, [0, 0]) ? nearestOnRings(covered) : [0, 0];
  }
  const free = all.length > 0 ? withoutSeams(difference(within, all)) : within;
  return isIn(free, [0, 0]) ? [0, 0] : nearestOnRings(free);
}

/** Thinner than this a ring is a seam that rounding has left between two pieces, not room to stand in, mm. */
const SEAM = 0.01;

const withoutSeams = (rings: readonly Ring[]): Ring[] =>
  rings.filter((ring) => ringArea(ring) > SEAM * perimeter(ring));

/** Shifts of at most `most` mm along x and along y. */
export const shiftsUpTo = (most: number, within: readonly Ring[]): Ring[] =>
  intersection(within, [
    [
      [-most, -most],
      [most, -most],
      [most, most],
      [-most, most],
    ],
  ]);

/** Whether two outlines lie within `far` mm of each other, judged by their bounds. */
export const isNear = (first: Ring, second: Ring, far: number): boolean =>
  boxDistance(boxOf(first), boxOf(second)) <= far;

const copyAt = (ring: Ring, at: Point | undefined): Ring => ring.map((corner) => add(corner, at ?? [0, 0]));

/** Even-odd over outer rings and holes alike. */
const isIn = (rings: readonly Ring[], point: Point): boolean =>
  rings.filter((ring) => contains(ring, point)).length % 2 === 1;

function nearestOnRings(rings: readonly Ring[]): Point | null {
  let best: Point | null = null;
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      const near = a && nearestOnSegment([0, 0], a, b);
      if (near && (!best || Math.hypot(...near) < Math.hypot(...best))) best = near;
      a = b;
    }
  }
  // Rid of -0, which would be written as such.
  return best && subtract(best, [0, 0]);
}
