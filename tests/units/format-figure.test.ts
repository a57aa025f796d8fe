import { describe, expect, it } from "vitest";
import {
  formatArea,
  formatBulk,
  formatHours,
  formatMoney,
  formatRatio,
  formatShare,
  formatVolume,
  formatWeight,
  LengthError,
  parseRatio,
} from "../../src/index.ts";

// Conversions checked against NIST Special Publication 811, appendix B.8 (values from memory):
// 1 ft² = 0.09290304 m², 1 ft³ = 28.316846592 L, 1 yd³ = 764.554857984 L, 1 lb = 0.45359237 kg.
describe("figures", () => {
  it("writes areas", () => {
    expect(formatArea(32 * 92_903.04, "us")).toBe("32 ft²");
    expect(formatArea(2_880_000, "metric")).toBe("2.88 m²");
  });
  it("writes volumes", () => {
    expect(formatVolume(29.6 * 28.316846592, "us")).toBe("29.6 ft³");
    expect(formatVolume(838.4, "metric")).toBe("838 L");
    expect(formatVolume(1234, "metric")).toBe("1.23 m³");
  });
  it("writes bulk volumes as the soil yard sells them", () => {
    expect(formatBulk(2.5 * 764.554857984, "us")).toBe("2.5 yd³");
    expect(formatBulk(2750, "metric")).toBe("2.75 m³");
  });
  it("writes weights", () => {
    expect(formatWeight(1250 * 0.45359237, "us")).toBe("1,250 lb");
    expect(formatWeight(56.23, "metric")).toBe("56.2 kg");
  });
  it("writes money in the garden's currency", () => {
    expect(formatMoney(842.5, "USD")).toBe("$842.50");
    expect(formatMoney(842.5, "EUR", false)).toBe("€843");
    expect(() => formatMoney(1, "dollars")).toThrow(RangeError);
  });
  it("writes slopes, shares and hours", () => {
    expect(formatRatio(0.05)).toBe("1:20");
    expect(formatRatio(1 / 48)).toBe("1:48");
    expect(formatRatio(0)).toBe("level");
    expect(() => formatRatio(-0.1)).toThrow(RangeError);
    expect(formatShare(0.807)).toBe("81 %");
    expect(formatHours(4.56)).toBe("4.6 h");
  });
  it("never writes minus nothing, and refuses what is not a figure", () => {
    expect(formatArea(-1, "metric")).toBe("0 m²");
    expect(() => formatArea(Number.NaN, "us")).toThrow(RangeError);
  });
});

describe("parseRatio", () => {
  it.each([
    ["1:20", 0.05],
    ["1 in 48", 1 / 48],
    ["5 %", 0.05],
    ["0.05", 0.05],
    ["2,5 %", 0.025],
    ["level", 0],
  ])("reads %j", (text, slope) => {
    expect(parseRatio(text)).toBeCloseTo(slope, 12);
  });
  it.each(["", "steep", "1:0", "3:1", "-1:20", "150 %"])("refuses %j", (text) => {
    expect(() => parseRatio(text)).toThrow(LengthError);
  });
});
