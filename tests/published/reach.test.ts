import { describe, expect, it } from "vitest";
import { reachOf } from "../../src/access/reach.ts";
import { type Garden, INCH, itemId, LIMITS, limitsOf } from "../../src/index.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { unreachableSoil } from "../../src/rules/unreachable-soil.ts";
import { bed, fence, gardenWith } from "../helpers/garden-of.ts";
import { caseOf, fact, factOf, given } from "./cases.ts";

/**
 * Beds and reach against the published figures. Beds here are mounds, so that all their soil counts up to the edge: a
 * wall would take its own thickness off the soil and pass a bed that much wider.
 */
const mound = { made: "mound", height: 300 } as const;
const LENGTH = 120 * INCH;

interface Trial {
  readonly width: number;
  readonly sides: "one" | "both";
  readonly gardener?: Partial<Garden["gardener"]>;
  readonly units?: Garden["units"];
}

/** Whether a bed of this width passes, open on one long side or on both. */
function passes({ width, sides, gardener = {}, units = "us" }: Trial): boolean {
  const between = bed("salads", { w: width, h: LENGTH, wall: mound });
  const closing = fence("fence", { from: [-20, -6000], to: [-20, 9000], thickness: 40 });
  const nobody = { kneeling: true, barrow: false, wheelchair: false, child: false };
  const garden = gardenWith(
    { units, gardener: { ...nobody, ...gardener } },
    between,
    ...(sides === "one" ? [closing] : []),
  );
  const facts = computeFacts(garden, unreachableSoil.needs);
  return !unreachableSoil.check(facts).some(({ itemIds }) => itemIds.includes(itemId("salads")));
}

/** A hair beyond the tolerance of 0.5 mm, at the farthest soil: twice that in a width that is reached from both sides. */
const HAIR = 0.7;

/** Passes at the width, a tolerance below and within the tolerance above; fails beyond it. */
function holdsAt(limit: number, trial: Omit<Trial, "width">): void {
  const shares = trial.sides === "both" ? 2 : 1;
  expect(passes({ ...trial, width: limit }), "at the limit").toBe(true);
  expect(passes({ ...trial, width: limit - HAIR * shares }), "below it").toBe(true);
  expect(passes({ ...trial, width: limit + 0.4 * shares }), "above it within the tolerance").toBe(true);
  expect(passes({ ...trial, width: limit + HAIR * shares }), "above it").toBe(false);
}

describe("a seated gardener's bed (2010 ADA Standards 308.3.2, by analogy)", () => {
  const wheelchair = { wheelchair: true, kneeling: false };

  it("AC-20: 24 in from one side passes", () => {
    expect(caseOf("AC-20").expect).toBe("pass");
    holdsAt(given("AC-20", "bed_width_in") * INCH, { sides: "one", gardener: wheelchair });
  });

  it("AC-22: 48 in from both sides passes", () => {
    expect(caseOf("AC-22").expect).toMatch(/^pass/);
    holdsAt(given("AC-22", "bed_width_in") * INCH, { sides: "both", gardener: wheelchair });
  });

  it("AC-23: 50 in from both sides fails", () => {
    expect(caseOf("AC-23").expect).toMatch(/^fail/);
    expect(
      passes({ width: given("AC-23", "bed_width_in") * INCH, sides: "both", gardener: wheelchair }),
    ).toBe(false);
  });

  it("holds the limit to the depth that 308.3.2 prints", () => {
    expect(LIMITS.seatedReach.default).toBe(fact("ADA-308.3.2", "max_obstruction_depth_in") * INCH);
  });
});

describe("a child's bed (PRAC-REACH, common practice)", () => {
  const child = { child: true };

  it("AC-33: 44 in from both sides fails where a child gardens", () => {
    expect(caseOf("AC-33").expect).toMatch(/^fail/);
    const width = given("AC-33", "bed_cell_width_in") * INCH;
    expect(passes({ width, sides: "both", gardener: child })).toBe(false);
    expect(passes({ width, sides: "both" }), "and passes where only adults do").toBe(true);
  });

  it("is 18 in deep from one side and 36 in from both", () => {
    holdsAt(fact("PRAC-REACH", "child_one_side_in") * INCH, { sides: "one", gardener: child });
    holdsAt(fact("PRAC-REACH", "child_both_sides_in") * INCH, { sides: "both", gardener: child });
  });
});

describe("an adult's bed", () => {
  it("is 24 in deep from one side and 48 in from both (PRAC-REACH, common practice)", () => {
    holdsAt(fact("PRAC-REACH", "adult_one_side_in") * INCH, { sides: "one" });
    holdsAt(fact("PRAC-REACH", "adult_both_sides_in") * INCH, { sides: "both" });
  });

  it("is at most 4 ft wide, and reach is 2 ft (UF/IFAS Extension ENH1211)", () => {
    expect(factOf("UF-1").source).toContain("ENH1211");
    holdsAt(fact("UF-1", "width_max_ft") * 12 * INCH, { sides: "both" });
    expect(LIMITS.reach.default).toBe(fact("UF-1", "reach_ft") * 12 * INCH);
  });

  it("is as wide in metric: 121.9 cm passes and 4 ft 1 in, 124.5 cm, does not", () => {
    holdsAt(1219.2, { sides: "both", units: "metric" });
    expect(passes({ width: 1245, sides: "both", units: "metric" })).toBe(false);
    holdsAt(609.6, { sides: "one", units: "metric" });
  });

  it("can be held to the narrower 500 mm from one side that a horticulture college gives (ACS-1)", () => {
    const limits = { reach: fact("ACS-1", "one_side_mm") };
    expect(reachOf(gardenWith({}).gardener, limitsOf({ limits }))).toBe(500);
  });

  it("OSU-V: the 3 to 4 ft of Ohio State University Extension are within reach from both sides", () => {
    expect(factOf("OSU-V").value).toMatchObject({ width_max_ft: { min: 3, max: 4 } });
    for (const feet of [3, 4]) expect(passes({ width: feet * 12 * INCH, sides: "both" })).toBe(true);
  });
});
