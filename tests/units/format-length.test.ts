import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatDistance, formatLength, formatShort, parseLength } from "../../src/index.ts";

const inch = (inches: number) => (inches * 254) / 10;

describe("formatLength", () => {
  it.each([
    [0, "0″"],
    [inch(11), "11″"],
    [inch(48), "4′ 0″"],
    [inch(54.5), "4′ 6½″"],
    [inch(54.0625), "4′ 6 1/16″"],
    [inch(0.125), "⅛″"],
    [inch(0.1875), "3/16″"],
    [inch(47.99), "4′ 0″"],
    [-inch(30), "−2′ 6″"],
    [-0.001, "0″"],
  ])("writes %d mm in feet and inches as %s", (mm, text) => {
    expect(formatLength(mm, "us")).toBe(text);
  });

  it.each([
    [0, "0 cm"],
    [3, "3 mm"],
    [47, "4.7 cm"],
    [475, "47.5 cm"],
    [900, "90 cm"],
    [999.6, "1.00 m"],
    [1380, "1.38 m"],
    [2405, "2.405 m"],
    [-250, "−25 cm"],
  ])("writes %d mm in metric as %s", (mm, text) => {
    expect(formatLength(mm, "metric")).toBe(text);
  });

  it("refuses what is not a length", () => {
    expect(() => formatLength(Number.NaN, "us")).toThrow(RangeError);
  });

  it("is read back exactly for every sixteenth of an inch up to 1 km", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 629_900 }), (sixteenths) => {
        const mm = (sixteenths * 254) / 160;
        expect(parseLength(formatLength(mm, "us"), "us")).toBe(mm);
        expect(parseLength(formatShort(mm, "us"), "us")).toBe(mm);
      }),
      { numRuns: 2000, seed: 7 },
    );
    for (let sixteenths = 0; sixteenths <= 16 * 12 * 50; sixteenths++) {
      const mm = (sixteenths * 254) / 160;
      expect(parseLength(formatLength(mm, "us"), "metric")).toBe(mm);
    }
  });

  it("is read back exactly for every whole millimetre up to 20 m", () => {
    for (let mm = 0; mm <= 20_000; mm++) {
      expect(parseLength(formatLength(mm, "metric"), "metric")).toBe(mm);
      expect(parseLength(formatShort(mm, "metric"), "us")).toBe(mm);
    }
  });
});

describe("formatShort", () => {
  it.each([
    [inch(48), "48 in", "121.9 cm"],
    [inch(16.5), "16½ in", "41.9 cm"],
    [1200, "47¼ in", "120 cm"],
  ])("writes %d mm as %s or %s", (mm, us, metric) => {
    expect(formatShort(mm, "us")).toBe(us);
    expect(formatShort(mm, "metric")).toBe(metric);
  });
});

describe("formatDistance", () => {
  it("rounds a walk to whole feet or to a tenth of a metre", () => {
    expect(formatDistance(inch(26 * 12 + 2), "us")).toBe("26 ft");
    expect(formatDistance(7940, "metric")).toBe("7.9 m");
  });
});
