import { MONTH_NAMES } from "../sun/day.ts";

/** A month and day such as "04-28" in words: "28 April". */
export const formatMonthDay = (monthDay: string): string =>
  `${Number(monthDay.slice(3))} ${MONTH_NAMES[Number(monthDay.slice(0, 2)) - 1]}`;
