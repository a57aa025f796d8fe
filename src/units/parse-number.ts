import { say } from "../words/say.ts";
import { decimalMark } from "./decimals.ts";

/** A fraction of whole numbers, so that a typed length is rounded once, at the end. */
export interface Fraction {
  readonly over: number;
  readonly under: number;
}

/** A number read at the start of a text, and what follows it. Never below zero. */
export interface ReadNumber {
  readonly value: Fraction;
  /** It was written as a whole number: no fraction, no decimals. */
  readonly whole: boolean;
  readonly rest: string;
}

const MIXED = /^(\d+)(?:\s+|\s*-\s*)(\d+)\s*\/\s*(\d+)(?![\d.,])/;
const VULGAR = /^(\d+)\s*\/\s*(\d+)(?![\d.,])/;
const SPACED = /^\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?![\d.,]|\s*\/)/;
const PLAIN = /^(?:\d+(?:[.,]\d+)*|[.,]\d+)/;

/** Beyond this a double no longer tells the digits apart. */
const MOST_DIGITS = 15;

/**
 * Reads a number as people write it: "54.5", "12,5", "6 1/2", "6-1/2", "3/8", "1 200", "1,234.5".
 *
 * @param text without leading spaces; fractions with a plain slash
 * @returns null where no number begins; a string is the reason why the number that begins cannot be read
 */
export function readNumber(text: string): ReadNumber | string | null {
  const mixed = MIXED.exec(text);
  if (mixed) return readVulgar(text, mixed[0], Number(mixed[1]), Number(mixed[2]), Number(mixed[3]));
  const vulgar = VULGAR.exec(text);
  if (vulgar) return readVulgar(text, vulgar[0], null, Number(vulgar[1]), Number(vulgar[2]));
  const found = SPACED.exec(text) ?? PLAIN.exec(text);
  if (!found) return null;
  const digits = plainDecimal(found[0].replaceAll(" ", ""));
  if (digits.why) return digits.why;
  const [before = "", after = ""] = digits.text.split(".");
  if (before.length + after.length > MOST_DIGITS)
    return say`${found[0]} has more digits than can be measured`;
  return {
    value: { over: Number(before + after), under: 10 ** after.length },
    whole: after === "",
    rest: text.slice(found[0].length),
  };
}

function readVulgar(
  text: string,
  written: string,
  whole: number | null,
  over: number,
  under: number,
): ReadNumber | string {
  if (under === 0) return say`${written.trim()} divides by nothing`;
  if (whole !== null && over >= under)
    return say`${over}/${under} is a whole or more, so ${written} is unclear`;
  return {
    value: { over: (whole ?? 0) * under + over, under },
    whole: false,
    rest: text.slice(written.length),
  };
}

/**
 * A decimal with its marks sorted out: "12,5" and "1,234.5" become "12.5" and "1234.5". The decimal mark of
 * the language alone always is that. The other one (in English a comma) once before exactly three digits may be either,
 * and is refused.
 */
function plainDecimal(written: string): { readonly text: string; readonly why?: string } {
  const marks = written.replace(/\d/g, "");
  const last = marks.at(-1);
  if (!last) return { text: written };
  const once = marks.indexOf(last) === marks.length - 1;
  const [whole = "", part = ""] = cutAtLast(written, last);
  if (marks.length === 1) {
    if (last !== decimalMark() && part.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
      const why =
        last === ","
          ? say`${written} could be ${whole}.${part} or ${whole}${part}: write it without the comma`
          : say`${written} could be ${whole},${part} or ${whole}${part}: write it without the point`;
      return { text: "", why };
    }
    return { text: `${whole}.${part}` };
  }
  const grouping = once ? otherMark(last) : last;
  const grouped = once ? whole : written;
  if (!new RegExp(`^\\d{1,3}(?:\\${grouping}\\d{3})+$`).test(grouped)) {
    return { text: "", why: say`The marks in ${written} are not where thousands stand` };
  }
  const digits = grouped.replaceAll(grouping, "");
  return { text: once ? `${digits}.${part}` : digits };
}

const otherMark = (mark: string) => (mark === "," ? "." : ",");

function cutAtLast(text: string, mark: string): readonly [string, string] {
  const at = text.lastIndexOf(mark);
  return [text.slice(0, at), text.slice(at + 1)];
}
