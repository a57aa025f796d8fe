import { describe, expect, it } from "vitest";
import { citedBy } from "../../src/garden/limits.ts";
import { practice } from "../../src/garden/source.ts";
import {
  defaultLimit,
  EDITIONS,
  type EditionId,
  editionIds,
  emptyGarden,
  INCH,
  LIMITS,
  type LimitId,
  limitIds,
  limitsOf,
} from "../../src/index.ts";

describe("limits", () => {
  it("stand at their defaults until the gardener changes one", () => {
    const garden = { ...emptyGarden("us"), limits: { reach: 555 } };
    const held = limitsOf(garden);
    expect(held.reach).toBe(555);
    for (const id of limitIds) if (id !== "reach") expect(held[id]).toBe(LIMITS[id].default);
  });

  it("each have a label of their own, a default and a source that says something", () => {
    expect(new Set(limitIds.map((id) => LIMITS[id].label)).size).toBe(limitIds.length);
    for (const id of limitIds) {
      expect(LIMITS[id].default, id).toBeGreaterThan(0);
      expect(LIMITS[id].source.text.length, id).toBeGreaterThan(4);
    }
  });

  // 2010 ADA Standards for Accessible Design, sections named; inches as printed there.
  it.each([
    ["wheelchairWay", 36, "403.5.1"],
    ["wheelchairPinch", 32, "403.5.1"],
    ["wheelchairGate", 32, "404.2.3"],
    ["turnApproach", 42, "403.5.2"],
    ["turnAt", 48, "403.5.2"],
    ["turningCircle", 60, "304.3.1"],
    ["seatedRim", 34, "308.3.2"],
    ["knees", 27, "306.3"],
  ] as const)("%s is %d in by section %s", (id, inches, section) => {
    expect(LIMITS[id].default).toBeCloseTo(inches * 25.4, 9);
    expect(LIMITS[id].source.text).toContain(section);
  });

  describe("by edition", () => {
    const held = (edition: EditionId, limits = {}) =>
      limitsOf({ ...emptyGarden("us"), limits, gardener: { ...emptyGarden("us").gardener, edition } });

    // The pairs printed in chapters 3 and 4 of the 2010 ADA Standards; kept with their sources beside the check cases.
    it.each([
      ["wheelchairWay", 36, 915],
      ["wheelchairPinch", 32, 815],
      ["wheelchairPinchRun", 24, 610],
      ["turnApproach", 42, 1065],
      ["turnAt", 48, 1220],
      ["turningCircle", 60, 1525],
      ["seatedRim", 34, 865],
      ["knees", 27, 685],
    ] as const)("%s is %d in, or %d mm as printed, neither made from the other", (id, inches, mm) => {
      expect(held("ada-2010")[id]).toBe(inches * INCH);
      expect(held("ada-2010-mm")[id]).toBe(mm);
      expect(defaultLimit(id, "ada-2010-mm").source.text).toContain("as printed");
    });

    it("ask for the roomier circle, and for the wider metric ways, from memory", () => {
      expect(held("a117-2017").turningCircle).toBe(67 * INCH);
      expect(held("a117-2017").wheelchairWay).toBe(36 * INCH);
      expect(held("iso-21542").wheelchairWay).toBe(1200);
      expect(held("iso-21542").turningCircle).toBe(1500);
      expect(defaultLimit("turningCircle", "a117-2017").source.how).toBe("memory");
    });

    it("have figures for limits only", () => {
      const named = editionIds.flatMap((id) => Object.keys(EDITIONS[id].figures));
      expect(named.filter((id) => !limitIds.includes(id as LimitId))).toEqual([]);
    });

    it("give way to the gardener's own, and touch nothing that is no wheelchair's", () => {
      expect(held("ada-2010-mm", { turnAt: 1300 }).turnAt).toBe(1300);
      expect(held("ada-2010-mm").turnApproach).toBe(1065);
      for (const id of editionIds) expect(held(id).kneelingWay).toBe(24 * INCH);
    });

    it("are cited by what is held to them", () => {
      const cited = citedBy(LIMITS.turningCircle.source, { gardener: { edition: "iso-21542" } });
      expect(cited.text).toContain("ISO 21542");
      const own = practice("another book");
      expect(citedBy(own, { gardener: { edition: "iso-21542" } })).toBe(own);
    });
  });
});
