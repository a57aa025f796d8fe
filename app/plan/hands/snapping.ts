import { add, cross, dot, type Point, scale, subtract } from "../../../src/index.ts";
import type { Constraint, Guide } from "./constraints.ts";
import { toStep } from "./grid.ts";

export interface Snapped {
  readonly by: Point;
  /** What it was snapped to, drawn for the hand to see. */
  readonly guides: readonly Guide[];
}

export interface Grid {
  readonly step: number;
  /** Where the carried corner lies on the grid's own count before it is carried: its distance from the origin. */
  readonly from: Point;
}

/** Directions at least this far apart (sine) can both be met. */
const INDEPENDENT = 0.3;
/** Met to this much of a millimetre. */
const MET = 0.01;
/** The other part of a unit vector that runs along an axis is no more than this. */
const LEVEL = 1e-9;
const MOST_GUIDES = 4;

/**
 * The displacement nearest to the hand's own that meets what is worth meeting.
 *
 * The nearest constraint within the tolerance is met, then the nearest one in another direction; directions left
 * over go to the grid. Without anything near, the hand's own displacement comes back.
 *
 * @param by the hand's displacement, mm
 * @param tolerance how far the thing may be pulled from the hand, mm
 * @param grid null to leave the grid out
 */
export function snap(
  by: Point,
  constraints: readonly Constraint[],
  tolerance: number,
  grid: Grid | null,
): Snapped {
  const near = constraints
    .map((constraint) => ({ constraint, off: Math.abs(dot(constraint.normal, by) - constraint.along) }))
    .filter(({ off }) => off <= tolerance)
    .sort((a, b) => a.off * a.constraint.weight - b.off * b.constraint.weight)
    .map(({ constraint }) => constraint);
  const first = near[0];
  if (!first) return { by: grid ? toGrid(by, grid, [true, true]) : by, guides: [] };

  const second = near.find(({ normal }) => Math.abs(cross(first.normal, normal)) > INDEPENDENT);
  const met = second ? meeting(first, second) : onto(by, first, grid);
  const guides = near
    .filter(({ normal, along }) => Math.abs(dot(normal, met) - along) < MET)
    .map((constraint) => constraint.guide(met));
  return { by: met, guides: withoutRepeats(guides).slice(0, MOST_GUIDES) };
}

/** Where two lines of displacement cross. */
function meeting(a: Constraint, b: Constraint): Point {
  const d = cross(a.normal, b.normal);
  return [
    (a.along * b.normal[1] - b.along * a.normal[1]) / d,
    (b.along * a.normal[0] - a.along * b.normal[0]) / d,
  ];
}

function onto(by: Point, { normal, along }: Constraint, grid: Grid | null): Point {
  const met = add(by, scale(normal, along - dot(normal, by)));
  // Along the line that is met the grid may still choose, if it runs the same way.
  if (!grid) return met;
  if (Math.abs(normal[1]) < LEVEL) return toGrid(met, grid, [false, true]);
  return Math.abs(normal[0]) < LEVEL ? toGrid(met, grid, [true, false]) : met;
}

function toGrid(by: Point, { step, from }: Grid, [x, y]: readonly [boolean, boolean]): Point {
  return subtract(
    [
      x ? toStep(from[0] + by[0], step) : from[0] + by[0],
      y ? toStep(from[1] + by[1], step) : from[1] + by[1],
    ],
    from,
  );
}

/** Each line once, and each reason for a gap once: two equal gaps side by side say nothing more than one. */
function withoutRepeats(guides: readonly Guide[]): Guide[] {
  const seen = new Set<string>();
  return guides.filter(({ kind, from, to, label }) => {
    const places = [...from, ...to].map((mm) => Math.round(mm)).join();
    const key = kind === "gap" ? `${label} ${Math.abs(to[0] - from[0]) < Math.abs(to[1] - from[1])}` : places;
    return !seen.has(key) && seen.add(key);
  });
}
