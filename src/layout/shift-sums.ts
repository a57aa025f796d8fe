import { convexSum } from "../geometry/convex.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import { blockedShifts, shiftsOverSides } from "../geometry/shift.ts";
import type { Point, Ring } from "../geometry/types.ts";

const sums = new WeakMap<Ring, WeakMap<Ring, readonly Ring[]>>();

/** `blockedShifts`, remembered: a search looks at the same two outlines again and again, ever farther out. */
export function sumsOf(moving: Ring, fixed: Ring): readonly Ring[] {
  let ofMoving = sums.get(moving);
  if (!ofMoving) {
    ofMoving = new WeakMap();
    sums.set(moving, ofMoving);
  }
  let known = ofMoving.get(fixed);
  if (!known) {
    known = blockedShifts(moving, fixed);
    ofMoving.set(fixed, known);
  }
  return known;
}

const sides = new WeakMap<Ring, WeakMap<Ring, readonly (readonly Ring[])[]>>();

/** `shiftsOverSides`, remembered. */
export function sumsOfSides(moving: Ring, yard: Ring): readonly (readonly Ring[])[] {
  let ofMoving = sides.get(moving);
  if (!ofMoving) {
    ofMoving = new WeakMap();
    sides.set(moving, ofMoving);
  }
  let known = ofMoving.get(yard);
  if (!known) {
    known = shiftsOverSides(moving, yard);
    ofMoving.set(yard, known);
  }
  return known;
}

const grown = new WeakMap<Ring, Map<string, Ring>>();

/**
 * All within `by` mm of a convex ring, its round corners drawn with chords outside of the true round.
 * @param turn the chords are turned along with the thing, so that they are exact for gaps square to its sides
 */
export function within(ring: Ring, by: number, turn: number): Ring {
  if (by <= 0) return ring;
  let ofRing = grown.get(ring);
  if (!ofRing) {
    ofRing = new Map();
    grown.set(ring, ofRing);
  }
  const key = `${by} ${turn}`;
  let wider = ofRing.get(key);
  if (!wider) {
    wider = convexSum(ring, disc(by, turn));
    ofRing.set(key, wider);
  }
  return wider;
}

function disc(radius: number, turn: number): Ring {
  const outer = radius / Math.cos(Math.PI / ROUND_CHORDS);
  return Array.from({ length: ROUND_CHORDS }, (_, i): Point => {
    const angle = ((2 * i + 1) / ROUND_CHORDS) * Math.PI + (turn * Math.PI) / 180;
    return [outer * Math.cos(angle), outer * Math.sin(angle)];
  });
}
