import { describe, expect, it } from "vitest";
import { groundsUnder } from "../../src/garden/ground-under.ts";
import { applyOps, itemId } from "../../src/index.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";

const salads = bed("salads", { w: 1200, h: 2000 });
const under = (garden: Parameters<typeof groundsUnder>[0]) =>
  (groundsUnder(garden).get(itemId("salads")) ?? []).map(({ patch, ground: { cover }, share }) => ({
    patch,
    cover,
    share: Math.round(share * 1e6) / 1e6,
  }));

describe("groundsUnder", () => {
  it("is the yard at large where no patch lies", () => {
    expect(under(gardenWith({ ground: { cover: "weeds" } }, salads))).toEqual([
      { patch: null, cover: "weeds", share: 1 },
    ]);
  });

  it("shares a bed out between a patch and the yard by area", () => {
    const paving = ground("terrace", { x: -500, y: -500, w: 800, h: 4000, cover: "paving" });
    expect(under(gardenOf(paving, salads))).toEqual([
      { patch: "terrace", cover: "paving", share: 0.25 },
      { patch: null, cover: "lawn", share: 0.75 },
    ]);
  });

  it("counts the patch in front where two overlap, whatever the order of the bed", () => {
    const back = ground("back", { x: 0, y: 0, w: 1200, h: 1500, cover: "weeds" });
    const front = ground("front", { x: 0, y: 1000, w: 1200, h: 1000, cover: "bark" });
    expect(under(gardenOf(salads, back, front))).toEqual([
      { patch: "front", cover: "bark", share: 0.5 },
      { patch: "back", cover: "weeds", share: 0.5 },
    ]);
  });

  it("ignores a patch that only touches, and a sliver too thin to measure", () => {
    expect(under(gardenOf(salads, ground("beside", { x: 1200, w: 700, h: 2000 })))).toHaveLength(1);
    expect(under(gardenOf(salads, ground("sliver", { x: 1199.6, w: 700, h: 2000 })))).toHaveLength(1);
    expect(under(gardenOf(salads, ground("strip", { x: 1195, w: 700, h: 2000 })))).toHaveLength(2);
  });

  it("finds a patch that lies wholly under the bed", () => {
    const hatch = ground("hatch", { x: 300, y: 400, w: 600, h: 800, cover: "paving" });
    expect(under(gardenOf(hatch, salads))).toEqual([
      { patch: "hatch", cover: "paving", share: 0.2 },
      { patch: null, cover: "lawn", share: 0.8 },
    ]);
  });

  it("answers from memory until the bed or a patch near it changes", () => {
    const garden = gardenOf(ground("terrace", { w: 1200, h: 900 }), salads, bed("other", { x: 5000 }));
    const before = groundsUnder(garden).get(salads.id);
    const elsewhere = applyOps(garden, [{ op: "move", id: itemId("other"), by: [300, 700] }]);
    expect(groundsUnder(elsewhere).get(salads.id)).toBe(before);
    const moved = applyOps(garden, [{ op: "move", id: itemId("terrace"), by: [0, -400] }]);
    expect(groundsUnder(moved).get(salads.id)?.[0]?.share).toBeCloseTo(0.25, 9);
  });
});
