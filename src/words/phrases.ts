import { say, told, word } from "./say.ts";
import { language } from "./speaker.ts";

/** How words are put together where languages differ. */

const NUMBERS = [
  word("no"),
  word("one"),
  word("two"),
  word("three"),
  word("four"),
  word("five"),
  word("six"),
  word("seven"),
  word("eight"),
  word("nine"),
  word("ten"),
  word("eleven"),
  word("twelve"),
];

/** Small whole numbers in words, others in figures. */
export function numberWord(count: number): string {
  const english = NUMBERS[count];
  return english === undefined ? String(count) : told(english);
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A heading's word inside a sentence: English makes it small, German leaves its nouns alone. */
export const midSentence = (text: string): string => (language() === "de" ? text : text.toLowerCase());

/** "Tomato", "Tomato and Pepper", "Tomato, Pepper and Okra". */
export function listed(names: readonly string[]): string {
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : say`${names.slice(0, -1).join(", ")} and ${last}`;
}
