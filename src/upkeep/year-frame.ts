import type { Site } from "../garden/garden.ts";
import { type Frosts, frostsOf, hasFrost } from "../planting/frosts.ts";
import { roundTheYear, YEAR_DAYS } from "../planting/year-day.ts";
import type { DayBy, Task } from "./types.ts";

/** What the work of a year is hung up on. Days of a year of 365, day 1 being 1 January. */
export interface YearFrame extends Pick<Frosts, "last" | "first" | "freeDays"> {
  readonly winter: Site["winter"];
  /** False within the tropics where winter is mild and no frost was typed: nothing is then said of frost. */
  readonly freezes: boolean;
  readonly dayBy: Extract<DayBy, "frosts" | "usual">;
}

/**
 * The frame of a site's year. Frosts that were not typed are those usual in its hemisphere and its kind of winter; where
 * there are none, the same days only set the order of the work.
 */
export function yearFrame(site: Site): YearFrame {
  const { last, first, freeDays, by } = frostsOf(site);
  const dayBy = by === "frosts" ? "frosts" : "usual";
  return { last, first, freeDays, winter: site.winter, freezes: hasFrost(site), dayBy };
}

type When = Pick<Task, "from" | "days" | "dayBy">;

/** Days counted from the last frost of spring; below 0 before it. */
export const aboutLastFrost = ({ last, dayBy }: YearFrame, after: number, days: number): When => ({
  from: roundTheYear(last + after),
  days,
  dayBy,
});

/** Days counted from the first frost of autumn; below 0 before it. */
export const aboutFirstFrost = ({ first, dayBy }: YearFrame, after: number, days: number): When => ({
  from: roundTheYear(first + after),
  days,
  dayBy,
});

/** The part of a stretch that comes before the same stretch begins anew; a task lasts a year at most. */
export const lasting = (days: number): number => Math.min(YEAR_DAYS, Math.max(1, Math.round(days)));
