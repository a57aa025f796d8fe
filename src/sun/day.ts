import { told, word } from "../words/say.ts";
import { language } from "../words/speaker.ts";

const DAY_MS = 86_400_000;
const DATE = /^(\d{4})-(\d\d)-(\d\d)$/;

/** Days from 1 January 1970 to a day such as "2026-06-21". @throws RangeError for no day of the calendar */
export function daysSince1970(day: string): number {
  const [, year, month, date] = DATE.exec(day) ?? [];
  const ms = Date.UTC(Number(year), Number(month) - 1, Number(date));
  if (Number.isNaN(ms) || dayText(ms / DAY_MS) !== day)
    throw new RangeError(`not a day of the calendar: "${day}"`);
  return ms / DAY_MS;
}

/** The day so many days after 1 January 1970, as "2026-06-21". */
export const dayText = (days: number): string => new Date(days * DAY_MS).toISOString().slice(0, 10);

/** Midnight between a day and the one before it by the mean time of a longitude. */
export const localMidnight = (day: string, longitude: number): number =>
  daysSince1970(day) * DAY_MS - longitude * (DAY_MS / 360);

/** 1 for January. */
export const monthOf = (day: string): number => Number(day.slice(5, 7));

/** By the number of the month less one. */
export const MONTH_NAMES = [
  word("January"),
  word("February"),
  word("March"),
  word("April"),
  word("May"),
  word("June"),
  word("July"),
  word("August"),
  word("September"),
  word("October"),
  word("November"),
  word("December"),
] as const;

/** What a month is called, 1 for January. */
export const monthName = (month: number): string => told(MONTH_NAMES[month - 1] ?? "");

/** A month and day such as "04-28" in words: "28 April". */
export function formatMonthDay(monthDay: string): string {
  const [month, day] = [monthName(Number(monthDay.slice(0, 2))), Number(monthDay.slice(3))];
  return language() === "de" ? `${day}. ${month}` : `${day} ${month}`;
}
