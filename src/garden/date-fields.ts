import * as v from "valibot";
import { say } from "../words/say.ts";

/** Days of each month; February in a leap year, so that a frost on the 29th can be told. */
const MONTHS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const onCalendar = (month: number, day: number): boolean => day >= 1 && day <= (MONTHS[month - 1] ?? 0);

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

function isRealDate(text: string): boolean {
  const [year = 0, month = 0, day = 0] = text.split("-").map(Number);
  return onCalendar(month, day) && (month !== 2 || day < 29 || isLeap(year));
}

function isRealDay(text: string): boolean {
  const [month = 0, day = 0] = text.split("-").map(Number);
  return onCalendar(month, day);
}

/** A day of one year: 2027-04-26. */
export const isoDate = v.pipe(
  v.string(() => say`must be text`),
  v.isoDate(() => say`must be a date such as 2027-04-26`),
  v.check(isRealDate, () => say`is no day of the calendar`),
);

/** A day of every year: 04-26. */
export const monthDay = v.pipe(
  v.string(() => say`must be text`),
  v.regex(/^\d\d-\d\d$/, () => say`must be month and day such as 04-26`),
  v.check(isRealDay, () => say`is no day of the calendar`),
);

/** A name of the time zone database, "Europe/Lisbon" or "UTC": its form alone, since the list itself keeps changing. */
export const timeZone = v.pipe(
  v.string(() => say`must be text`),
  v.regex(
    /^[A-Za-z][A-Za-z0-9_+-]{0,30}(\/[A-Za-z0-9_+-]{1,30}){0,2}$/,
    () => say`must be a time zone such as Europe/Lisbon`,
  ),
);
