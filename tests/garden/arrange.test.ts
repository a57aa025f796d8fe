import { describe, expect, it } from "vitest";
import {
  alignOps,
  applyOps,
  boundsOfItem,
  type Garden,
  itemId,
  outlineOf,
  spaceOps,
  turnOps,
} from "../../src/index.ts";
import { bed, gardenOf, tree } from "../helpers/garden-of.ts";
import { testOps } from "../helpers/test-op.ts";

const a = bed("a", { x: 100, y: 200, w: 1200, h: 2500 });
const b = bed("b", { x: 2000, y: 700, w: 900, h: 1800 });
const c = bed("c", { x: 5000, y: -300, w: 600, h: 1400 });
const garden = gardenOf(a, b, c);
const all = [a.id, b.id, c.id];

const boxes = (of: Garden) => of.items.map(boundsOfItem);

describe("alignOps", () => {
  it.each([
    ["left", "minX", 100],
    ["right", "maxX", 5600],
    ["top", "minY", -300],
    ["bottom", "maxY", 2700],
  ] as const)("brings %s edges into line with the outermost", (to, edge, mm) => {
    const after = testOps(garden, alignOps(garden, all, to));
    expect(boxes(after).map((box) => box[edge])).toEqual([mm, mm, mm]);
  });

  it.each([
    ["centre-x", "minX", "maxX", 5700],
    ["centre-y", "minY", "maxY", 2400],
  ] as const)("brings middles into line along %s", (to, from, till, twice) => {
    const after = testOps(garden, alignOps(garden, all, to));
    for (const box of boxes(after)) expect(box[from] + box[till]).toBeCloseTo(twice, 6);
  });

  it("lines up turned things by the boxes they fill", () => {
    const turned = bed("a", { x: 0, y: 0, w: 1200, h: 2500, turn: 90 });
    const yard = gardenOf(turned, b);
    const after = testOps(yard, alignOps(yard, [turned.id, b.id], "left"));
    expect(boxes(after).map(({ minX }) => minX)).toEqual([-650, -650]);
  });

  it("asks for nothing where things are in line already, or where there is one", () => {
    const inLine = applyOps(garden, alignOps(garden, all, "top"));
    expect(alignOps(inLine, all, "top")).toEqual([]);
    expect(alignOps(garden, [a.id], "left")).toEqual([]);
  });

  it("refuses what is not there", () => {
    expect(() => alignOps(garden, [a.id, itemId("nobody")], "left")).toThrow(RangeError);
  });
});

describe("spaceOps", () => {
  it("leaves equal gaps between the first and the last, which stay", () => {
    // 100 to 5600 is 5500; less 1200, 900 and 600 leaves 2800, in two gaps of 1400.
    const after = testOps(garden, spaceOps(garden, all, "x"));
    expect(boxes(after).map(({ minX, maxX }) => [minX, maxX])).toEqual([
      [100, 1300],
      [2700, 3600],
      [5000, 5600],
    ]);
    expect(after.items.map(({ at }) => at[1])).toEqual(garden.items.map(({ at }) => at[1]));
  });

  it("works down the plan too, whatever order the things are given in", () => {
    const tall = gardenOf(
      bed("a", { y: 0, h: 500 }),
      bed("b", { y: 5000, h: 700 }),
      bed("c", { y: 600, h: 1100 }),
    );
    const after = testOps(
      tall,
      spaceOps(
        tall,
        tall.items.map(({ id }) => id),
        "y",
      ),
    );
    // 5700 less 500, 700 and 1100 leaves 3400, in two gaps of 1700.
    expect(boxes(after).map(({ minY }) => minY)).toEqual([0, 5000, 2200]);
  });

  it("needs three", () => {
    expect(spaceOps(garden, [a.id, b.id], "x")).toEqual([]);
  });
});

describe("turnOps", () => {
  it("turns one thing on its spot", () => {
    expect(turnOps(garden, [b.id], 15)).toEqual([{ op: "turn", id: "b", by: 15 }]);
  });

  it("turns several as if they were one, and four quarter turns bring all back", () => {
    let turned: Garden = garden;
    for (let i = 0; i < 4; i++) turned = testOps(turned, turnOps(turned, all, 90));
    for (const [i, item] of turned.items.entries()) {
      expect(item.turn).toBe(0);
      expect(item.at[0]).toBeCloseTo(garden.items[i]!.at[0], 6);
      expect(item.at[1]).toBeCloseTo(garden.items[i]!.at[1], 6);
    }
    const once = applyOps(garden, turnOps(garden, all, 37));
    const span = (of: Garden) => {
      const [first, , last] = of.items.map((item) => ("shape" in item ? outlineOf(item)[0]! : item.at));
      return Math.hypot(last![0] - first![0], last![1] - first![1]);
    };
    expect(span(once)).toBeCloseTo(span(garden), 6);
  });
});

it("boundsOfItem takes a tree by its crown", () => {
  expect(boundsOfItem(tree("plum", { at: [500, 900], canopy: 3000 }))).toEqual({
    minX: -1000,
    minY: -600,
    maxX: 2000,
    maxY: 2400,
  });
});
