import { cropById } from "../crops/crop-table.ts";
import { type FrostSite, frostsOf } from "../planting/frosts.ts";
import { HARDINESS, STANDS_FROST, sowingOf } from "../planting/sowing-table.ts";
import type { Standing } from "../planting/types.ts";
import { daysFrom, monthDayOf, YEAR_DAYS } from "../planting/year-day.ts";

/** What is wrong with the time a planting stands: frost while it is young, or frost before it is ready. */
export interface OutOfSeason {
  readonly what: "before-last-frost" | "ripe-after-frost";
  /** How far off, days. */
  readonly days: number;
  /** The frost it meets, "04-28". */
  readonly frost: string;
}

/**
 * Whether a planting meets frost that it does not stand: a tender crop set before the last frost of spring, or any crop of
 * the year that is first ready after autumn's frost has spoilt it. Crops set in autumn and perennials are made for winter.
 * @returns null where its time is right
 */
export function outOfSeason({ planting, from }: Standing, site: FrostSite): OutOfSeason | null {
  const row = cropById(planting.crop);
  const { hardiness, picked } = sowingOf(planting.crop);
  if (!row || hardiness === "autumn" || picked === "stays") return null;
  const { last, first, freeDays } = frostsOf(site);
  const tender = HARDINESS[hardiness].from >= 0;
  const sinceLast = daysFrom(last, from);
  if (tender && sinceLast >= freeDays) {
    return { what: "before-last-frost", days: YEAR_DAYS - sinceLast, frost: monthDayOf(last) };
  }
  // A cool crop that is set in the cold before spring has all of the season before it.
  const start = sinceLast < freeDays ? sinceLast : sinceLast - YEAR_DAYS;
  const over = start + row.daysToMaturity.least - (freeDays + STANDS_FROST[hardiness]);
  return over > 0 ? { what: "ripe-after-frost", days: over, frost: monthDayOf(first) } : null;
}

export const inSeason = (standing: Standing, site: FrostSite): boolean =>
  outOfSeason(standing, site) === null;
