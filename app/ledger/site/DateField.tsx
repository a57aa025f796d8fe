import { TypedField } from "../fields/TypedField.tsx";

interface Props {
  readonly label: string;
  /** "04-26", or null where it is not known or there is none. */
  readonly value: string | null;
  readonly onCommit: (monthDay: string | null) => void;
  readonly note?: string;
}

const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Reads a day of the year: "26 Apr", "April 26", "04-26"; nothing for none.
 * @throws RangeError with one sentence that says what was wrong
 */
export function readMonthDay(text: string): string | null {
  if (text.trim() === "") return null;
  const numbers = /^(\d{1,2})-(\d{1,2})$/.exec(text);
  const dayFirst = /^(\d{1,2})\s+([a-z]{3,})\.?$/i.exec(text);
  const monthFirst = /^([a-z]{3,})\.?\s+(\d{1,2})$/i.exec(text);
  const month = numbers ? Number(numbers[1]) : monthNumber(dayFirst?.[2] ?? monthFirst?.[1] ?? "");
  const day = Number(numbers?.[2] ?? dayFirst?.[1] ?? monthFirst?.[2]);
  if (!(month >= 1 && month <= 12)) throw new RangeError("Type a day such as 26 Apr, or leave it empty.");
  if (!(day >= 1 && day <= DAYS[month - 1]!)) throw new RangeError("That month has no such day.");
  return `${two(month)}-${two(day)}`;
}

const monthNumber = (word: string): number => MONTHS.indexOf(word.slice(0, 3).toLowerCase()) + 1;
const two = (n: number): string => String(n).padStart(2, "0");

export function writeMonthDay(value: string | null): string {
  if (value === null) return "";
  const [month, day] = value.split("-").map(Number);
  const name = MONTHS[(month ?? 1) - 1]!;
  return `${day} ${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}

/** A day of the year, or none. */
export const DateField = (props: Props) => (
  <TypedField
    write={writeMonthDay}
    read={readMonthDay}
    note="such as 26 Apr; empty if not known"
    {...props}
  />
);
