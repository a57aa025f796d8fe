import type { Bed } from "../garden/kinds/bed.ts";
import type { BedSoil } from "./bed-soil.ts";
import { cellMiddle, isSet } from "./cells.ts";
import type { Instant, PartOfDay } from "./instants.ts";
import type { SunSettings } from "./options.ts";
import type { BedSun, DayHours, Shade } from "./sun-map.ts";

/** Light on a bed's soil, summed up for people. */
export function bedSun(
  bed: Bed,
  place: BedSoil,
  { totals, shares }: { readonly totals: Float64Array; readonly shares: Float64Array },
  instants: readonly Instant[],
  settings: SunSettings,
  shade: readonly Shade[] | null,
): BedSun {
  const { days, step } = settings;
  const perDay = days.map(() => 0);
  const parts: Record<PartOfDay, number> = { morning: 0, midday: 0, afternoon: 0 };
  instants.forEach(({ day, part }, look) => {
    const hours = (shares[look]! * step) / 60;
    perDay[day]! += hours;
    parts[part] += hours / days.length;
  });
  const byDay = days.map((day, i): DayHours => ({ day, hours: perDay[i]! }));
  return {
    id: bed.id,
    soil: place.level,
    hours: perDay.reduce((sum, hours) => sum + hours, 0) / days.length,
    worst: worstSpot(place, totals, hoursPerCount(settings)),
    parts,
    byDay,
    bestDay: byDay.reduce((best, one) => (one.hours > best.hours ? one : best)),
    worstDay: byDay.reduce((worst, one) => (one.hours < worst.hours ? one : worst)),
    shade,
  };
}

/** What one look at the sun is worth, in hours a day. */
export const hoursPerCount = ({ step, days }: SunSettings): number => step / 60 / days.length;

function worstSpot({ cells, soil }: BedSoil, totals: Float64Array, perCount: number): BedSun["worst"] {
  let [least, worstColumn, worstRow] = [Infinity, 0, 0];
  for (let row = 0; row < cells.rows; row++) {
    for (let column = 0; column < cells.columns; column++) {
      const total = totals[row * cells.columns + column]!;
      if (total < least && isSet(soil, cells, column, row)) {
        [least, worstColumn, worstRow] = [total, column, row];
      }
    }
  }
  return { hours: least * perCount, at: cellMiddle(cells, worstColumn, worstRow) };
}
