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
  let [most, first] = [Number.NEGATIVE_INFINITY, 0];
  // More is planted only on a day on which something is set.
  for (const { standing } of patches) {
    const there = standingOn(patches, standing.from);
    const area = there.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
    const listed = Math.min(...there.map(({ index }) => index));
    const asMuch = Math.abs(area - most) <= SAME_AREA;
    if (area > most + SAME_AREA || (asMuch && listed < first))
      [best, most, first] = [standing.from, area, listed];
  }
  fullest.set(patches, best);
  return best;
}

const remembered = new WeakMap<
  readonly PlantedPatch[],
  { readonly day: number | null; readonly there: readonly PlantedPatch[] }
>();

/**
 * What stands in a bed on a day of the year; where no day is chosen, on the day that most of it is planted. The last
 * answer is remembered by the patches: the same list again while nothing has changed.
 */
export function standingThen(patches: readonly PlantedPatch[], day: number | null): readonly PlantedPatch[] {
  let known = remembered.get(patches);
  if (known?.day !== day) {
    const then = day ?? fullestDay(patches);
    known = { day, there: then === null ? [] : standingOn(patches, then) };
    remembered.set(patches, known);
  }
  return known.there;
}

const standingOn = (patches: readonly PlantedPatch[], day: number): readonly PlantedPatch[] =>
  patches.filter((patch) => standsOn(patch.standing, day));
