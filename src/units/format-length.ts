import { say } from "../words/say.ts";
import { fixed } from "./decimals.ts";
import { FOOT, INCH, type Units } from "./length.ts";

const SIXTEENTHS = 16;
const FRACTION_SIGNS: Readonly<Record<number, string>> = {
  2: "⅛",
  4: "¼",
  6: "⅜",
  8: "½",
  10: "⅝",
  12: "¾",
  14: "⅞",
};

/**
 * A length in full: feet and inches to the nearest 1/16 in (`4′ 6½″`), or metres and centimetres to the millimetre
 * (`1.38 m`, `47.5 cm`, `3 mm`). `parseLength` reads it back.
 * @throws RangeError for a length that is not finite
 */
export function formatLength(mm: number, units: Units): string {
  return signed(mm, units === "us" ? feetAndInches : metresOrLess);
}

/** A size as it is said of boards, beds and gaps: inches alone (`48 in`, `16½ in`) or centimetres (`120 cm`). */
export function formatShort(mm: number, units: Units): string {
  return signed(mm, units === "us" ? (size) => say`${inches(sixteenthsOf(size))} in` : centimetresOrLess);
}

/** A length in words a screen reader says well: `4 ft 6½ in`, `4 ft`, `11 in`; metric as `formatLength`. */
export function formatSpoken(mm: number, units: Units): string {
  return signed(mm, units === "us" ? feetAndInchesInWords : metresOrLess);
}

/** A way or a hose, where inches do not matter: whole feet (`26 ft`) or metres to one decimal (`7.9 m`). */
export function formatDistance(mm: number, units: Units): string {
  return signed(mm, (far) =>
    units === "us" ? say`${Math.round(far / FOOT)} ft` : `${fixed(far / 1000, 1)} m`,
  );
}

function signed(mm: number, format: (size: number) => string): string {
  if (!Number.isFinite(mm)) throw new RangeError(`not a length: ${mm}`);
  const size = format(Math.abs(mm));
  return mm < 0 && /[1-9½¼¾⅛⅜⅝⅞]/.test(size) ? `−${size}` : size;
}

const sixteenthsOf = (mm: number): number => Math.round((mm / INCH) * SIXTEENTHS);

function feetAndInches(mm: number): string {
  const sixteenths = sixteenthsOf(mm);
  const feet = Math.floor(sixteenths / (12 * SIXTEENTHS));
  const rest = `${inches(sixteenths - feet * 12 * SIXTEENTHS)}″`;
  return feet > 0 ? `${feet}′ ${rest}` : rest;
}

function feetAndInchesInWords(mm: number): string {
  const sixteenths = sixteenthsOf(mm);
  const feet = Math.floor(sixteenths / (12 * SIXTEENTHS));
  const rest = sixteenths - feet * 12 * SIXTEENTHS;
  if (feet === 0) return say`${inches(rest)} in`;
  return rest === 0 ? say`${feet} ft` : say`${feet} ft ${inches(rest)} in`;
}

function inches(sixteenths: number): string {
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  const part = sixteenths % SIXTEENTHS;
  if (part === 0) return `${whole}`;
  const sign = FRACTION_SIGNS[part];
  // There is no sign for odd sixteenths; a plain fraction keeps its distance from the whole number.
  if (!sign) return whole > 0 ? `${whole} ${part}/16` : `${part}/16`;
  return whole > 0 ? `${whole}${sign}` : sign;
}

function metresOrLess(mm: number): string {
  const whole = Math.round(mm);
  if (whole < 1000) return centimetresOrLess(whole);
  return `${fixed(whole / 1000, whole % 10 === 0 ? 2 : 3)} m`;
}

function centimetresOrLess(mm: number): string {
  const whole = Math.round(mm);
  if (whole < 10) return whole === 0 ? "0 cm" : `${whole} mm`;
  return `${whole % 10 === 0 ? whole / 10 : fixed(whole / 10, 1)} cm`;
}
