import type { PlantedPatch, Standing } from "../../src/index.ts";

/** Days of the year that plantings are reckoned in. */
export const DAYS = 365;

/** Whether a planting stands in its bed on a day of the year, 1 being 1 January. */
export const standsOn = ({ from, days }: Pick<Standing, "from" | "days">, day: number): boolean =>
  (((day - from) % DAYS) + DAYS) % DAYS < days;

/** Areas nearer than this are one, mm². */
const SAME_AREA = 1;

const fullest = new WeakMap<readonly PlantedPatch[], number | null>();

/**
 * The day on which most of a bed's soil is planted, 1 to 365; of several that of the planting listed first. Null where
 * nothing is planted. Remembered by the patches, which never change.
 */
export function fullestDay(patches: readonly PlantedPatch[]): number | null {
  const known = fullest.get(patches);
  if (known !== undefined) return known;
  let best: number | null = null;
  let most = Number.NEGATIVE_INFINITY;
  // More is planted only on a day on which something is set.
  for (const { standing } of patches) {
    const area = plantedArea(patches, standing.from);
    if (area > most + SAME_AREA) [best, most] = [standing.from, area];
  }
  fullest.set(patches, best);
  return best;
}

const plantedArea = (patches: readonly PlantedPatch[], day: number): number =>
  patches.reduce((sum, { standing, areaMm2 }) => (standsOn(standing, day) ? sum + areaMm2 : sum), 0);

/** What stands in a bed on a day of the year; where no day is chosen, on the day that most of it is planted. */
export function standingThen(patches: readonly PlantedPatch[], day: number | null): readonly PlantedPatch[] {
  const then = day ?? fullestDay(patches);
  return then === null ? [] : patches.filter(({ standing }) => standsOn(standing, then));
}
