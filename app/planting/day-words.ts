import { type Standing, say } from "../../src/index.ts";
import { shortDay, YEAR_DAYS } from "../moment/year-days.ts";
import { DAYS } from "./standing-on.ts";

/** "28 May", of a day of the year; days reckoned past its end are taken round. */
export const yearDayWords = (day: number): string =>
  shortDay(YEAR_DAYS[(((Math.round(day) - 1) % DAYS) + DAYS) % DAYS]!);

/** "28 May to 14 Oct, picked from 27 Jul", "all year, picked from 5 Apr". */
export function standingWords({ from, days, pickFrom }: Standing): string {
  const picked = say`picked from ${yearDayWords(pickFrom)}`;
  if (days >= DAYS) return say`all year, ${picked}`;
  const until = yearDayWords(from + days - 1);
  return say`${yearDayWords(from)} to ${until}, ${picked}`;
}
