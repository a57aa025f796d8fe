import { say } from "../words/say.ts";

const NUMBERS = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** Small whole numbers in words, others in figures. */
export const numberWord = (count: number): string => NUMBERS[count] ?? String(count);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "Tomato", "Tomato and Pepper", "Tomato, Pepper and Okra". */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : say`${names.slice(0, -1).join(", ")} and ${last}`;
}

/** The names while they are few, else how many: "Tomato and Pepper", "four crops". */
export const listedOrCounted = (names: readonly string[], plural: string): string =>
  names.length <= 2 ? listed(names) : `${numberWord(names.length)} ${plural}`;
