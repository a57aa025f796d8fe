import { describe, expect, it } from "vitest";
import { LEAD_LEVELS, leadVerdicts } from "../../src/garden/soil-lead.ts";
import { FOOT } from "../../src/index.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { nearOldPaint } from "../../src/rules/near-old-paint.ts";
import { bed, gardenOf, house } from "../helpers/garden-of.ts";
import { caseOf, fact, given } from "./cases.ts";

/** The levels in the words of the cases, which name their edition. */
const IN_THE_CASES: Readonly<Record<string, number>> = {
  "EPA 2024 multiple-source 100 (superseded)": 100,
  "EPA 2025 screening 200": 200,
  "UMD gardening 400": 400,
  "EPA 2025 removal level 600": 600,
};

describe("lead in soil", () => {
  it.each(["LD-PB", "LD-PB2"])("stands to each published level as the case says, %s", (id) => {
    const verdicts = new Map(
      leadVerdicts(given(id, "soil_lead_ppm")).map(({ level, above }) => [
        level.ppm,
        above ? "above" : "below",
      ]),
    );
    const said = Object.entries(caseOf(id).expect as Record<string, string>);
    expect(said.length).toBeGreaterThan(2);
    for (const [words, verdict] of said) expect(verdicts.get(IN_THE_CASES[words] ?? -1), words).toBe(verdict);
  });

  it("is held to the levels as published, the superseded one marked", () => {
    // LEAD-2024, LEAD-2025 and LEAD-UMD.
    const ppm = (superseded: boolean) =>
      LEAD_LEVELS.filter((level) => level.superseded === superseded).map((level) => level.ppm);
    expect(ppm(true)).toEqual([fact("LEAD-2024", "multiple_sources_ppm")]);
    expect(ppm(false)).toEqual([
      fact("LEAD-2025", "screening_ppm"),
      fact("LEAD-UMD", "do_not_grow_over_ppm"),
      fact("LEAD-2025", "removal_management_ppm"),
    ]);
  });

  it("is not above a level that it just reaches", () => {
    expect(leadVerdicts(200).map(({ above }) => above)).toEqual([true, false, false, false]);
    expect(leadVerdicts(200.1).map(({ above }) => above)).toEqual([true, true, false, false]);
  });

  it("keeps beds as far from old paint as the guide says, LEAD-WALL", () => {
    const guide = fact("LEAD-WALL", "guide_ft") * FOOT;
    const snags = (far: number) =>
      nearOldPaint.check(
        computeFacts(
          gardenOf(
            bed("salads", { w: 1200, h: 2500 }),
            house("house", { x: 1200 + far, h: 3000, oldPaint: true }),
          ),
          nearOldPaint.needs,
        ),
      );
    expect(snags(guide)).toEqual([]);
    expect(snags(guide - 0.6)).toHaveLength(1);
  });
});
