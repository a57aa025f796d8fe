import { boundsOf, FOOT, type Garden, INCH, type Point, type Units } from "../../../src/index.ts";

/** Steps of the grid things snap to, mm, finest first; the plan shows coarser lines of the same family. */
const STEPS: Readonly<Record<Units, readonly number[]>> = {
  us: [INCH, 3 * INCH, 6 * INCH, FOOT],
  metric: [10, 50, 100, 500],
};

/** Fewest pixels between two places a hand can choose between. */
const NEAREST_PIXELS = 5;

/** The finest step that a hand can still aim at, at so many pixels a millimetre. */
export function gridStep(units: Units, scale: number): number {
  const steps = STEPS[units];
  return steps.find((step) => step * scale >= NEAREST_PIXELS) ?? steps.at(-1)!;
}

/** Places are counted from the yard's left and upper edge, as on the rulers and in the card. */
export function gridOrigin(garden: Pick<Garden, "yard">): Point {
  const { minX, minY } = boundsOf(garden.yard);
  return [minX, minY];
}

export const toStep = (value: number, step: number, origin = 0): number =>
  origin + Math.round((value - origin) / step) * step;
