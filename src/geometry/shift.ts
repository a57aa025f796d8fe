import { difference, intersection, union } from "./clip.ts";
import { convexHull, convexSum } from "./convex.ts";
import { convexPieces } from "./convex-pieces.ts";
import { boxDistance, boxOf, overlaps } from "./gap.ts";
import { boundsOf, contains, perimeter, ringArea } from "./ring.ts";
import { nearestOnSegment } from "./segment.ts";
import type { Point, Ring } from "./types.ts";
import { scale, subtract } from "./vector.ts";

/** A move over the plan, [dx, dy] in mm. */
export type Shift = Point;

export interface Overlap {
  /** Length of the smallest shift that parts the two, mm. */
  readonly depth: number;
  /** That shift, of the first. */
  readonly by: Shift;
}

/**
 * An outline of more convex pieces than this is moved and kept clear of as if its bays were filled: a shift still
 * clears, but may be longer than it need be. L, U and bent paths stay below it, a keyhole does not.
 */
const MOST_PIECES = 24;

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
 * @returns convex rings in the plane of shifts, which overlap each other where an outline is not convex
 * @source the Minkowski sum of the second outline and the first turned about the origin: T. Lozano-Perez, "Spatial
 *   planning: a configuration space approach", 1983
 */
export function blockedShifts(moving: Ring, fixed: Ring): Ring[] {
  const turned = piecesOf(moving).map(turnedRound);
  return piecesOf(fixed).flatMap((piece) => turned.map((own) => convexSum(own, piece)));
}

/** Shifts of an outline that would bring a side of the yard into it, side by side: convex rings, as `blockedShifts`. */
export function shiftsOverSides(moving: Ring, yard: Ring): Ring[][] {
  const turned = piecesOf(moving).map(turnedRound);
  return yard.map((corner, i) => turned.map((own) => convexSum(own, [corner, yard[(i + 1) % yard.length]!])));
}

/**
 * Shifts of an outline that keep it in the yard; empty where it is too large for it.
 * @param most only shifts up to this far along x and along y are asked for, mm
 */
export function shiftsWithin(moving: Ring, yard: Ring, most: number): Ring[] {
  const turned = piecesOf(moving).map(turnedRound);
  const sides = yard
    .map((corner, i): Ring => [corner, yard[(i + 1) % yard.length]!])
    .filter((side) => boxDistance(boxOf(moving), boundsOf(side)) <= most);
  // In the yard is: one corner is in it, and no side of the yard comes into the outline.
  const cornerIn = yard.map((corner) => subtract(corner, moving[0]!));
  const within = difference(
    [cornerIn],
    sides.flatMap((side) => turned.map((own) => convexSum(own, side))),
  );
  return withoutSeams(intersection(within, [square(most)]));
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

const square = (half: number): Ring => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];

const pieces = new WeakMap<Ring, readonly Ring[]>();

function piecesOf(ring: Ring): readonly Ring[] {
  let known = pieces.get(ring);
  if (!known) {
    const all = convexPieces([ring]);
    // Hulls, because the sides of a piece as thin as a rounding error run in no order at all.
    known = all.length > MOST_PIECES ? [convexHull(ring)] : all.map(convexHull);
    pieces.set(ring, known);
  }
  return known;
}

const turnedRound = (ring: Ring): Ring => ring.map((corner) => scale(corner, -1));

/** Whether two outlines lie within `far` mm of each other, judged by their bounds. */
export const isNear = (first: Ring, second: Ring, far: number): boolean =>
  boxDistance(boxOf(first), boxOf(second)) <= far;

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
