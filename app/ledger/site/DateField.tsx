import { language, MONTH_NAMES, monthName, say } from "../../../src/index.ts";
import { shortDay } from "../../moment/year-days.ts";
import { TypedField } from "../fields/TypedField.tsx";

interface Props {
  readonly label: string;
  /** "04-26", or null where it is not known or there is none. */
  readonly value: string | null;
  readonly onCommit: (monthDay: string | null) => void;
  readonly note?: string;
}

const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Reads a day of the year: "26 Apr", "April 26", "04-26"; nothing for none.
 * @throws RangeError with one sentence that says what was wrong
 */
export function readMonthDay(text: string): string | null {
  if (text.trim() === "") return null;
  const numbers = /^(\d{1,2})-(\d{1,2})$/.exec(inFigures(text));
  const dayFirst = /^(\d{1,2})\.?\s+(\p{L}{3,})\.?$/iu.exec(text);
  const monthFirst = /^(\p{L}{3,})\.?\s+(\d{1,2})\.?$/iu.exec(text);
  const month = numbers ? Number(numbers[1]) : monthNumber(dayFirst?.[2] ?? monthFirst?.[1] ?? "");
  const day = Number(numbers?.[2] ?? dayFirst?.[1] ?? monthFirst?.[2]);
  if (!(month >= 1 && month <= 12)) throw new RangeError(say`Type a day such as 26 Apr, or leave it empty.`);
  if (!(day >= 1 && day <= DAYS[month - 1]!)) throw new RangeError(say`That month has no such day.`);
  return `${two(month)}-${two(day)}`;
}

/** "26.4." is "04-26" to those who write the day first. */
const inFigures = (text: string): string =>
  language() === "de" ? text.replace(/^(\d{1,2})\. ?(\d{1,2})\.?$/, "$2-$1") : text;

/** By its first three letters, in English or in the language spoken; 0 for no month. */
function monthNumber(name: string): number {
  const wanted = name.slice(0, 3).toLowerCase();
  const begins = (month: string) => month.toLowerCase().startsWith(wanted);
  return MONTH_NAMES.findIndex((english, i) => begins(english) || begins(monthName(i + 1))) + 1;
}
const two = (n: number): string => String(n).padStart(2, "0");

/** "26 Apr" */
export const writeMonthDay = (value: string | null): string =>
  value === null ? "" : shortDay(`2000-${value}`);

/** A day of the year, or none. */
export const DateField = (props: Props) => (
  <TypedField
    write={writeMonthDay}
    read={readMonthDay}
    note={say`such as 26 Apr; empty if not known`}
    {...props}
  />
);
