import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carry } from "../../../app/plan/hands/carrying.ts";
import { gridStep } from "../../../app/plan/hands/grid.ts";
import { INCH, type Item, outlineOf, type Point, turnedAbout } from "../../../src/index.ts";
import { bed, fence, gardenOf, gardenWith, gate, house, tree } from "../../helpers/garden-of.ts";

/** 8 pixels of snap are 80 mm at this scale, and the grid's step is 3 in or 50 mm. */
const PIXELS = 0.1;
const HAND = { free: false, even: false };
const kneeling = { gardener: { kneeling: true, barrow: false } } as const;

const carried = (garden: ReturnType<typeof gardenOf>, item: Item, by: Point, hand = HAND) =>
  carry(garden, [item], by, hand, PIXELS).by;

describe("carrying a bed", () => {
  it("leaves a path to kneel in beside its neighbour: 24 in, the common width to kneel", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const [x] = carried(gardenWith(kneeling, left, right), right, [-1160, 40]);
    expect(3000 + x - 1200).toBeCloseTo(609.6, 6);
  });

  it("leaves a way for a barrow where one is pushed: 36 in", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const garden = gardenWith({ gardener: { kneeling: true, barrow: true } }, left, right);
    const [x] = carried(garden, right, [-930, 0]);
    expect(3000 + x - 1200).toBeCloseTo(36 * INCH, 6);
  });

  it("holds to the gardener's own width where it has been changed", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const garden = gardenWith({ ...kneeling, limits: { kneelingWay: 700 } }, left, right);
    const [x] = carried(garden, right, [-1150, 0]);
    expect(3000 + x - 1200).toBeCloseTo(700, 6);
  });

  it("keeps the width between two beds turned alike, measured square to their sides", () => {
    const turn = 30;
    const left = bed("left", { at: [0, 0], turn, shape: { type: "rectangle", width: 1200, length: 2500 } });
    const start: Point = turnedAbout([1730, 200], [0, 0], turn);
    const right = bed("right", { at: start, turn, shape: { type: "rectangle", width: 900, length: 1700 } });
    const by = carried(gardenWith(kneeling, left, right), right, [-95, -45]);
    const [x] = turnedAbout([start[0] + by[0], start[1] + by[1]], [0, 0], -turn);
    expect(x - 450 - 600).toBeCloseTo(609.6, 6);
  });

  it("closes up edge to edge", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const [x] = carried(gardenOf(left, right), right, [-1750, 0]);
    expect(3000 + x).toBeCloseTo(1200, 6);
  });

  it("leaves the way to a fence's face, not to its middle line", () => {
    const post = fence("fence", { from: [0, -5000], to: [0, 5000], thickness: 60 });
    const one = bed("one", { x: 1500, y: 0, w: 900, h: 1700 });
    const [x] = carried(gardenWith(kneeling, post, one), one, [-830, 0]);
    expect(1500 + x - 30).toBeCloseTo(609.6, 6);
  });

  it("leaves the way to the yard's edge from the inside", () => {
    const one = bed("one", { x: -18_000, y: 0, w: 900, h: 1700 });
    const [x] = carried(gardenWith(kneeling, one), one, [-1420, 0]);
    expect(-18_000 + x - -20_000).toBeCloseTo(609.6, 6);
  });

  it("leaves the way to a tree's trunk, not to its crown", () => {
    const plum = tree("plum", { at: [0, 0], trunk: 200, canopy: 4000 });
    const one = bed("one", { x: 2000, y: -800, w: 900, h: 1700 });
    const [x] = carried(gardenWith(kneeling, plum, one), one, [-1310, 0]);
    expect(2000 + x - 100).toBeCloseTo(609.6, 6);
  });

  it("lines up with a bed that does not face it, and says so with a line through both", () => {
    const far = bed("far", { x: 0, y: 0, w: 1200, h: 2500 });
    const one = bed("one", { x: 160, y: 6000, w: 900, h: 1700 });
    const { by, guides } = carry(gardenOf(far, one), [one], [-107, 11], HAND, PIXELS);
    expect(160 + by[0]).toBeCloseTo(0, 6);
    expect(guides.some(({ kind, from, to }) => kind === "line" && from[0] === 0 && to[0] === 0)).toBe(true);
  });

  it("meets a width one way and an edge in line the other way at once", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const by = carried(gardenWith(kneeling, left, right), right, [-1160, -330]);
    expect([3000 + by[0] - 1200, 300 + by[1]]).toEqual([expect.closeTo(609.6, 6), expect.closeTo(0, 6)]);
  });

  it("comes to lie on the grid where nothing is near, counted from the yard's corner", () => {
    const one = bed("one", { x: 17, y: 23, w: 900, h: 1700 });
    const garden = gardenOf(one);
    const step = gridStep("us", PIXELS);
    const by = carried(garden, one, [133, 251]);
    for (const [i, start] of [17, 23].entries()) {
      const steps = (start + by[i]! + 20_000) / step;
      expect(steps).toBeCloseTo(Math.round(steps), 6);
    }
  });

  it("goes free with Alt, to the nearest sixteenth of an inch", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const by = carried(gardenOf(left, right), right, [-1160, 0], { free: true, even: false });
    expect(Math.abs(by[0] + 1160)).toBeLessThanOrEqual(INCH / 32 + 1e-9);
  });

  it("keeps to one axis with Shift", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 3000, y: 300, w: 900, h: 1700 });
    const by = carried(gardenWith(kneeling, left, right), right, [-1160, 90], { free: false, even: true });
    expect(by[1]).toBe(0);
    expect(3000 + by[0] - 1200).toBeCloseTo(609.6, 6);
  });

  it("carries several things as the box round them, without snapping them to one another", () => {
    const left = bed("left", { x: 0, y: 0, w: 1200, h: 2500 });
    const right = bed("right", { x: 1830, y: 0, w: 900, h: 2500 });
    const third = bed("third", { x: 6000, y: 0, w: 1100, h: 2500 });
    const garden = gardenWith(kneeling, left, right, third);
    const { by } = carry(garden, [left, right], [2650, 0], HAND, PIXELS);
    expect(6000 - (2730 + by[0])).toBeCloseTo(609.6, 6);
  });

  it("is never pulled farther from the hand than the snap reaches both ways", () => {
    const others = [
      bed("a", { x: 0, y: 0, w: 1200, h: 2500 }),
      bed("b", { x: 2000, y: 100, w: 900, h: 1700, turn: 0 }),
      house("h", { x: -3000, y: -5000, w: 7000, h: 3000, turn: 12 }),
    ];
    const one = bed("one", { x: 4000, y: 4000, w: 950, h: 1850, turn: 12 });
    const garden = gardenOf(...others, one);
    const mm = fc.integer({ min: -9000, max: 9000 });
    fc.assert(
      fc.property(mm, mm, (x, y) => {
        const by = carried(garden, one, [x, y]);
        // Each of two constraints pulls by at most 80 mm; at the least angle between them that is 80 / sin of it.
        expect(Math.hypot(by[0] - x, by[1] - y)).toBeLessThanOrEqual((2 * 80) / 0.3);
      }),
      { seed: 4217, numRuns: 300 },
    );
  });
});

describe("carrying a gate or a door", () => {
  const yard = gardenOf();
  it("sets a gate into the yard's edge with its outer side outwards", () => {
    const one = gate("gate", { at: [300, 0], width: 1000 });
    const { set } = carry(yard, [one], [0, -19_900], HAND, PIXELS);
    expect(set?.at[1]).toBe(-20_000);
    expect(set?.turn).toBe(180);
  });

  it("sets a door into a house's wall, turned with the house, wholly within the wall", () => {
    const home = house("house", { x: 0, y: 0, w: 8000, h: 4000 });
    const garden = gardenOf(home);
    const one = { ...gate("x"), kind: "door" as const, kitchen: true, at: [0, 0] as const, width: 900 };
    const { set } = carry(garden, [one], [8050, 3900], HAND, PIXELS);
    expect(set?.at[0]).toBe(8000);
    expect(set?.at[1]).toBeLessThanOrEqual(4000 - 450);
    expect(set?.turn).toBe(270);
    expect(outlineOf(home)).toContainEqual([8000, 4000]);
  });

  it("stays in the open where no line is near", () => {
    const one = gate("gate", { at: [0, 0], width: 1000 });
    expect(carry(yard, [one], [1000, 1000], HAND, PIXELS).set).toBeNull();
  });
});
