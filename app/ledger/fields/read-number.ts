import { decimalMark, say } from "../../../src/index.ts";

/**
 * Reads a plain number as people type it.
 *
 * @param text digits with a decimal point or comma, a sign, and perhaps the unit that stands after the field
 * @throws RangeError with one sentence that says what was wrong
 */
export function readNumber(text: string, unit = ""): number {
  const bare = text
    .trim()
    .replace(/^[\u2212\u2013]/, "-")
    .replace(new RegExp(`\\s*${escaped(unit)}$`, "i"), "");
  if (!/^[-+]?(\d+([.,]\d*)?|[.,]\d+)$/.test(bare)) {
    throw new RangeError(say`“${text}” is not a number.`);
  }
  return Number(bare.replace(",", "."));
}

/** At most so many decimals, without trailing noughts, with the decimal mark of the language spoken. */
export const writeNumber = (value: number, decimals = 2): string =>
  String(Number(value.toFixed(decimals))).replace(".", decimalMark());

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
