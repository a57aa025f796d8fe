import type { Bed } from "../garden/kinds/bed.ts";
import { practice, type Source } from "../garden/source.ts";
import type { MonthNeed, WateredCrop } from "../water/bed-need.ts";
import { daysIn, monthOfDay } from "../water/calendar.ts";
import { WETTED, type Wetting } from "../water/wetted-soil.ts";

export const YOUNG_WETTING_SOURCE: Source = practice(
  "beds are watered as often as their store asks, once a week at the least, by as much as the crop has used since; a hose wets all of the soil as a sprinkler does",
);

/** Nobody lets a bed with young crops wait longer, days. */
const AT_LEAST_EVERY = 7;

const WETS: Readonly<Record<Bed["watering"]["by"], number>> = {
  drip: WETTED.drip,
  sprinkler: WETTED.sprinkler,
  hand: WETTED.sprinkler,
};

/**
 * How the soil about young crops is wetted, for their first coefficient, from a year reckoned with the tabled one: how often
 * and how much the bed is watered in the months in which its crops are sown.
 * @returns null where rain alone waters it then: how often it rains is not known, and the tabled coefficient stands
 */
export function youngWetting(
  crops: readonly WateredCrop[],
  months: readonly MonthNeed[],
  { by }: Bed["watering"],
): Wetting | null {
  const sown = [...new Set(crops.map(({ plantedOn }) => monthOfDay(plantedOn)))];
  const watered = sown.flatMap((month) => {
    const { need, everyDays } = months[month]!;
    return everyDays === null
      ? []
      : [{ everyDays: Math.min(AT_LEAST_EVERY, everyDays), aDay: need / daysIn(month) }];
  });
  if (watered.length === 0) return null;
  const mean = (of: "everyDays" | "aDay") =>
    watered.reduce((sum, each) => sum + each[of], 0) / watered.length;
  const everyDays = mean("everyDays");
  return { everyDays, depth: everyDays * mean("aDay"), wettedShare: WETS[by], grain: "fine" };
}
