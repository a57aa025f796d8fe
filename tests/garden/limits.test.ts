import { describe, expect, it } from "vitest";
import { emptyGarden, LIMITS, limitIds, limitsOf } from "../../src/index.ts";

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
});
