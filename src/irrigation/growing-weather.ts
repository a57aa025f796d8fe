import type { Site } from "../garden/garden.ts";
import { practice, type Source } from "../garden/source.ts";
import { frostsOf, hasFrost } from "../planting/frosts.ts";
import { meetInTime, roundTheYear } from "../planting/year-day.ts";
import { dayOfYear, daysIn } from "../water/calendar.ts";

/** The first crops stand in the open so long before the last frost, days. */
const BEFORE_LAST_FROST = 14;

export const GROWING_WEATHER_SOURCE: Source = practice(
  "watering begins with the first crops in the open, two weeks before the last frost, and ends with the first of autumn",
);

/** Whether any of a month lies between the first planting out and the first frost; every month does where none comes. */
export function isGrowingWeather(month: number, site: Site): boolean {
  if (!hasFrost(site)) return true;
  const { last, freeDays } = frostsOf(site);
  return meetInTime(
    { from: dayOfYear(month, 1), days: daysIn(month) },
    { from: roundTheYear(last - BEFORE_LAST_FROST), days: freeDays + BEFORE_LAST_FROST },
  );
}
