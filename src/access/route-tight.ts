import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import type { Walk } from "./route-search.ts";
import type { Turn } from "./route-turns.ts";

/** A walk drawn tight round the corners it passes: straight from one to the next, and on an arc about each. */
export interface TightWalk {
  readonly points: readonly Point[];
  readonly length: number;
}

/** A corner passed at a distance: to the left of it (above 0) or to the right, as seen along the walk. */
interface Passed {
  readonly corner: Point;
  readonly left: number;
}

/** Arcs are drawn with chords of at most this, radians. */
const CHORD = Math.PI / 12;

/**
 * The exact walk of a disc of radius `half` that takes the same turns as a walk found along the sides drawn outside the
 * outlines. The shortest such walk is a band drawn tight about discs on the corners.
 */
export function tightened({ start, turns, end }: Walk, half: number): TightWalk {
  let passed: Passed[] = [
    { corner: start, left: 0 },
    ...withoutRepeats(cornersPassed(start, turns, end, half)),
    { corner: end, left: 0 },
  ];
  for (;;) {
    const legs = legsOf(passed);
    const slack = passed.findIndex(
      (at, i) => i > 0 && i < legs.length && at.left * bend(legs[i - 1]!, legs[i]!) < 0,
    );
    if (slack < 0) return drawn(passed, legs);
    // The band does not press on this corner: without it the band is shorter.
    passed = passed.toSpliced(slack, 1);
  }
}

function cornersPassed(start: Point, turns: readonly Turn[], end: Point, half: number): Passed[] {
  return turns.flatMap((turn, i) => {
    const before = turns[i - 1]?.at ?? start;
    const after = turns[i + 1]?.at ?? end;
    // Told by the sides that meet here, not by the bend: a walk straight past a corner has none.
    const onward = along(before, turn.at, turn.before) + along(turn.at, after, turn.after) >= 0;
    const corners = onward ? turn.corners : turn.corners.toReversed();
    return corners.map((corner): Passed => ({ corner, left: onward ? half : -half }));
  });
}

const along = (from: Point, to: Point, [ux, uy]: Point): number =>
  (to[0] - from[0]) * ux + (to[1] - from[1]) * uy;

const withoutRepeats = (passed: readonly Passed[]): Passed[] =>
  passed.filter(
    ({ corner, left }, i) =>
      i === 0 || passed[i - 1]!.left !== left || distance(passed[i - 1]!.corner, corner) > 0,
  );

interface Leg {
  /** Unit direction. */
  readonly along: Point;
  readonly length: number;
}

/** Common tangents of the discs on neighbouring corners. */
function legsOf(passed: readonly Passed[]): Leg[] {
  return passed.slice(1).map((to, i) => {
    const from = passed[i]!;
    const apart = distance(from.corner, to.corner);
    if (apart === 0) return { along: [0, 0], length: 0 };
    const [ux, uy] = [(to.corner[0] - from.corner[0]) / apart, (to.corner[1] - from.corner[1]) / apart];
    // From the left of one to the right of the next the walk bears to the right, and the other way round.
    const sine = Math.max(-1, Math.min(1, (from.left - to.left) / apart));
    const cosine = Math.sqrt(1 - sine * sine);
    return { along: [ux * cosine - uy * sine, ux * sine + uy * cosine], length: apart * cosine };
  });
}

const cross = (ux: number, uy: number, vx: number, vy: number): number => ux * vy - uy * vx;

/** Clockwise above 0, radians. */
const bend = ({ along: u }: Leg, { along: v }: Leg): number =>
  Math.atan2(cross(u[0], u[1], v[0], v[1]), u[0] * v[0] + u[1] * v[1]);

function drawn(passed: readonly Passed[], legs: readonly Leg[]): TightWalk {
  const points: Point[] = [passed[0]!.corner];
  let length = legs.reduce((sum, leg) => sum + leg.length, 0);
  passed.slice(1, -1).forEach(({ corner, left }, i) => {
    const [into, out] = [legs[i]!, legs[i + 1]!];
    const turn = bend(into, out);
    length += Math.abs(left * turn);
    const chords = Math.max(1, Math.ceil(Math.abs(turn) / CHORD));
    for (let k = 0; k <= chords; k++) {
      const [x, y] = spun(into.along, (turn * k) / chords);
      points.push([corner[0] + y * left, corner[1] - x * left]);
    }
  });
  points.push(passed.at(-1)!.corner);
  return { points, length };
}

const spun = ([x, y]: Point, rad: number): Point => [
  x * Math.cos(rad) - y * Math.sin(rad),
  x * Math.sin(rad) + y * Math.cos(rad),
];
