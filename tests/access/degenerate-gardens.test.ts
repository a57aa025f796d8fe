import { describe, expect, it, vi } from "vitest";
import {
  access,
  checkGarden,
  FOOT,
  type Garden,
  type Item,
  itemId,
  type Point,
  type Ring,
  searchShift,
} from "../../src/index.ts";
import { bed, door, fence, gardenOf, gardenWith, gate, house, shed, tap } from "../helpers/garden-of.ts";

/** Whole searches over wide yards, on machines that have other things to do. */
vi.setConfig({ testTimeout: 30_000 });

/** Gardens at the edge of sense: each is answered, with figures, and with the snags a gardener would name. */

const box = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const salads = bed("salads", { x: 0, y: 0, w: 1000, h: 2400 });
const way = gate("gate", { at: [0, 20_000], width: 1100 });

const snagsOf = (garden: Garden) => checkGarden(garden).map(({ key }) => key);
const mustsOf = (garden: Garden) =>
  checkGarden(garden)
    .filter(({ grade }) => grade === "must")
    .map(({ key }) => key);

/** All figures are figures (infinity only where nothing can be stood at), and all places are places. */
function expectSound(garden: Garden) {
  const found = access(garden);
  for (const { outOfReachAreaMm2, farthest, fromGate, fromDoor, kitchen, hose, standing } of found.beds) {
    expect(outOfReachAreaMm2).toBeGreaterThanOrEqual(0);
    expect(farthest.distance === Infinity ? standing : []).toEqual([]);
    const places: readonly Point[] = [
      farthest.at,
      ...(kitchen?.points ?? []),
      ...(hose?.points ?? []),
      ...standing.flat(),
    ];
    expect(places.flat().every(Number.isFinite)).toBe(true);
    for (const each of [fromGate, fromDoor]) if (each) expect(each.width).toBeGreaterThanOrEqual(0);
  }
  const snags = checkGarden(garden, { access: found });
  expect(snags.filter(({ title }) => title.startsWith("Could not be checked"))).toEqual([]);
  for (const { measured, at } of snags) expect([measured, ...at.flat()].every(Number.isFinite)).toBe(true);
  for (const { id, kind } of garden.items)
    if (kind === "bed") expect(searchShift(garden, [id])).toBeDefined();
  return found;
}

describe("shapes that touch or overlap", () => {
  it("side by side share an edge: no gap, no path, one edge less to stand at", () => {
    const garden = gardenOf(way, salads, bed("beans", { x: 1000, y: 0, w: 900, h: 2400 }));
    const { beds, gaps } = expectSound(garden);
    expect(gaps.find(({ between }) => between.includes(itemId("beans")))?.width).toBe(0);
    expect(beds[0]?.closedBy).toEqual(["beans"]);
    expect(mustsOf(garden)).toEqual(["unreachable-soil:salads", "unreachable-soil:beans"]);
  });

  it("at one corner only close nothing but that corner", () => {
    const garden = gardenOf(way, salads, bed("beans", { x: 1000, y: 2400, w: 900, h: 2300 }));
    const { gaps } = expectSound(garden);
    expect(gaps.find(({ between }) => between.includes(itemId("beans")))?.width).toBe(0);
    expect(mustsOf(garden)).toEqual([]);
  });

  it("along part of a side, in one line with it, are told as touching", () => {
    const garden = gardenOf(
      way,
      bed("salads", { x: 0, y: 0, w: 500, h: 2400 }),
      bed("beans", { x: 500, y: 700, w: 450, h: 900 }),
      bed("chard", { x: 0, y: 2400, w: 500, h: 1100 }),
    );
    const { gaps } = expectSound(garden);
    const widths = gaps.filter(({ between }) => between[1] !== "yard").map(({ width }) => Math.round(width));
    expect(widths.filter((width) => width === 0)).toHaveLength(2);
    expect(mustsOf(garden)).toEqual([]);
  });

  it("crossing each other, one in the other, and one upon the other are overlaps", () => {
    const cross = gardenOf(way, salads, bed("beans", { x: -700, y: 900, w: 2500, h: 800 }));
    const within = gardenOf(way, salads, bed("beans", { x: 300, y: 900, w: 400, h: 500 }));
    const twins = gardenOf(way, salads, { ...salads, id: itemId("beans") });
    for (const garden of [cross, within, twins]) {
      expectSound(garden);
      expect(mustsOf(garden)).toContain("overlapping:salads+beans");
    }
    expect(access(within).beds[1]?.standing).toEqual([]);
  });
});

describe("sides in one line", () => {
  it("with a corner drawn in the middle of a side change nothing", () => {
    const plain = gardenOf(way, salads);
    const points: Ring = [
      [-500, -1200],
      [0, -1200],
      [500, -1200],
      [500, 0],
      [500, 1200],
      [-500, 1200],
    ];
    const cornered = gardenOf(way, { ...salads, shape: { type: "polygon", points } });
    const [a, b] = [expectSound(plain).beds[0], expectSound(cornered).beds[0]];
    expect(b?.farthest.distance).toBeCloseTo(a?.farthest.distance ?? 0, 3);
    expect(b?.fromGate?.width).toBeCloseTo(a?.fromGate?.width ?? 0, 3);
    expect(snagsOf(cornered)).toEqual(snagsOf(plain));
  });

  it("of a bed and the yard leave that edge to nobody", () => {
    const garden = gardenWith({ yard: box(0, 0, 9000, 8000) }, gate("gate", { at: [4500, 8000] }), salads);
    const [found] = expectSound(garden).beds;
    expect(found?.closedBy).toEqual(["yard"]);
    expect(found?.farthest.distance).toBeGreaterThan(900);
    expect(mustsOf(garden)).toEqual(["unreachable-soil:salads"]);
  });
});

describe("a bed outside of the yard", () => {
  const inYard = (x: number) =>
    gardenWith(
      { yard: box(0, 0, 9000, 8000) },
      gate("gate", { at: [4500, 8000] }),
      bed("salads", { x, y: 3000, w: 1000, h: 2400 }),
    );
  it("altogether cannot be gardened, and is brought back by as much as it is out", () => {
    const garden = inYard(11_000);
    const [found] = expectSound(garden).beds;
    expect(found?.standing).toEqual([]);
    expect(mustsOf(garden)).toContain("outside-yard:salads");
    expect(checkGarden(garden).find(({ rule }) => rule === "outside-yard")?.measured).toBeCloseTo(3000, 1);
  });
  it("by half is told by how much", () => {
    const garden = inYard(8400);
    expectSound(garden);
    expect(checkGarden(garden).find(({ rule }) => rule === "outside-yard")?.measured).toBeCloseTo(400, 1);
  });
});

describe("a yard with a notch", () => {
  const notched: Ring = [
    [0, 0],
    [9000, 0],
    [9000, 3000],
    [6000, 3000],
    [6000, 5000],
    [9000, 5000],
    [9000, 8000],
    [0, 8000],
  ];
  it("is walked round, and closes the edge of a bed that stands at it", () => {
    const garden = gardenWith(
      { yard: notched },
      gate("gate", { at: [8000, 8000] }),
      house("house", { x: 7000, y: -1000, w: 2000, h: 1000 }),
      door("kitchen", { at: [8000, 0], width: 900, swing: "in" }),
      bed("salads", { x: 7000, y: 5000, w: 1000, h: 1400 }),
    );
    const [found] = expectSound(garden).beds;
    expect(found?.closedBy).toContain("yard");
    // Straight it would be 5 m; round the notch's two left corners it is more than 3 m out and 3 m back.
    expect(found?.kitchen?.length).toBeGreaterThan(6000);
  });
  it("is no place for a bed that bridges it with every corner inside", () => {
    const garden = gardenWith({ yard: notched }, bed("salads", { x: 6500, y: 2000, w: 1000, h: 4000 }));
    expectSound(garden);
    expect(mustsOf(garden)).toContain("outside-yard:salads");
  });
});

describe("a garden that lacks something", () => {
  it("has no walks without a door, no hoses without a tap, and says so once each", () => {
    const garden = gardenOf(salads, bed("beans", { x: 3000, y: 0, w: 900, h: 2400 }));
    const { beds } = expectSound(garden);
    expect(beds.map(({ kitchen, hose, fromGate, fromDoor }) => [kitchen, hose, fromGate, fromDoor])).toEqual([
      [null, null, null, null],
      [null, null, null, null],
    ]);
    expect(snagsOf(garden).filter((key) => key.startsWith("no-"))).toEqual(["no-door:", "no-tap:"]);
    expect(mustsOf(garden)).toEqual([]);
  });
  it("of beds and everything else is no garden, and nothing is wrong with it", () => {
    expect(expectSound(gardenOf()).beds).toEqual([]);
    expect(snagsOf(gardenOf())).toEqual([]);
  });
  it("has ways from no gate that stands far from the yard", () => {
    const garden = gardenOf(gate("gate", { at: [90_000, 0] }), salads);
    const [found] = expectSound(garden).beds;
    expect(found?.fromGate?.width).toBe(0);
    expect(mustsOf(garden)).toContain("sealed-off-bed:salads+gate");
  });
});

describe("beds that are sealed in", () => {
  const court = (x: number) => [
    fence("left", { from: [x - 1500, -2000], to: [x - 1500, 4400], thickness: 40 }),
    fence("right", { from: [x + 2500, -2000], to: [x + 2500, 4400], thickness: 40 }),
    fence("above", { from: [x - 1520, -2000], to: [x + 2520, -2000], thickness: 40 }),
    fence("below", { from: [x - 1520, 4400], to: [x + 2520, 4400], thickness: 40 }),
  ];
  it("by fences have no way, no walk, no hose, and the other bed has all of them", () => {
    const garden = gardenOf(
      way,
      house("house", { x: -9000, y: -15_000, w: 6000, h: 4000 }),
      door("kitchen", { at: [-6000, -11_000], swing: "in" }),
      tap("tap", { at: [-5000, -10_950] }),
      ...court(0),
      salads,
      bed("beans", { x: 5000, y: 0, w: 900, h: 2400 }),
    );
    const [shut, open] = expectSound(garden).beds;
    expect([shut?.fromGate?.width, shut?.fromDoor?.width, shut?.kitchen, shut?.hose, shut?.standing]).toEqual(
      [0, 0, null, null, []],
    );
    expect(open?.kitchen).not.toBeNull();
    expect(open?.hose).not.toBeNull();
    const sealed = mustsOf(garden).filter((key) => key.startsWith("sealed-off-bed:salads"));
    expect(sealed).toHaveLength(1);
  });

  it("all of them, by a shed against the only gate, are told together", () => {
    const garden = gardenWith(
      { yard: box(-4000, -4000, 12_000, 9000) },
      gate("gate", { at: [0, 5000], width: 1000 }),
      shed("shed", { x: -1200, y: 3300, w: 2400, h: 1700 }),
      salads,
      bed("beans", { x: 4000, y: 0, w: 900, h: 2400 }),
    );
    const { beds } = expectSound(garden);
    expect(beds.map(({ fromGate }) => fromGate?.width)).toEqual([0, 0]);
    const sealed = mustsOf(garden).filter((key) => key.startsWith("sealed-off-bed:"));
    expect(sealed).toEqual(["sealed-off-bed:salads+beans+gate"]);
  });
});

describe("a yard smaller than a person", () => {
  it("holds no bed, no way and no place to stand", () => {
    const garden = gardenWith(
      { yard: box(0, 0, 300, 250) },
      gate("gate", { at: [150, 250], width: 300 }),
      salads,
    );
    const [found] = expectSound(garden).beds;
    expect(found?.standing).toEqual([]);
    expect(found?.fromGate?.width).toBe(0);
    expect(mustsOf(garden)).toContain("outside-yard:salads");
  });
  it("filled by its bed to the edge leaves nobody room beside it", () => {
    const garden = gardenWith({ yard: box(0, 0, 1000, 2400) }, gate("gate", { at: [500, 2400] }), salads);
    const [found] = expectSound(garden).beds;
    expect(found?.standing).toEqual([]);
    expect(mustsOf(garden)).toContain("unreachable-soil:salads");
  });
});

describe("wheelchairs in gardens at the edge of sense", () => {
  const items: readonly (readonly Item[])[] = [
    [],
    [salads],
    [salads, { ...salads, id: itemId("beans") }],
    [way, salads, bed("beans", { x: 1000, y: 0, w: 900, h: 2400 })],
  ];
  it.each(items.map((some, i) => [i, some] as const))("are answered: garden %i", (_i, some) => {
    const garden = gardenWith({ gardener: { wheelchair: true } }, ...some);
    expect(expectSound(garden).wheelchair).not.toBeNull();
  });
  it("and in a yard smaller than the chair", () => {
    const garden = gardenWith({ yard: box(0, 0, FOOT, FOOT), gardener: { wheelchair: true } }, salads);
    expect(expectSound(garden).wheelchair?.turningAt).toEqual([{ bed: "salads", space: null }]);
  });
});
