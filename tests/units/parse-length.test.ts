import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LengthError, parseLength, type Units } from "../../src/index.ts";

const inch = (inches: number) => (inches * 254) / 10;

function reasonFor(text: string, units: Units = "us"): string {
  try {
    parseLength(text, units);
  } catch (error) {
    if (error instanceof LengthError) return error.reason;
    throw error;
  }
  return `accepted ${text}`;
}

describe("parseLength", () => {
  it.each([
    ["4' 6 1/2\"", 54.5],
    ["4ft 6.5in", 54.5],
    ['54.5"', 54.5],
    ["54.5", 54.5],
    ["4'", 48],
    ["4 ft", 48],
    ["4 feet", 48],
    ["1 foot", 12],
    ["4.5 ft", 54],
    ["4'6", 54],
    ["4' 6", 54],
    ["4' 6 1/2", 54.5],
    ["4'-6 1/2\"", 54.5],
    ["4 ft, 6 in", 54],
    ["4 ft. 6 in.", 54],
    ["6-1/2", 6.5],
    ["6 - 1/2 in", 6.5],
    ["6½", 6.5],
    ["6 ½″", 6.5],
    ["⅜ in", 0.375],
    ["3/8", 0.375],
    ["5 13/16 inches", 5.8125],
    ["6 1⁄2", 6.5],
    ["4′ 6½″", 54.5],
    ["4’ 6”", 54],
    ["4’ 6’’", 54],
    ["4'6''", 54],
    ["  48 IN ", 48],
    ["48 inch", 48],
    ["0", 0],
    [".5", 0.5],
    ["1 yd", 36],
    ["2 yards 1 ft 3 in", 87],
    ["4 ft 6 in", 54],
    ["4'.5", 48.5],
  ])("reads %j as %d in", (text, inches) => {
    expect(parseLength(text, "us")).toBe(inch(inches));
  });

  it.each([
    ["1.38 m", 1380],
    ["1,38 m", 1380],
    ["138", 1380],
    ["138.5", 1385],
    ["12,5 cm", 125],
    ["12,5", 125],
    ["1 m 20 cm", 1200],
    ["1m20", 1200],
    ["1 m 20", 1200],
    ["1 m 20 cm 5 mm", 1205],
    ["1 m 5 mm", 1005],
    ["47 mm", 47],
    ["1 200 mm", 1200],
    ["1,234.5 mm", 1234.5],
    ["1.234,5 mm", 1234.5],
    ["0,125 m", 125],
    ["1.005 m", 1005],
    ["2 metres", 2000],
    ["2 meters 7 centimeters", 2070],
    ["½", 5],
  ])("reads %j as %d mm", (text, mm) => {
    expect(parseLength(text, "metric")).toBe(mm);
  });

  it("reads either system's units whatever the garden is shown in", () => {
    expect(parseLength("1.38 m", "us")).toBe(1380);
    expect(parseLength("4' 6\"", "metric")).toBe(inch(54));
  });

  it("takes a minus sign only where it is asked for", () => {
    expect(parseLength("-3 ft", "us", { negative: true })).toBe(-inch(36));
    expect(parseLength("−12,5 cm", "metric", { negative: true })).toBe(-125);
    expect(parseLength("-0", "us", { negative: true })).toBe(0);
    expect(reasonFor("-3 ft")).toBe("A length cannot be below zero.");
  });

  it.each([
    ["", "Type a length, such as 4′ 6½″."],
    ["wide", "“wide” is not a length. Try 4′ 6½″."],
    ["4 furlongs", "“furlongs” is not a unit of length: write ft, in, m, cm or mm."],
    ["4 6", "“4 6” has a number without a unit: write ft, in, m, cm or mm."],
    ["4-6", "“4-6” is not a length. Try 4′ 6½″."],
    ["1/0", "1/0 divides by nothing."],
    ["6 3/2", "3/2 is a whole or more, so 6 3/2 is unclear."],
    ["1,200", "1,200 could be 1.200 or 1200: write it without the comma."],
    ["1.2.3", "The marks in 1.2.3 are not where thousands stand."],
    ["4.5 ft 6 in", "Only the last part of a length may have a fraction."],
    ["6 in 4 ft", "Feet cannot come after inches."],
    ["4 ft 4 ft", "Feet cannot come after feet."],
    ["4 ft 20 cm", "Feet and centimetres do not mix."],
    ["4 ft -", "The length is not finished."],
    ["1e3", "“e” is not a unit of length: write ft, in, m, cm or mm."],
    ["Infinity", "“Infinity” is not a length. Try 4′ 6½″."],
    ["0.1234567890123456 m", "0.1234567890123456 has more digits than can be measured."],
    ["1001 m", "That is more than 1 km."],
    ["5 cm 3", "“5 cm 3” has a number without a unit: write ft, in, m, cm or mm."],
  ])("says what is wrong with %j", (text, reason) => {
    expect(reasonFor(text)).toBe(reason);
  });

  it("answers any text at all with a length from 0 to 1 km or a LengthError", () => {
    const pieces = fc.constantFrom(
      ..."0123456789 .,/'\"-½⅜′″".split(""),
      "ft",
      "in",
      "m",
      "cm",
      "mm",
      "1/2",
      "x",
    );
    const likely = fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join(""));
    const check = (text: string, units: Units) => {
      try {
        const mm = parseLength(text, units);
        expect(mm >= 0 && mm <= 1_000_000, `${text} gave ${mm}`).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(LengthError);
      }
    };
    const units = fc.constantFrom<Units>("us", "metric");
    fc.assert(fc.property(fc.oneof(likely, fc.string({ unit: "binary" })), units, check), {
      seed: 20261125,
      numRuns: 3000,
    });
  });
});
