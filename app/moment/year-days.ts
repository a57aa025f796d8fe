import { formatMonthDay, monthName, seasonDays, word } from "../../src/index.ts";

/** Every day of the year that the sun is shown in, 1 January first. */
export const YEAR_DAYS: readonly string[] = seasonDays({ from: "01-01", to: "12-31" });

/** Days that everybody knows, and between which the sun turns: to the day, in most years. */
export const TURNING_DAYS = [
  { day: 20, month: 3, name: word("March equinox") },
  { day: 21, month: 6, name: word("June solstice") },
  { day: 22, month: 9, name: word("September equinox") },
  { day: 21, month: 12, name: word("December solstice") },
] as const;

const two = (n: number): string => String(n).padStart(2, "0");

/** The day of the shown year with this month (1 for January) and date; 29 February is the 28th in it. */
export function dayOfYear(month: number, date: number): string {
  const wanted = `-${two(month)}-${month === 2 && date === 29 ? 28 : two(date)}`;
  const day = YEAR_DAYS.find((candidate) => candidate.endsWith(wanted));
  if (day === undefined) throw new RangeError(`no ${date}.${month}. in a year`);
  return day;
}

/** "15 April". */
export const dayWords = (day: string): string => formatMonthDay(day.slice(5));

/** "15 Apr". */
export function shortDay(day: string): string {
  const words = dayWords(day);
  const month = monthName(Number(day.slice(5, 7)));
  return words.replace(month, month.slice(0, 3));
}
