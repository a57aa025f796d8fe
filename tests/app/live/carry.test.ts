import { describe, expect, it } from "vitest";
import { carriedOver } from "../../../app/live/carry.ts";
import { applyOps, itemId, survey } from "../../../src/index.ts";
import { bed, door, gardenOf, house, tap } from "../../helpers/garden-of.ts";

/** Two beds 40 cm apart, 30 m from the only tap and door: a narrow path, a long walk and a long hose. */
const far = gardenOf(
  house("house", { at: [-15_000, -15_000] }),
  door("kitchen", { at: [-14_000, -12_000] }),
  tap("tap", { at: [-17_500, -17_000] }),
  bed("salads", { at: [15_000, 12_000], shape: { type: "rectangle", width: 1200, length: 2400 } }),
  bed("beans", { at: [16_600, 12_000], shape: { type: "rectangle", width: 1100, length: 2400 } }),
);
const whole = survey(far, "whole");
const glance = survey(far, "glance");
const rules = (found: { readonly snags: readonly { readonly rule: string }[] }) =>
  new Set(found.snags.map(({ rule }) => rule));

describe("filling in a glance", () => {
  it("starts from a scene with slow and quick snags", () => {
    expect(rules(whole)).toContain("long-hose");
    expect(rules(whole)).toContain("narrow-path");
    expect(rules(glance)).not.toContain("long-hose");
    expect(glance.access.beds.every(({ hose }) => hose === null)).toBe(true);
  });

  it("takes over what slow rules said, routes, and ways out of snags that stand as they stood", () => {
    const filled = carriedOver(glance, whole, far, "glance");
    expect(filled.snags.map(({ key, waysOut }) => [key, waysOut])).toEqual(
      expect.arrayContaining(whole.snags.map(({ key, waysOut }) => [key, waysOut])),
    );
    expect(filled.snags).toHaveLength(whole.snags.length);
    expect(filled.access.beds.map(({ hose }) => hose?.length)).toEqual(
      whole.access.beds.map(({ hose }) => hose?.length),
    );
  });

  it("offers no way out of a gap that is another gap now", () => {
    const moved = applyOps(far, [{ op: "move", id: itemId("beans"), by: [-35, 0] }]);
    const filled = carriedOver(survey(moved, "glance"), whole, moved, "glance");
    const narrow = filled.snags.find(({ rule }) => rule === "narrow-path");
    expect(whole.snags.find(({ rule }) => rule === "narrow-path")?.waysOut).not.toEqual([]);
    expect(narrow).toMatchObject({ waysOut: [], waysOutKnown: false });
  });

  it("forgets what was said of a thing that is gone", () => {
    const fewer = applyOps(far, [{ op: "remove", id: itemId("beans") }]);
    const filled = carriedOver(survey(fewer, "glance"), whole, fewer, "glance");
    expect(filled.snags.some(({ itemIds }) => itemIds.includes(itemId("beans")))).toBe(false);
    expect(rules(filled)).toContain("long-hose");
  });

  it("keeps the gravest first", () => {
    const order = carriedOver(glance, whole, far, "glance").snags.map(({ grade }) => grade);
    expect(order).toEqual(order.toSorted((a, b) => "msn".indexOf(a[0]!) - "msn".indexOf(b[0]!)));
  });

  it("adds nothing to the first look there is", () => {
    expect(carriedOver(whole, null, far, "whole")).toBe(whole);
  });
});
