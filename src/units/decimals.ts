import { type Language, language } from "../words/speaker.ts";

/** Figures with the decimal mark and the thousands of the language spoken. */

// Made once a language: making one takes longer than all the rest of a takeoff's line.
const made = new Map<Language, readonly Intl.NumberFormat[]>();

function upToTwoDecimals(spoken: Language): readonly Intl.NumberFormat[] {
  const known = made.get(spoken);
  if (known) return known;
  const formats = [0, 1, 2].map((most) => new Intl.NumberFormat(spoken, { maximumFractionDigits: most }));
  made.set(spoken, formats);
  return formats;
}

/** At most so many decimals: 1,234.5. */
export const rounded = (value: number, most: 0 | 1 | 2): string =>
  upToTwoDecimals(language())[most]!.format(value);

/** What parts the whole from its decimals where the language is spoken. */
export const decimalMark = (): "." | "," => (language() === "de" ? "," : ".");

/** Exactly so many decimals, thousands together, as sizes are written: 1.20. */
export const fixed = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  return decimalMark() === "." ? text : text.replace(".", decimalMark());
};
