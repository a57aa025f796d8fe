import { LETTER_WIDTHS } from "./letter-widths.ts";

export type Weight = "normal" | "bold";

/** Millimetres in a point of type. */
export const POINT = 25.4 / 72;
/** The smallest type on the sheet: still read at arm's length, outdoors. */
export const LEAST_PT = 8;
/** From one line of type to the next, of its size. */
const LEADING = 1.16;
/** A letter the table does not have (of another script): no letter of this face is much wider. */
const UNKNOWN = 760;

export const lineHeight = (pt: number): number => pt * POINT * LEADING;

/** Width of a line of type, mm. */
export function textWidth(text: string, pt: number, weight: Weight = "normal"): number {
  const column = weight === "bold" ? 1 : 0;
  let thousandths = 0;
  for (const letter of text) thousandths += LETTER_WIDTHS[letter]?.[column] ?? UNKNOWN;
  return (thousandths / 1000) * pt * POINT;
}

/** Whether the widths of all its letters are known. */
export const isMeasured = (text: string): boolean =>
  [...text].every((letter) => Object.hasOwn(LETTER_WIDTHS, letter));

/** Breaks text into lines no wider than `width` mm; a word that is wider alone is broken within. */
export function wrapped(text: string, width: number, pt: number, weight: Weight = "normal"): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/ +/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, pt, weight) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = word;
    while (textWidth(line, pt, weight) > width && [...line].length > 1) {
      const fits = fittingLetters(line, width, pt, weight);
      lines.push(line.slice(0, fits));
      line = line.slice(fits);
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}

/** Text shortened with an ellipsis to fit a width. */
export function shortened(text: string, width: number, pt: number, weight: Weight = "normal"): string {
  if (textWidth(text, pt, weight) <= width) return text;
  const room = width - textWidth("…", pt, weight);
  return `${text.slice(0, fittingLetters(text, Math.max(0, room), pt, weight)).trimEnd()}…`;
}

/** How much of a text fits, one letter at least; counted as a string is cut, and never within a letter. */
function fittingLetters(text: string, width: number, pt: number, weight: Weight): number {
  let fits = 0;
  for (const letter of text) {
    const longer = fits + letter.length;
    if (fits > 0 && textWidth(text.slice(0, longer), pt, weight) > width) break;
    fits = longer;
  }
  return fits;
}
