import { describe, expect, it, vi } from "vitest";
import {
  access,
  applyOps,
  checkGarden,
  EXAMPLES,
  FOOT,
  type Garden,
  INCH,
  type Item,
  type Point,
  searchShift,
  shiftToClear,
  whyNoShift,
} from "../../src/index.ts";
import { POSITION_RULES } from "../../src/layout/position-rules.ts";
import { RULES } from "../../src/rules/index.ts";
import {
  bed,
  door,
  fence,
  gardenWith,
  gate,
  house,
  path,
  shed,
  tap,
  tree,
  wall,
} from "../helpers/garden-of.ts";

/** Whole searches over wide yards, on machines that have other things to do. */
vi.setConfig({ testTimeout: 30_000 });

const kneeling = (...items: readonly Item[]) =>
  gardenWith({ gardener: { kneeling: true, barrow: false } }, ...items);
/** Open all round: reached from both sides. */
const salads = (x: number, y = 0) => bed("salads", { x, y, w: 1000, h: 2400 });
const beans = bed("beans", { x: 0, y: 0, w: 1100, h: 2500 });

const moved = (garden: Garden, id: string, by: Point) => {
  const item = garden.items.find((candidate) => candidate.id === id);
  return item ? applyOps(garden, [{ op: "move", id: item.id, by }]) : garden;
};
const toFix = (garden: Garden) =>
  checkGarden(garden, {}, RULES, "look")
    .filter(({ grade }) => grade !== "note")
    .map(({ key }) => key);

describe("shift to clear", () => {
  it("widens a path that is 3 in short by 3 in, away from the neighbour", () => {
    const garden = kneeling(beans, salads(1100 + 21 * INCH, 50));
    const shift = shiftToClear(garden, ["salads"]);
    expect(shift?.by[0]).toBeCloseTo(3 * INCH, 2);
    expect(shift?.by[1]).toBeCloseTo(0, 6);
    expect(shift?.clears).toEqual(["unreachable-soil:salads", "narrow-path:beans+salads"]);
  });

  it("closes a gap up to a joint where that is the shorter way, and soil stays within reach", () => {
    const garden = kneeling(
      bed("beans", { x: 0, y: 0, w: 500, h: 2500 }),
      bed("salads", { x: 580, y: 50, w: 520, h: 2400 }),
    );
    const shift = shiftToClear(garden, ["salads"]);
    expect(shift?.by[0]).toBeCloseTo(2 * INCH - 80, 2);
    expect(toFix(moved(garden, "salads", shift!.by))).toEqual([]);
  });

  it("takes a bed out of a path, off a door's ground and a path's width off the house, at once", () => {
    const garden = gardenWith(
      { gardener: { kneeling: true, barrow: false } },
      house("house", { x: -4000, y: -5000, w: 8000, h: 5000 }),
      door("kitchen", { at: [0, 0], width: 900, swing: "in" }),
      path("path", { from: [0, 0], to: [0, 9000], width: 1000 }),
      bed("salads", { x: 400, y: 500, w: 1200, h: 2500 }),
    );
    const shift = shiftToClear(garden, ["salads"]);
    // 100 mm to the path's side, which clears the door's ground too; 500 mm to the house are to be 24 in.
    expect(shift?.by[0]).toBeCloseTo(100, 1);
    expect(shift?.by[1]).toBeCloseTo(24 * INCH - 500, 1);
    expect(shift?.clears.toSorted()).toEqual([
      "bed-in-path:salads+path",
      "blocked-door:salads+kitchen",
      "narrow-path:salads+house",
    ]);
  });

  it("moves a bed off a fence that closes one of its sides, by the room it takes to kneel there", () => {
    const garden = kneeling(
      bed("salads", { x: 0, y: 0, w: 47 * INCH, h: 2600 }),
      fence("fence", { from: [-25, -3000], to: [-25, 6000], thickness: 50 }),
    );
    const shift = shiftToClear(garden, ["salads"]);
    expect(shift?.by[0]).toBeCloseTo(24 * INCH, 2);
    expect(shift?.clears).toEqual(["unreachable-soil:salads"]);
  });

  it("brings a bed near enough to the kitchen, and to the tap, by what it is too far", () => {
    const home = [
      house("house", { x: -4000, y: -5000, w: 8000, h: 5000 }),
      door("kitchen", { at: [0, 0], width: 900, kitchen: true, swing: "in" }),
      tap("tap", { at: [-2000, 20] }),
    ];
    const yard: Point[] = [
      [-5000, -6000],
      [5000, -6000],
      [5000, 60_000],
      [-5000, 60_000],
    ];
    const garden = gardenWith(
      { yard, limits: { hose: 31_000, kitchenWalk: 29_000 } },
      ...home,
      salads(-600, 29_500),
    );
    const shift = shiftToClear(garden, ["salads"]);
    expect(shift?.clears.toSorted()).toEqual(["long-hose:salads+tap", "long-walk:salads"]);
    const after = access(moved(garden, "salads", shift!.by)).beds[0]!;
    const slack = Math.min(31_000 - after.hose!.length, 29_000 - after.kitchen!.length);
    expect(slack).toBeGreaterThan(-0.5);
    expect(slack).toBeLessThan(5);
  });

  it("opens the way for a barrow past it", () => {
    const garden = gardenWith(
      { gardener: { kneeling: false, barrow: true } },
      gate("gate", { at: [0, -4000], width: 1100 }),
      fence("above", { from: [-9000, -4000], to: [9000, -4000], thickness: 60 }),
      wall("left", { from: [-3000, -4000], to: [-3000, 12_000], thickness: 200 }),
      wall("right", { from: [3000, -4000], to: [3000, 12_000], thickness: 200 }),
      wall("below", { from: [-3100, 12_000], to: [3100, 12_000], thickness: 200 }),
      bed("plug", { x: -2100, y: 0, w: 1800, h: 1000 }),
      bed("cork", { x: 500, y: 60, w: 1600, h: 900 }),
      bed("far", { x: -500, y: 6000, w: 1000, h: 2400 }),
    );
    const shift = shiftToClear(garden, ["plug"]);
    expect(shift?.clears.every((key) => key.startsWith("narrow-main-way:"))).toBe(true);
    // 800 mm at either wall and between the two: 114.4 mm over, to the wall or the cork, make 36 in of one of them.
    expect(Math.hypot(...shift!.by)).toBeCloseTo(36 * INCH - 800, 0);
  });

  it("moves several beds by as much, past each other's neighbours", () => {
    const garden = kneeling(
      beans,
      bed("salads", { x: 1100 + 500, y: 0, w: 1000, h: 2400 }),
      bed("squash", { x: 1100 + 500 + 1000 + 700, y: 0, w: 900, h: 2300 }),
    );
    const one = shiftToClear(garden, ["salads"]);
    expect(one?.by[0]).toBeGreaterThan(0);
    const both = shiftToClear(garden, ["salads", "squash"]);
    expect(both?.by[0]).toBeCloseTo(24 * INCH - 500, 2);
    expect(both?.by[1]).toBeCloseTo(0, 6);
  });

  it("brings a shed back into the yard", () => {
    const garden = kneeling(shed("shed", { x: 19_000, y: 0, w: 1800, h: 1500 }));
    const shift = shiftToClear(garden, ["shed"]);
    expect(shift?.by[0]).toBeCloseTo(-800, 2);
  });

  it("clears what it says in the worked examples, and makes nothing new", () => {
    for (const { garden } of EXAMPLES) {
      const before = toFix(garden);
      for (const item of garden.items) {
        const search = item.kind === "bed" ? searchShift(garden, [item.id]) : null;
        if (search?.found !== "shift") continue;
        const after = toFix(moved(garden, item.id, search.shift.by));
        expect(after.filter((key) => search.shift.clears.includes(key))).toEqual([]);
        expect(after.filter((key) => !before.includes(key))).toEqual([]);
      }
    }
  });
});

describe("no shift", () => {
  it("is needed where nothing is wrong with the place, whatever else is", () => {
    const garden = kneeling(bed("salads", { x: 0, y: 0, w: 6 * FOOT, h: 2400 }));
    expect(toFix(garden)).toContain("unreachable-soil:salads");
    expect(searchShift(garden, ["salads"])).toEqual({ found: "nothing to clear" });
    expect(shiftToClear(garden, ["salads"])).toBeNull();
    expect(whyNoShift(garden, ["salads"])).toBeNull();
  });

  it("parts two beds that are moved together: the gap between them is in the way", () => {
    const garden = kneeling(beans, salads(1100 + 500));
    expect(whyNoShift(garden, ["salads", "beans"])?.rule).toBe("narrow-path");
    expect(searchShift(garden, ["salads", "beans"])).toMatchObject({ proven: true });
  });

  it("does it where the yard is full of a walnut's roots, and it says so", () => {
    const yard: Point[] = [
      [0, 0],
      [9000, 0],
      [9000, 8000],
      [0, 8000],
    ];
    const walnut = tree("walnut", { at: [4500, 300], species: "black-walnut", canopy: 1000, trunk: 300 });
    const garden = gardenWith({ yard }, walnut, bed("salads", { x: 3000, y: 5000, w: 1000, h: 2400 }));
    expect(shiftToClear(garden, ["salads"])).toBeNull();
    expect(whyNoShift(garden, ["salads"])?.rule).toBe("near-walnut");
    expect(searchShift(garden, ["salads"])).toMatchObject({ proven: true });
  });

  it("does it in a yard smaller than the bed", () => {
    const yard: Point[] = [
      [0, 0],
      [900, 0],
      [900, 800],
      [0, 800],
    ];
    const garden = gardenWith({ yard }, bed("salads", { x: 100, y: 100 }));
    expect(whyNoShift(garden, ["salads"])?.rule).toBe("outside-yard");
  });

  it("is proven where neither side of an alley leaves a path, and the path that is missing is named", () => {
    const yard: Point[] = [
      [-3000, 0],
      [5000, 0],
      [5000, 6000],
      [-3000, 6000],
    ];
    // 600 mm beside the bed in all: short of a path, and too much for a joint and nothing.
    const garden = gardenWith(
      { yard, gardener: { kneeling: true, barrow: false } },
      house("left", { x: -3000, y: 0, w: 3000, h: 6000 }),
      house("right", { x: 2000, y: 0, w: 3000, h: 6000 }),
      bed("salads", { x: 250, y: 1500, w: 1400, h: 3000, name: "Salads" }),
    );
    expect(searchShift(garden, ["salads"])).toMatchObject({
      found: "no shift",
      proven: true,
      inTheWay: { rule: "narrow-path" },
    });
  });

  it("is not proven where there is room for a joint and a path, but reach from one side is too short", () => {
    const yard: Point[] = [
      [-3000, 0],
      [5000, 0],
      [5000, 6000],
      [-3000, 6000],
    ];
    const garden = gardenWith(
      { yard, gardener: { kneeling: true, barrow: false } },
      house("left", { x: -3000, y: 0, w: 3000, h: 6000 }),
      house("right", { x: 1790, y: 0, w: 3210, h: 6000 }),
      bed("salads", { x: 250, y: 1500, w: 1170, h: 3000, name: "Salads" }),
    );
    // 620 mm in all: 10 on one side and a path on the other, from which 24 in of the 46 can be reached.
    expect(searchShift(garden, ["salads"])).toMatchObject({ found: "no shift", proven: false });
  });

  it("is only not found where there are places, but no way to any of them", () => {
    const yard: Point[] = [
      [0, 0],
      [5000, 0],
      [5000, 6000],
      [0, 6000],
    ];
    const garden = gardenWith(
      { yard, gardener: { kneeling: true, barrow: false } },
      gate("gate", { at: [0, -9000], width: 1100 }),
      bed("salads", { x: 2000, y: 1500, w: 1000, h: 2400, name: "Salads" }),
    );
    expect(searchShift(garden, ["salads"])).toMatchObject({
      found: "no shift",
      proven: false,
      inTheWay: { rule: "sealed-off-bed" },
    });
  });

  it("is looked for of what is not there, or is not the gardener's to shift", () => {
    const garden = kneeling(house("house"), beans);
    expect(() => shiftToClear(garden, ["nothing"])).toThrow(RangeError);
    expect(() => shiftToClear(garden, ["house"])).toThrow(/neither a bed nor a shed/);
    expect(shiftToClear(garden, [])).toBeNull();
  });
});

describe("the rules of position", () => {
  it("are rules of the garden, each with its reason", () => {
    const ids = new Set(RULES.map(({ id }) => id));
    expect([...POSITION_RULES.keys()].filter((id) => !ids.has(id))).toEqual([]);
    expect([...POSITION_RULES.values()].filter((why) => why.length < 10)).toEqual([]);
  });
});
