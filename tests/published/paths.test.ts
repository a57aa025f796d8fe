import { describe, expect, it } from "vitest";
import { type Garden, INCH, LIMITS } from "../../src/index.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { narrowDrawnPath } from "../../src/rules/narrow-drawn-path.ts";
import { narrowPath } from "../../src/rules/narrow-path.ts";
import { bed, gardenWith, path } from "../helpers/garden-of.ts";
import { fact, factOf } from "./cases.ts";

type Gardener = Partial<Garden["gardener"]>;
const nobody = { kneeling: false, barrow: false, wheelchair: false, child: false };

/** Whether two beds may stand this far apart. */
function gapPasses(gap: number, gardener: Gardener, units: Garden["units"] = "us"): boolean {
  const garden = gardenWith(
    { units, gardener: { ...nobody, ...gardener } },
    bed("salads", { w: 900, h: 2500 }),
    bed("roots", { x: 900 + gap, y: 300, w: 800, h: 2100 }),
  );
  return narrowPath.check(computeFacts(garden, narrowPath.needs)).length === 0;
}

/** The grade of the snag of a drawn path of this width, or null for none. */
function drawnGrade(width: number, use: "main" | "side", gardener: Gardener) {
  const way = path("way", { from: [0, 0], to: [6000, 800], width, use });
  const garden = gardenWith({ gardener: { ...nobody, ...gardener } }, way);
  return narrowDrawnPath.check(computeFacts(garden, narrowDrawnPath.needs))[0]?.grade ?? null;
}

/** A hair beyond the tolerance of 0.5 mm. */
const HAIR = 0.6;

function gapHoldsAt(limit: number, gardener: Gardener, units: Garden["units"] = "us"): void {
  expect(gapPasses(limit, gardener, units), "at the limit").toBe(true);
  expect(gapPasses(limit + HAIR, gardener, units), "above it").toBe(true);
  expect(gapPasses(limit - 0.4, gardener, units), "below it within the tolerance").toBe(true);
  expect(gapPasses(limit - HAIR, gardener, units), "below it").toBe(false);
}

describe("paths between beds (PRAC-PATH, common practice)", () => {
  it("are 18 in to stand in", () => gapHoldsAt(fact("PRAC-PATH", "foot_min_in") * INCH, {}));

  it("are 24 in to kneel in", () => gapHoldsAt(fact("PRAC-PATH", "kneeling_in") * INCH, { kneeling: true }));

  it("are 36 in for a wheelchair (2010 ADA Standards 403.5.1)", () => {
    gapHoldsAt(fact("PRAC-PATH", "wheelchair_in") * INCH, { wheelchair: true });
    expect(LIMITS.wheelchairWay.default).toBe(fact("ADA-403.5.1", "min_in") * INCH);
  });

  it("are flagged at 23 1/2 in and not at 24 in, in inches and in metric", () => {
    for (const units of ["us", "metric"] as const) {
      expect(gapPasses(23.5 * INCH, { kneeling: true }, units)).toBe(false);
      gapHoldsAt(24 * INCH, { kneeling: true }, units);
    }
    expect(gapPasses(600, { kneeling: true }, "metric")).toBe(false);
    expect(gapPasses(610, { kneeling: true }, "metric")).toBe(true);
  });

  it("stay within the 18 to 24 in of Colorado State University Extension (CSU-PATH) and UF/IFAS ENH1211 (UF-PATH)", () => {
    expect(factOf("CSU-PATH").value).toMatchObject({ walkway_in: { min: 18, max: 24 } });
    expect(factOf("UF-PATH").value).toEqual({ min: 18, max: 24 });
    expect([LIMITS.standingRoom.default, LIMITS.kneelingWay.default]).toEqual([18 * INCH, 24 * INCH]);
  });

  it("do not pass at the foot or so of one newspaper column (PATH-MAINE), which no extension service gives", () => {
    expect(gapPasses(Number(factOf("PATH-MAINE").value) * INCH, {})).toBe(false);
  });
});

describe("drawn paths (PRAC-PATH, common practice)", () => {
  it("are 36 in on the main way of a barrow: a should, until one cannot kneel either", () => {
    const limit = fact("PRAC-PATH", "wheelbarrow_in") * INCH;
    const gardener = { barrow: true, kneeling: true };
    expect(drawnGrade(limit, "main", gardener)).toBeNull();
    expect(drawnGrade(limit - 0.4, "main", gardener)).toBeNull();
    expect(drawnGrade(limit - HAIR, "main", gardener)).toBe("should");
    expect(drawnGrade(fact("PRAC-PATH", "kneeling_in") * INCH - HAIR, "main", gardener)).toBe("must");
  });

  it("are 24 in at the side, and 36 in everywhere for a wheelchair", () => {
    const kneeling = fact("PRAC-PATH", "kneeling_in") * INCH;
    expect(drawnGrade(kneeling, "side", { kneeling: true, barrow: true })).toBeNull();
    expect(drawnGrade(kneeling - HAIR, "side", { kneeling: true, barrow: true })).toBe("must");
    const wheelchair = fact("PRAC-PATH", "wheelchair_in") * INCH;
    expect(drawnGrade(wheelchair, "side", { wheelchair: true })).toBeNull();
    expect(drawnGrade(wheelchair - HAIR, "side", { wheelchair: true })).toBe("must");
  });
});
