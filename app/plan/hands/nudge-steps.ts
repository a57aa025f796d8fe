import { FOOT, INCH, type Units } from "../../../src/index.ts";

/** How far a press of the arrow pad moves things, mm, finest first; the second is what an arrow key does. */
export const NUDGE_STEPS: Readonly<Record<Units, readonly number[]>> = {
  us: [INCH / 4, INCH, 6 * INCH, FOOT],
  metric: [5, 10, 100, 500],
};

/** The step after a step; after the widest comes the finest again. A step of the other units gives way to their second. */
export function nextStep(units: Units, step: number): number {
  const steps = NUDGE_STEPS[units];
  const at = steps.indexOf(step);
  return at < 0 ? steps[1]! : steps[(at + 1) % steps.length]!;
}
