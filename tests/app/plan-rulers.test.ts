import { describe, expect, it } from "vitest";
import { gridSteps, marksBetween, rulerNumber, rulerUnit } from "../../app/plan/grid-steps.ts";
import { scaleBar } from "../../app/plan/scale-bar.ts";
import { FOOT, INCH } from "../../src/index.ts";

const scales = Array.from({ length: 200 }, (_, i) => 0.002 * 2000 ** (i / 199));

describe("the steps of grid and rulers", () => {
  it.each(["us", "metric"] as const)("are whole numbers of one another at every zoom (%s)", (units) => {
    for (const scale of scales) {
      const { major, minor } = gridSteps(scale, units);
      const parts = major / minor;
      expect(Math.abs(parts - Math.round(parts))).toBeLessThan(1e-9);
      expect(Math.round(parts)).toBeGreaterThanOrEqual(2);
    }
  });

  it.each(["us", "metric"] as const)("grow finer as the plan grows, and leave numbers room (%s)", (units) => {
    let last = Infinity;
    for (const scale of scales) {
      const { major } = gridSteps(scale, units);
      expect(major).toBeLessThanOrEqual(last);
      // A 1 km yard on a phone is past the ladder's coarsest step.
      if (scale > 0.003) expect(major * scale).toBeGreaterThanOrEqual(40);
      last = major;
    }
  });

  it("count a usual yard in 4 ft with a tick each foot, and a close look in inches", () => {
    expect(gridSteps(0.07, "us")).toEqual({ major: 4 * FOOT, minor: FOOT });
    expect(gridSteps(1, "us")).toEqual({ major: 3 * INCH, minor: INCH });
    expect(gridSteps(0.07, "metric")).toEqual({ major: 1000, minor: 200 });
  });

  it("mark from the yard's own corner, both ends included", () => {
    expect(marksBetween(250, 1150, 300, 100)).toEqual([400, 700, 1000]);
    expect(marksBetween(-500, 100, 300, 100)).toEqual([-500, -200, 100]);
    expect(marksBetween(110, 390, 300, 100)).toEqual([]);
  });

  it("never draw themselves to death", () => {
    expect(marksBetween(0, 1e9, 1, 0, 500)).toHaveLength(500);
  });
});

describe("a ruler's numbers", () => {
  const feet = { major: 4 * FOOT, minor: FOOT };
  const inches = { major: 3 * INCH, minor: INCH };
  it("are feet, or feet and inches close up", () => {
    expect(rulerNumber(12 * FOOT, feet, "us")).toBe("12");
    expect(rulerUnit(feet, "us")).toBe("ft");
    expect(rulerNumber(9 * INCH, inches, "us")).toBe("9″");
    expect(rulerNumber(2 * FOOT, inches, "us")).toBe("2′");
    expect(rulerNumber(27 * INCH, inches, "us")).toBe("2′3″");
    expect(rulerUnit(inches, "us")).toBe("ft in");
  });
  it("are metres, or centimetres close up", () => {
    expect(rulerNumber(3500, { major: 1000, minor: 200 }, "metric")).toBe("3.5");
    expect(rulerNumber(350, { major: 50, minor: 10 }, "metric")).toBe("35");
  });
  it("carry a true minus outside the yard, and none at nothing", () => {
    expect(rulerNumber(-8 * FOOT, feet, "us")).toBe("−8");
    expect(rulerNumber(-15 * INCH, inches, "us")).toBe("−1′3″");
    expect(rulerNumber(-0.0000001, feet, "us")).toBe("0");
    expect(rulerNumber(-0.0000001, inches, "us")).toBe("0″");
  });
});

describe("the scale bar", () => {
  it.each(["us", "metric"] as const)(
    "is never longer than its room while one of its lengths fits (%s)",
    (units) => {
      for (const scale of scales) {
        const { mm } = scaleBar(scale, units);
        expect(mm * scale).toBeLessThanOrEqual(220);
        expect(mm * scale).toBeGreaterThan(60);
      }
    },
  );
  it("says its length in round words", () => {
    expect(scaleBar(0.07, "us")).toEqual({ mm: 8 * FOOT, words: "8 ft" });
    expect(scaleBar(0.07, "metric")).toEqual({ mm: 2000, words: "2 m" });
    expect(scaleBar(0.4, "metric")).toEqual({ mm: 400, words: "40 cm" });
  });
});
