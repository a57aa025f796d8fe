import { describe, expect, it } from "vitest";
import { nextReduction, reductionOf, scaleOf, writeScale } from "../../app/topbar/drawing-scale.ts";

describe("the scale of the plan on the screen", () => {
  it("is the yard's own size at 96 pixels to the inch", () => {
    expect(reductionOf(96 / 25.4)).toBe(1);
    // A foot drawn a quarter of an inch long: 24 px for 304.8 mm.
    expect(reductionOf(24 / 304.8)).toBeCloseTo(48, 9);
    expect(reductionOf(scaleOf(37))).toBeCloseTo(37, 9);
  });

  it.each([
    [48, "us", "¼″ = 1′"],
    [48.3, "us", "¼″ = 1′"],
    [96, "us", "⅛″ = 1′"],
    [64, "us", "3/16″ = 1′"],
    [53.4, "us", "1 : 53"],
    [48, "metric", "1 : 48"],
    [50, "metric", "1 : 50"],
    [7.5, "metric", "1 : 7.5"],
  ] as const)("writes a reduction of %d in %s as %s", (reduction, units, text) => {
    expect(writeScale(reduction, units)).toBe(text);
  });

  it("steps along the rule either way, from on it or between", () => {
    expect(nextReduction(53, true, "us")).toBe(48);
    expect(nextReduction(53, false, "us")).toBe(64);
    expect(nextReduction(48, true, "us")).toBe(32);
    expect(nextReduction(48.2, true, "us")).toBe(32);
    expect(nextReduction(48, false, "us")).toBe(64);
    expect(nextReduction(53, true, "metric")).toBe(50);
    expect(nextReduction(50, false, "metric")).toBe(75);
  });

  it("ends where the rule ends", () => {
    expect(nextReduction(4, true, "us")).toBeNull();
    expect(nextReduction(1000, false, "metric")).toBeNull();
  });
});
