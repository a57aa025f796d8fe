import { describe, expect, it } from "vitest";
import { EXAMPLES } from "../../src/examples/index.ts";
import { itemId } from "../../src/garden/fields.ts";
import type { Garden } from "../../src/garden/garden.ts";
import { applyOps } from "../../src/garden/operations.ts";
import { outlineOf } from "../../src/garden/outline.ts";
import { bestPlace } from "../../src/layout/best-place.ts";
import { POSITION_RULES } from "../../src/layout/position-rules.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { bedShade } from "../../src/sun/sun-hours.ts";
import { bed, door, gardenWith, house, tree } from "../helpers/garden-of.ts";

const site = { latitude: 44, longitude: 0, north: 0 };
const yard = [
  [0, 0],
  [12_000, 0],
  [12_000, 16_000],
  [0, 16_000],
] as const;
const salads = bed("salads", { at: [6000, 12_500] });
/** The house stands across the south end of the yard: the farther from it to the north, the sunnier. */
const south = house("house", { x: 0, y: 15_000, w: 12_000, h: 4000, height: 5000, roof: "flat" });

const toFix = (garden: Garden) =>
  new Set(
    checkGarden(garden)
      .filter(({ grade }) => grade !== "note")
      .map(({ key }) => key),
  );

describe("bestPlace", () => {
  it("takes a bed out of the shade of a house, to where no other sound place nearby has more", () => {
    const garden = gardenWith({ site, yard }, south, salads);
    const found = bestPlace(garden, salads.id)!;
    expect(found.at[1]).toBeLessThan(7000);
    const after = applyOps(garden, found.ops);
    expect(bedShade(garden, salads.id)!.hours).toBeCloseTo(found.was!, 1);
    expect(bedShade(after, salads.id)!.hours).toBeCloseTo(found.hours, 1);
    expect(found.hours).toBeGreaterThan(found.was! + 1);
    const moved = after.items.find(({ id }) => id === salads.id)!;
    expect(moved).toMatchObject({ at: found.at, turn: found.turn });
    expect(moved.kind === "bed" && outlineOf(moved)).toEqual(found.ring);
    // Tried one by one, a yard apart: none has more by what a foot of the search is worth.
    for (let x = 1500; x < 11_000; x += 914) {
      for (let y = 1800; y < 14_000; y += 914) {
        const there = applyOps(garden, [{ op: "move", id: salads.id, by: [x - 6000, y - 12_500] }]);
        expect(bedShade(there, salads.id)!.hours).toBeLessThan(found.hours + 0.1);
      }
    }
  });

  it("keeps off what stands there, and turns a bed where it only fits the other way round", () => {
    // North of the beds that fill the sunny end a strip of 2 m is left, which a bed 2.4 m long lies in crosswise.
    const rows = Array.from({ length: 3 }, (_, i) =>
      bed(`row-${i}`, { x: 600, y: 3200 + i * 2600, w: 10_800, h: 1500 }),
    );
    const garden = gardenWith({ site, yard }, south, ...rows, salads);
    const found = bestPlace(garden, salads.id)!;
    expect(found.turn).toBe(90);
    expect(found.at[1]).toBeLessThan(3200);
    const new_ = [...toFix(applyOps(garden, found.ops))].filter((key) => !toFix(garden).has(key));
    expect(new_).toEqual([]);
  });

  it("leaves no snag of position behind, and makes none for others, in the worked examples", () => {
    for (const { garden } of EXAMPLES) {
      for (const item of garden.items.filter(({ kind }) => kind === "bed").slice(0, 5)) {
        const found = bestPlace(garden, item.id);
        if (!found) continue;
        const after = applyOps(garden, found.ops);
        const snags = checkGarden(after).filter(({ grade }) => grade !== "note");
        expect(
          snags.filter(({ itemIds, rule }) => itemIds.includes(item.id) && POSITION_RULES.has(rule)),
          item.id,
        ).toEqual([]);
        const before = toFix({ ...garden, items: garden.items.filter(({ id }) => id !== item.id) });
        expect(
          snags
            .filter(({ itemIds, key }) => !itemIds.includes(item.id) && !before.has(key))
            .map(({ key }) => key),
          item.id,
        ).toEqual([]);
        expect(found.hours).toBeGreaterThan(found.was!);
      }
    }
  }, 60_000);

  it("finds none in an open yard, where every place is as sunny", () => {
    expect(bestPlace(gardenWith({ site }, bed("salads", { at: [500, 500] })), itemId("salads"))).toBeNull();
  });

  it("finds none where nothing fits, and refuses a bed that is not there", () => {
    const tight = [
      [0, 0],
      [1500, 0],
      [1500, 1500],
      [0, 1500],
    ] as const;
    const garden = gardenWith({ site, yard: tight }, salads);
    expect(bestPlace(garden, { type: "rectangle", width: 1200, length: 2400 })).toBeNull();
    expect(() => bestPlace(garden, itemId("gone"))).toThrow(RangeError);
  });

  it("puts a bed to come into the sun and leaves it as it comes out of the barrow", () => {
    const garden = gardenWith(
      { site, yard },
      south,
      door("door", { at: [6000, 15_000], turn: 180 }),
      tree("maple", { at: [2500, 3000], canopy: 4000, height: 7000, crownBase: 1500 }),
    );
    const shape = { type: "rectangle", width: 1200, length: 2400 } as const;
    const found = bestPlace(garden, shape)!;
    expect(found.was).toBeNull();
    const after = applyOps(garden, found.ops);
    const [added] = after.items.filter(({ kind }) => kind === "bed");
    expect(added).toMatchObject({ kind: "bed", shape, at: found.at });
    expect(bedShade(after, added!.id)!.hours).toBeCloseTo(found.hours, 1);
    expect(found.at[0]).toBeGreaterThan(5000);
  });
});
