import { within } from "./within.ts";

/** The water year is reckoned in a year of 365 days, day 1 being 1 January, as FAO-56 does. */
export const YEAR_DAYS = 365;

/** January first. */
export const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
export const MONTHS: readonly number[] = MONTH_DAYS.map((_, month) => month);

const FIRST_DAYS: readonly number[] = MONTHS.map(
  (month) => 1 + MONTH_DAYS.slice(0, month).reduce((sum, days) => sum + days, 0),
);
const MONTH_OF_DAY: readonly number[] = MONTH_DAYS.flatMap((days, month) =>
  Array.from({ length: days }, () => month),
);

/** @param month 0 for January */
export const daysIn = (month: number): number => MONTH_DAYS[within(month, 0, 11, "the month")]!;

/** Day of the year of a date. @param month 0 for January @throws RangeError for no day of that month */
export const dayOfYear = (month: number, date: number): number =>
  FIRST_DAYS[within(month, 0, 11, "the month")]! + within(date, 1, daysIn(month), "the day of the month") - 1;

/** The day that stands for its month in monthly reckoning: the 15th (FAO-56, chapter 3). */
export const middleOf = (month: number): number => dayOfYear(month, 15);

/** The same day in the year of 365, for days that run on past the end of December. */
export const wrapDay = (day: number): number => ((((day - 1) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS) + 1;

/** Month, 0 for January, that a day of the year falls in; days past December run on into January. */
export const monthOfDay = (day: number): number => MONTH_OF_DAY[wrapDay(day) - 1]!;
