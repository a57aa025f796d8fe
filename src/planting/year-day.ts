/** Plantings are reckoned in a year of 365 days, day 1 being 1 January. */
export const YEAR_DAYS = 365;

const MONTH_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Day of the year of a month and day such as "04-28"; 29 February is taken as the 28th.
 * @throws RangeError for no day of the calendar
 */
export function yearDay(monthDay: string): number {
  const [month = 0, date = 0] = monthDay.split("-").map(Number);
  const long = MONTH_DAYS[month - 1];
  const day = month === 2 && date === 29 ? 28 : date;
  if (long === undefined || !(day >= 1 && day <= long))
    throw new RangeError(`no day of the year: ${monthDay}`);
  return MONTH_DAYS.slice(0, month - 1).reduce((sum, days) => sum + days, 0) + day;
}

/** Month and day such as "04-28" of a day of the year; days before it begins or past its end are taken round. */
export function monthDayOf(day: number): string {
  let left = roundTheYear(Math.round(day));
  let month = 0;
  while (left > MONTH_DAYS[month]!) left -= MONTH_DAYS[month++]!;
  return `${String(month + 1).padStart(2, "0")}-${String(left).padStart(2, "0")}`;
}

/** The same day in the year, 1 to 365, for days reckoned past its end or before its beginning. */
export const roundTheYear = (day: number): number => daysFrom(1, day) + 1;

/** Days from one day of the year to the next time it is the other, 0 to 364. */
export const daysFrom = (from: number, to: number): number =>
  (((to - from) % YEAR_DAYS) + YEAR_DAYS) % YEAR_DAYS;

/** A stretch of the year; it may run over new year. */
export interface Stretch {
  /** Its first day. */
  readonly from: number;
  /** How long it is, 1 to 365. */
  readonly days: number;
}

/** Whether two stretches have a day in common. */
export const meetInTime = (a: Stretch, b: Stretch): boolean =>
  daysFrom(a.from, b.from) < a.days || daysFrom(b.from, a.from) < b.days;
