import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyOps, emptyGarden, type Garden, growing, type Item, itemId, type Op } from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { bed, fence, gardenOf, shed } from "../helpers/garden-of.ts";
import { refusedOp, testOps } from "../helpers/test-op.ts";

const salads = bed("salads", { x: 300, y: 400, w: 1200, h: 2500 });
const roots = bed("roots", { x: 2300, y: 700, w: 900, h: 1800 });
const hut = shed("hut", { x: 5000, y: 6000 });
const garden = gardenOf(salads, roots, hut);

const ids = (of: Garden) => of.items.map(({ id }) => id);
const find = (of: Garden, id: string): Item => {
  const item = of.items.find((one) => one.id === id);
  if (!item) throw new Error(`${id} is not there`);
  return item;
};

describe("applyOps", () => {
  it("gives back the very garden where nothing is asked", () => {
    expect(applyOps(garden, [])).toBe(garden);
  });

  it("adds in front, or at a place in the order", () => {
    const squash = bed("squash", { x: 9000, y: 100 });
    expect(ids(testOps(garden, [{ op: "add", item: squash }]))).toEqual(["salads", "roots", "hut", "squash"]);
    expect(ids(testOps(garden, [{ op: "add", item: squash, index: 1 }]))).toEqual([
      "salads",
      "squash",
      "roots",
      "hut",
    ]);
  });

  it("removes", () => {
    expect(ids(testOps(garden, [{ op: "remove", id: roots.id }]))).toEqual(["salads", "hut"]);
  });

  it("moves one thing and shares all others", () => {
    const after = testOps(garden, [{ op: "move", id: roots.id, by: [150, -40] }]);
    expect(find(after, "roots").at).toEqual([2900, 1560]);
    expect(find(after, "salads")).toBe(salads);
    expect(find(after, "hut")).toBe(hut);
    expect(after.site).toBe(garden.site);
    expect(after.yard).toBe(garden.yard);
  });

  it("turns a thing on its spot or about a point, and keeps turns within one round", () => {
    const onSpot = testOps(garden, [{ op: "turn", id: salads.id, by: 375 }]);
    expect(find(onSpot, "salads")).toMatchObject({ at: salads.at, turn: 15 });
    const about = testOps(garden, [{ op: "turn", id: salads.id, by: -90, about: [0, 0] }]);
    // (900, 1650) a quarter turn the other way about the origin.
    expect(find(about, "salads")).toMatchObject({ at: [1650, -900], turn: 270 });
  });

  it("sets fields, and puts in order what is behind and in front", () => {
    const after = testOps(garden, [
      { op: "set", id: salads.id, changes: { name: "Greens", plantings: growing("spinach"), trellis: 1500 } },
      { op: "reorder", id: hut.id, index: 0 },
    ]);
    expect(find(after, "salads")).toMatchObject({
      name: "Greens",
      plantings: growing("spinach"),
      trellis: 1500,
    });
    expect(ids(after)).toEqual(["hut", "salads", "roots"]);
  });

  it("changes the yard, the site, the gardener, a limit, a price and the garden's own head", () => {
    const ops: Op[] = [
      {
        op: "set-yard",
        yard: [
          [-10, 0],
          [7000, 20],
          [6900, 9000],
        ],
      },
      { op: "set-site", changes: { north: 33, lastFrost: "05-12" } },
      { op: "set-gardener", changes: { wheelchair: true } },
      { op: "set-limit", limit: "reach", value: 550 },
      { op: "set-price", key: "mix", value: 38.5 },
      {
        op: "set-garden",
        changes: { name: "Plot 9", units: "metric", prices: { currency: "CHF", asOf: "2026-11-02" } },
      },
    ];
    const after = testOps(garden, ops);
    expect(after).toMatchObject({
      name: "Plot 9",
      units: "metric",
      paper: garden.paper,
      site: { ...garden.site, north: 33, lastFrost: "05-12" },
      gardener: { ...garden.gardener, wheelchair: true },
      limits: { reach: 550 },
      prices: { currency: "CHF", asOf: "2026-11-02", own: { mix: 38.5 } },
    });
    const back = testOps(after, [
      { op: "set-limit", limit: "reach", value: null },
      { op: "set-price", key: "mix", value: null },
    ]);
    expect(back.limits).toEqual({});
    expect(back.prices.own).toEqual({});
  });

  it("does all of a list or nothing", () => {
    const ops: Op[] = [
      { op: "remove", id: salads.id },
      { op: "remove", id: salads.id },
    ];
    expect(() => applyOps(garden, ops)).toThrow('nothing in this garden is called "salads"');
    expect(ids(garden)).toContain("salads");
  });

  it("makes plain zero of minus zero, which no file can keep", () => {
    const after = testOps(gardenOf(bed("salads", { x: -600, y: -1200 })), [
      { op: "move", id: salads.id, by: [-0, -0] },
    ]);
    expect(Object.is(find(after, "salads").at[0], 0)).toBe(true);
  });
});

describe("a broken change", () => {
  const crossing = [
    [0, 0],
    [900, 700],
    [900, 0],
    [0, 800],
  ] as const;
  const nobody = itemId("nobody");

  it.each<[string, Op, RegExp]>([
    ["removing what is not there", { op: "remove", id: nobody }, /nothing in this garden/],
    ["moving what is not there", { op: "move", id: nobody, by: [1, 2] }, /nothing in this garden/],
    ["an id already taken", { op: "add", item: bed("roots") }, /already in this garden/],
    ["a place past the front", { op: "add", item: bed("new"), index: 4 }, /no place 4/],
    ["an order past the front", { op: "reorder", id: hut.id, index: 3 }, /no place 3/],
    ["half a place in the order", { op: "reorder", id: hut.id, index: 0.5 }, /no place 0.5/],
    ["a move to nowhere", { op: "move", id: hut.id, by: [Number.NaN, 0] }, /at\[0\] must be a number/],
    ["a move out of sight", { op: "move", id: hut.id, by: [0, 2e6] }, /at\[1\] lies more than 1 km away/],
    ["a turn that is no number", { op: "turn", id: hut.id, by: Number.POSITIVE_INFINITY }, /turn must be/],
    ["another id", { op: "set", id: hut.id, changes: { id: "barn" } }, /keeps its id/],
    ["another kind", { op: "set", id: hut.id, changes: { kind: "house" } }, /keeps its id and its kind/],
    ["a field nobody knows", { op: "set", id: hut.id, changes: { colour: "red" } }, /colour is not a field/],
    [
      "a width of nothing",
      { op: "set", id: hut.id, changes: { shape: { type: "oval", width: 0, length: 5 } } },
      /shape.width must be above 0/,
    ],
    [
      "an outline that crosses itself",
      { op: "set", id: hut.id, changes: { shape: { type: "polygon", points: crossing } } },
      /one plain outline/,
    ],
    [
      "an unknown board",
      { op: "set", id: salads.id, changes: { wall: { ...salads.wall, board: "9x9" } } },
      /wall.board is not a board/,
    ],
    [
      "an unknown crop",
      { op: "set", id: salads.id, changes: { lastYear: ["mandrake"] } },
      /lastYear\[0\] is not a crop/,
    ],
    ["a yard that crosses itself", { op: "set-yard", yard: crossing }, /yard must be one plain outline/],
    [
      "a yard of two corners",
      {
        op: "set-yard",
        yard: [
          [0, 0],
          [1, 1],
        ],
      },
      /yard needs at least 3/,
    ],
    [
      "a latitude past the pole",
      { op: "set-site", changes: { latitude: 91 } },
      /site.latitude must be within/,
    ],
    [
      "a frost on the 45th",
      { op: "set-site", changes: { lastFrost: "04-45" } },
      /site.lastFrost is no day of the calendar/,
    ],
    ["a negative limit", { op: "set-limit", limit: "reach", value: -1 }, /limits.reach must not be negative/],
    [
      "a price that is no number",
      { op: "set-price", key: "mix", value: Number.NaN },
      /prices.own.mix must be a number/,
    ],
    [
      "a currency by its sign",
      { op: "set-garden", changes: { prices: { ...emptyGarden("us").prices, currency: "€" } } },
      /prices.currency/,
    ],
    [
      "no stock at all",
      { op: "set-garden", changes: { cutting: { ...emptyGarden("us").cutting, stockLengths: [] } } },
      /cutting.stockLengths needs/,
    ],
  ])("is refused: %s", (_name, op, message) => {
    expect(refusedOp(garden, op)).toMatch(message);
  });

  it("is refused where a head change smuggles in something else", () => {
    const smuggled: Op = JSON.parse('{"op":"set-garden","changes":{"items":[]}}');
    expect(refusedOp(garden, smuggled)).toMatch(/items is not a field/);
  });

  it("is refused past 2,000 things", () => {
    const items = Array.from({ length: 2000 }, (_, i) => bed(`bed-${i}`, { x: i }));
    expect(refusedOp(gardenOf(...items), { op: "add", item: bed("one-more") })).toMatch(/at most 2000/);
  });

  it("is refused for a path that leads nowhere", () => {
    const boards = fence("boards", { from: [0, 0], to: [500, 900] });
    const op: Op = {
      op: "set",
      id: boards.id,
      changes: {
        points: [
          [5, 5],
          [5, 5],
        ],
      },
    };
    expect(refusedOp(gardenOf(boards), op)).toMatch(/points must lead/);
  });
});

describe("random changes", () => {
  it("leave a garden that the door lets in, or are refused", () => {
    const start = fullGarden("us");
    const id = fc.constantFrom(...start.items.map((item) => item.id));
    const mm = fc.integer({ min: -5000, max: 5000 });
    const op: fc.Arbitrary<Op> = fc.oneof(
      fc.record({ op: fc.constant("move" as const), id, by: fc.tuple(mm, mm) }),
      fc.record({
        op: fc.constant("turn" as const),
        id,
        by: fc.integer({ min: -720, max: 720 }),
        about: fc.tuple(mm, mm),
      }),
      fc.record({ op: fc.constant("remove" as const), id }),
      fc.record({ op: fc.constant("reorder" as const), id, index: fc.nat(25) }),
      fc.record({
        op: fc.constant("set" as const),
        id,
        changes: fc.record({ name: fc.string({ maxLength: 90 }) }),
      }),
    );
    fc.assert(
      fc.property(fc.array(op, { maxLength: 12 }), (ops) => {
        let now = start;
        for (const change of ops) {
          try {
            now = applyOps(now, [change]);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
          }
        }
        testOps(now, []);
      }),
      { seed: 29, numRuns: 150 },
    );
  });
});

it("an empty garden is a garden", () => {
  expect(testOps(emptyGarden("us"), [])).toBe(emptyGarden("us"));
});
