import type { Site } from "../garden/garden.ts";
import { published, type Source } from "../garden/source.ts";
import { daysSince1970, dayText } from "./day.ts";
import { sunPlace } from "./sun-place.ts";

/** The part of the year that sun hours are averaged over: month and day, both included; it may run over new year. */
export interface Season {
  readonly from: string;
  readonly to: string;
}

/** April to September north of the equator, October to March south of it. */
export const GROWING_SEASON: { readonly north: Season; readonly south: Season; readonly source: Source } = {
  north: { from: "04-01", to: "09-30" },
  south: { from: "10-01", to: "03-31" },
  source: published(
    "Window of the heliothermal index (Huglin 1978), as documented by the R package agroclim and by earthkit-climate",
  ),
};

export const growingSeason = (latitude: number): Season =>
  latitude < 0 ? GROWING_SEASON.south : GROWING_SEASON.north;

/** The season that the sun hours of a place are averaged over. */
export const seasonOf = ({ season, latitude }: Pick<Site, "season" | "latitude">): Season =>
  season ?? growingSeason(latitude);

/** Whether a month and day such as "06-15" lie within a season, its ends included. */
export const isInSeason = ({ from, to }: Season, monthDay: string): boolean =>
  from <= to ? from <= monthDay && monthDay <= to : monthDay >= from || monthDay <= to;

/**
 * The year that seasons are laid in unless one is given: the sun repeats itself so closely, within 0.4 degrees of
 * declination at the equinoxes and far less otherwise, that any year serves.
 */
export const ANY_YEAR = 2026;

/**
 * Every day of a season that starts in a year.
 * @throws RangeError for a month and day that are not in the calendar of that year; 29 February is taken as the 28th
 */
export function seasonDays({ from, to }: Season, year: number = ANY_YEAR): string[] {
  const first = daysSince1970(inYear(year, from));
  const sameYear = daysSince1970(inYear(year, to));
  const last = sameYear < first ? daysSince1970(inYear(year + 1, to)) : sameYear;
  return Array.from({ length: last - first + 1 }, (_, i) => dayText(first + i));
}

function inYear(year: number, monthDay: string): string {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return `${year}-${monthDay === "02-29" && !leap ? "02-28" : monthDay}`;
}

/**
 * Few days that stand for many: the days sorted by the sun's declination, cut into equal parts, and the middle day of each.
 * A mean over them comes nearer to the mean over all days than one over days equally far apart.
 *
 * @returns the chosen days in their order; all of them where there are no more than `count`
 * @throws RangeError for a count under 1
 */
export function sampleDays(days: readonly string[], count: number): string[] {
  if (!(count >= 1)) throw new RangeError(`at least one day must be looked at, not ${count}`);
  if (days.length <= count) return [...days];
  const declination = new Map(days.map((day) => [day, noonDeclination(day)]));
  const sorted = days.toSorted((a, b) => declination.get(a)! - declination.get(b)!);
  const parts = Math.floor(count);
  return Array.from(
    { length: parts },
    (_, i) => sorted[Math.floor(((i + 0.5) * days.length) / parts)]!,
  ).sort();
}

const noonDeclination = (day: string) => sunPlace(new Date(`${day}T12:00:00Z`)).declination;
