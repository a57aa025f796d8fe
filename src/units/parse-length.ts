import { midSentence } from "../words/phrases.ts";
import { say, told, word } from "../words/say.ts";
import { formatLength } from "./format-length.ts";
import { INCH, type Units } from "./length.ts";
import { LengthError } from "./length-error.ts";
import { type Fraction, readNumber } from "./parse-number.ts";

interface LengthUnit {
  readonly name: string;
  /** Millimetres, in tenths: whole for every unit, since an inch is 25.4 mm. */
  readonly tenths: number;
  readonly system: Units;
}

const YARD: LengthUnit = { name: word("Yards"), tenths: 9144, system: "us" };
const FEET: LengthUnit = { name: word("Feet"), tenths: 3048, system: "us" };
const INCHES: LengthUnit = { name: word("Inches"), tenths: 254, system: "us" };
const METRES: LengthUnit = { name: word("Metres"), tenths: 10_000, system: "metric" };
const CENTIMETRES: LengthUnit = { name: word("Centimetres"), tenths: 100, system: "metric" };
const MILLIMETRES: LengthUnit = { name: word("Millimetres"), tenths: 10, system: "metric" };

const WRITTEN = new Map<string, LengthUnit>([
  ...["yd", "yds", "yard", "yards"].map((name) => [name, YARD] as const),
  ...["'", "ft", "foot", "feet", "fuß", "fuss"].map((name) => [name, FEET] as const),
  ...['"', "in", "ins", "inch", "inches", "zoll"].map((name) => [name, INCHES] as const),
  ...["m", "metre", "metres", "meter", "meters"].map((name) => [name, METRES] as const),
  ...["cm", "centimetre", "centimetres", "centimeter", "centimeters", "zentimeter"].map(
    (name) => [name, CENTIMETRES] as const,
  ),
  ...["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map(
    (name) => [name, MILLIMETRES] as const,
  ),
]);

/** What a number alone means, and what one left over after a larger unit means: 4' 6 is 4 ft 6 in. */
const BARE: Readonly<Record<Units, LengthUnit>> = { us: INCHES, metric: CENTIMETRES };
const LEFT_OVER = new Map<LengthUnit, LengthUnit>([
  [FEET, INCHES],
  [METRES, CENTIMETRES],
]);

/** What may be typed, written as lengths are. */
const example = (units: Units): string => formatLength(units === "us" ? 54.5 * INCH : 1380, units);

/** 1 km: longer than anything in a yard. */
const LONGEST = 1_000_000;

interface Part {
  readonly value: Fraction;
  readonly whole: boolean;
  readonly unit: LengthUnit | null;
}

/**
 * Reads a length as people type it: feet, inches and fractions (`4' 6 1/2"`, `4ft 6.5in`, `6½`), metres, centimetres
 * and millimetres (`1.38 m`, `12,5 cm`, `1 m 20`), whatever units the garden is shown in.
 *
 * A number alone is inches in "us" and centimetres in "metric". The answer is the nearest double to the length
 * written, so sixteenths of an inch and whole millimetres are exact.
 *
 * @param options.negative lets a minus sign stand before the whole length; refused otherwise
 * @returns mm
 * @throws LengthError with a sentence that says what was wrong
 */
export function parseLength(text: string, units: Units, options: { negative?: boolean } = {}): number {
  const fail = (reason: string): never => {
    throw new LengthError(text, reason);
  };
  const typed = plainMarks(text);
  if (typed === "") return fail(say`Type a length, such as ${example(units)}.`);

  const negative = typed.startsWith("-");
  if (negative && !options.negative) return fail(say`A length cannot be below zero.`);
  const parts = readParts(negative ? typed.slice(1).trimStart() : typed, text, units);
  const [first] = parts;
  const named = parts.length === 1 && first && !first.unit ? [{ ...first, unit: BARE[units] }] : parts;
  const mm = total(named.map((part, i) => ({ ...part, unit: unitOf(named, i) ?? fail(unnamed(text)) })));
  if (mm > LONGEST) return fail(say`That is more than 1 km.`);
  return negative && mm > 0 ? -mm : mm;
}

const unnamed = (text: string) =>
  say`“${shortened(text)}” has a number without a unit: write ft, in, m, cm or mm.`;

function unitOf(parts: readonly Part[], i: number): LengthUnit | null {
  const own = parts[i]?.unit ?? null;
  const before = parts[i - 1]?.unit;
  if (own || !before || i !== parts.length - 1) return own;
  return LEFT_OVER.get(before) ?? null;
}

function readParts(typed: string, text: string, units: Units): readonly Part[] {
  const parts: Part[] = [];
  let rest = typed;
  while (rest !== "") {
    const number = readNumber(rest);
    if (number === null) {
      throw new LengthError(text, say`“${shortened(text)}” is not a length. Try ${example(units)}.`);
    }
    if (typeof number === "string") throw new LengthError(text, `${number}.`);
    const { unit, after } = readUnit(number.rest.trimStart(), text);
    const part: Part = { value: number.value, whole: number.whole, unit };
    const wrong = misfit(parts.at(-1), part);
    if (wrong) throw new LengthError(text, wrong);
    parts.push(part);
    rest = unit ? after.replace(/^\s*[,-]?\s*/, "") : after.trimStart();
    // "4 ft -" ends in the air.
    if (rest === "" && unit && /[,-]\s*$/.test(after))
      throw new LengthError(text, say`The length is not finished.`);
  }
  if (parts.length === 0)
    throw new LengthError(text, say`“${shortened(text)}” is not a length. Try ${example(units)}.`);
  return parts;
}

function readUnit(rest: string, text: string): { readonly unit: LengthUnit | null; readonly after: string } {
  const written = /^(?:['"]|\p{L}+)/u.exec(rest)?.[0];
  if (!written) return { unit: null, after: rest };
  const unit = WRITTEN.get(written);
  if (!unit) {
    const reason = say`“${shortened(written)}” is not a unit of length: write ft, in, m, cm or mm.`;
    throw new LengthError(text, reason);
  }
  const after = rest.slice(written.length);
  // "ft." and "in." as the trade writes them; after a prime a point is a slip.
  return { unit, after: /^\p{L}/u.test(written) ? after.replace(/^\.(?!\d)/, "") : after };
}

/** Why a part cannot follow the one before it. */
function misfit(before: Part | undefined, { unit }: Part): string | null {
  if (!before?.unit) return null;
  if (!before.whole) return say`Only the last part of a length may have a fraction.`;
  if (!unit) return null;
  if (unit.system !== before.unit.system)
    return say`${told(before.unit.name)} and ${midSentence(told(unit.name))} do not mix.`;
  if (unit.tenths >= before.unit.tenths)
    return say`${told(unit.name)} cannot come after ${midSentence(told(before.unit.name))}.`;
  return null;
}

/** Millimetres, rounded once: everything before the division is whole numbers. */
function total(parts: readonly { readonly value: Fraction; readonly unit: LengthUnit }[]): number {
  let sum: Fraction = { over: 0, under: 1 };
  for (const { value, unit } of parts) {
    const part = { over: value.over * unit.tenths, under: value.under * 10 };
    sum = { over: sum.over * part.under + part.over * sum.under, under: sum.under * part.under };
  }
  return sum.over / sum.under;
}

const VULGAR_SIGNS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** The many marks of keyboards, phones and word processors, made plain. */
function plainMarks(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR_SIGNS[sign]}`)
    .replace(/[⁄∕]/g, "/")
    .replace(/[−‐‑‒–—]/g, "-")
    .replace(/[′‘’‛`´ʹ]/g, "'")
    .replace(/[″“”‟„ʺ]/g, '"')
    .replace(/''/g, '"')
    .replace(/\s+/g, " ")
    .toLowerCase()
    .trim();
}

const MOST_QUOTED = 30;
const shortened = (text: string) =>
  text.trim().length > MOST_QUOTED ? `${text.trim().slice(0, MOST_QUOTED)}…` : text.trim();
