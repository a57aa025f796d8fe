import { beforeEach, describe, expect, it } from "vitest";
import { doublePress } from "../../../app/plan/hands/double-press.ts";
import type { Desk, Hand } from "../../../app/plan/hands/gesture.ts";
import { type Handle, handlesOf } from "../../../app/plan/hands/handles.ts";
import { hitTest, nearness } from "../../../app/plan/hands/hit-test.ts";
import { createMarks, NO_MARKS } from "../../../app/plan/hands/marks.ts";
import { Press } from "../../../app/plan/hands/press.ts";
import { createEditor } from "../../../app/store/editor.ts";
import {
  type Garden,
  type Item,
  itemId,
  type Op,
  outlineOf,
  type Point,
  turnedAbout,
} from "../../../src/index.ts";
import {
  bed,
  door,
  fence,
  gardenOf,
  gardenWith,
  gate,
  ground,
  house,
  path,
  tree,
} from "../../helpers/garden-of.ts";

/** 1 pixel is 10 mm; the upper left of the view is the plan's origin. */
const PIXELS = 0.1;
let desk: Desk;
let press: Press;

function open(garden: Garden) {
  desk = { editor: createEditor(garden), marks: createMarks() };
  desk.editor.getState().setView({ x: 0, y: 0, scale: PIXELS });
  press = new Press(desk);
}

const handAt = (plan: Point, how: Partial<Hand> = {}): Hand => ({
  plan,
  pixel: [plan[0] * PIXELS, plan[1] * PIXELS],
  free: false,
  even: false,
  touch: false,
  ...how,
});

const hitAt = (plan: Point) => {
  const state = desk.editor.getState();
  return hitTest(state.garden, handlesOf(state.garden, state), [], plan, nearness(false, PIXELS));
};

const down = (at: Point, { more = false, ...how }: Partial<Hand> & { more?: boolean } = {}) =>
  press.down(handAt(at, how), hitAt(at), more);

function drag(from: Point, to: Point, how: Partial<Hand> & { more?: boolean } = {}) {
  down(from, how);
  press.move(handAt([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], how));
  press.move(handAt(to, how));
  press.up(handAt(to, how));
}

function click(at: Point, how: Partial<Hand> & { more?: boolean } = {}) {
  down(at, how);
  press.up(handAt(at, how));
}

const state = () => desk.editor.getState();
const itemOf = <T extends Item>(id: string) => state().garden.items.find((item) => item.id === id) as T;
const labels = () => state().past.map(({ label }) => label);
const selection = () => [...state().selection];
const handle = (does: Handle["does"], index = 0): Point => {
  const all = handlesOf(state().garden, state()).filter((one) => one.does === does);
  return all[index]!.at;
};

/** In metres, where sizes set free of snapping are whole millimetres. */
const inMetres = (...items: readonly Item[]) => gardenWith({ units: "metric" }, ...items);

const salads = bed("salads", { name: "Salads", x: 1000, y: 1000, w: 1200, h: 2400 });
const beans = bed("beans", { name: "Beans", x: 5000, y: 1300, w: 900, h: 1800 });

describe("pressing on the plan", () => {
  beforeEach(() => open(inMetres(salads, beans)));

  it("selects what is clicked, adds with Shift, and clears on empty ground", () => {
    click([1500, 2000]);
    expect(selection()).toEqual(["salads"]);
    click([5400, 2000], { more: true });
    expect(selection()).toEqual(["salads", "beans"]);
    click([1500, 2000], { more: true });
    expect(selection()).toEqual(["beans"]);
    click([8000, 8000]);
    expect(selection()).toEqual([]);
    expect(labels()).toEqual([]);
  });

  it("moves what is dragged as one step of history, and leaves it selected", () => {
    drag([1500, 2000], [1500, 5500], { free: true });
    expect(itemOf("salads").at).toEqual([1600, 5700].map((v) => expect.closeTo(v, 0)));
    expect(labels()).toEqual(["Move Salads"]);
    expect(selection()).toEqual(["salads"]);
    state().undo();
    expect(itemOf("salads")).toBe(salads);
    state().redo();
    expect(itemOf("salads").at[1]).toBeCloseTo(5700, 0);
  });

  it("shows the move before it is committed, with what the hand holds", () => {
    down([1500, 2000]);
    press.move(handAt([1500, 4000]));
    expect(state().garden.items[0]).toBe(salads);
    expect(state().draft?.items[0]?.at[1]).toBeGreaterThan(4000);
    expect(state().draft?.items[1]).toBe(beans);
    expect(desk.marks.getState().held).toEqual(["salads"]);
  });

  it("leaves everything as it was when the gesture is dropped", () => {
    down([1500, 2000]);
    press.move(handAt([1500, 4000]));
    expect(press.cancel()).toBe(true);
    expect(state().draft).toBeNull();
    expect(labels()).toEqual([]);
    expect(desk.marks.getState()).toEqual(NO_MARKS);
    press.up(handAt([1500, 4000]));
    expect(state().garden.items).toEqual([salads, beans]);
  });

  it("makes no step of a drag that ends where it began", () => {
    down([1500, 2000]);
    press.move(handAt([1500, 4000]));
    press.move(handAt([1500, 2000]));
    press.up(handAt([1500, 2000]));
    expect(labels()).toEqual([]);
  });

  it("drops a gesture whose garden was changed under it", () => {
    state().commit("Rename", [{ op: "set", id: beans.id, changes: { name: "Peas" } }]);
    down([1500, 2000]);
    press.move(handAt([1500, 4000]));
    state().undo();
    press.move(handAt([1500, 4500]));
    press.up(handAt([1500, 4500]));
    expect(itemOf("salads")).toBe(salads);
    expect(state().draft).toBeNull();
  });

  it("carries everything selected together", () => {
    state().select([salads.id, beans.id]);
    drag([1500, 2000], [1500, 6000]);
    const [a, b] = [itemOf("salads").at, itemOf("beans").at];
    expect(b[0] - a[0]).toBeCloseTo(beans.at[0] - salads.at[0], 6);
    expect(b[1] - a[1]).toBeCloseTo(beans.at[1] - salads.at[1], 6);
    expect(labels()).toEqual(["Move 2 things"]);
  });

  it("selects with a box only what lies whole inside it", () => {
    drag([800, 800], [5500, 3600]);
    expect(selection()).toEqual(["salads"]);
    drag([4800, 800], [6500, 3600], { more: true });
    expect(selection()).toEqual(["salads", "beans"]);
    expect(labels()).toEqual([]);
  });

  it("pans with one finger on empty ground, and boxes after a rest", () => {
    drag([8000, 8000], [8500, 8300], { touch: true });
    expect(state().view).toMatchObject({ x: -500, y: -300 });
    state().setView({ x: 0, y: 0, scale: PIXELS });
    down([800, 800], { touch: true });
    press.rest();
    press.move(handAt([2600, 3600], { touch: true }));
    press.up(handAt([2600, 3600], { touch: true }));
    expect(selection()).toEqual(["salads"]);
  });

  it("selects more with a finger that rests on a thing", () => {
    click([1500, 2000], { touch: true });
    down([5400, 2000], { touch: true });
    press.rest();
    press.up(handAt([5400, 2000], { touch: true }));
    expect(selection()).toEqual(["salads", "beans"]);
  });

  it("looks at a snag when its mark is clicked", () => {
    press.down(handAt([1000, 1000]), { on: "snag", key: "narrow-path:a" }, false);
    press.up(handAt([1000, 1000]));
    expect(state().activeSnag).toBe("narrow-path:a");
  });
});

describe("what lies flat", () => {
  const patio = ground("patio", { x: 0, y: 0, w: 6000, h: 6000 });
  it("is not carried off by a drag across it until it has been selected", () => {
    open(gardenOf(patio, salads));
    drag([400, 400], [4000, 5000]);
    expect(itemOf("patio")).toBe(patio);
    expect(selection()).toEqual(["salads"]);
    click([400, 400]);
    drag([400, 400], [900, 400]);
    expect(itemOf("patio").at[0]).toBeGreaterThan(patio.at[0]);
  });
});

describe("what sits on something", () => {
  const home = house("home", { x: 1000, y: 1000, w: 8000, h: 4000 });
  const kitchen = door("kitchen", { at: [3000, 5000], width: 900 });

  it("goes along when its house is moved", () => {
    open(inMetres(home, kitchen));
    drag([6000, 3000], [6000, 5500], { free: true });
    expect(itemOf("kitchen").at[1] - 5000).toBeCloseTo(itemOf("home").at[1] - home.at[1], 9);
  });

  it("stays on the wall that is pulled", () => {
    open(inMetres(home, kitchen));
    state().select([home.id]);
    drag([5000, 5000], [5000, 6500], { free: true });
    const lower = Math.max(...outlineOf(itemOf<typeof home>("home")).map(([, y]) => y));
    expect(lower).toBeGreaterThan(6000);
    expect(itemOf("kitchen").at).toEqual([expect.closeTo(3000, 6), expect.closeTo(lower, 6)]);
  });

  it("stays in the yard's edge when a corner of the yard is pulled", () => {
    const square: readonly Point[] = [
      [0, 0],
      [10_000, 0],
      [10_000, 9000],
      [0, 9000],
    ];
    open(gardenWith({ units: "metric", yard: square }, gate("gate", { at: [5000, 9000], width: 1000 })));
    state().selectYard();
    drag([10_000, 9000], [10_000, 7000], { free: true });
    expect(state().garden.yard[2]).toEqual([10_000, expect.closeTo(7000, 0)]);
    const [x, y] = itemOf("gate").at;
    // On the line from (0, 9000) to (10000, 7000).
    expect(y).toBeCloseTo(9000 - x * 0.2, 0);
    expect(itemOf("gate").turn).toBeCloseTo((Math.atan2(-2000, 10_000) * 180) / Math.PI + 360, 1);
    expect(labels()).toEqual(["Reshape the yard"]);
  });
});

describe("a gate in a fence along the yard's edge", () => {
  it("stays in the fence when the yard's corner is pulled away from it", () => {
    const square: readonly Point[] = [
      [0, 0],
      [10_000, 0],
      [10_000, 9000],
      [0, 9000],
    ];
    const side = fence("side", { from: [0, 8980], to: [10_000, 8980] });
    const one = gate("gate", { at: [5000, 8980], width: 1000 });
    open(gardenWith({ units: "metric", yard: square }, side, one));
    state().selectYard();
    drag([10_000, 9000], [10_000, 7000], { free: true });
    expect(state().garden.yard[2]?.[1]).toBeCloseTo(7000, 0);
    expect(itemOf("gate")).toBe(one);
  });
});

describe("pulling handles", () => {
  it("resizes by a corner and tells the size while it does", () => {
    open(gardenOf(salads));
    state().select([salads.id]);
    down([2200, 3400]);
    press.move(handAt([2500, 4000], { free: true }));
    expect(desk.marks.getState().readout?.text).toMatch(/^4′ .*× 9′ .*/);
    press.up(handAt([2500, 4000], { free: true }));
    const { shape, at } = itemOf<typeof salads>("salads");
    expect(shape).toMatchObject({ width: expect.closeTo(1500, 0), length: expect.closeTo(3000, 0) });
    expect(at).toEqual([expect.closeTo(1750, 0), expect.closeTo(2500, 0)]);
    expect(labels()).toEqual(["Resize Salads"]);
  });

  it("snaps a bed's width to what is reached from both sides: 48 in at 24 in a side", () => {
    open(gardenOf(salads));
    state().select([salads.id]);
    drag([2200, 2200], [2245, 2200]);
    const { shape } = itemOf<typeof salads>("salads");
    expect(shape).toMatchObject({ width: expect.closeTo(1219.2, 6), length: 2400 });
  });

  it("keeps proportions with Shift", () => {
    open(gardenOf(salads));
    state().select([salads.id]);
    drag([2200, 3400], [2800, 3500], { even: true });
    const { shape } = itemOf<typeof salads>("salads");
    if (shape.type !== "rectangle") throw new Error("still a rectangle");
    expect(shape.length / shape.width).toBeCloseTo(2, 6);
    expect(shape.width).toBeGreaterThan(1700);
  });

  it("turns by whole degrees, to the next 15 when near and always with Shift", () => {
    for (const [by, even, turn] of [
      [26.4, false, 26],
      [13.1, false, 15],
      [26, true, 30],
    ] as const) {
      open(gardenOf(salads));
      state().select([salads.id]);
      drag(handle("turn"), turnedAbout(handle("turn"), salads.at, by), { even });
      expect(itemOf("salads").turn).toBe(turn);
    }
  });

  it("widens a crown, an opening and a path", () => {
    open(
      inMetres(
        tree("plum", { at: [12_000, 3000], canopy: 3000, trunk: 150 }),
        gate("gate", { at: [12_000, 9000], width: 1000 }),
        path("way", { from: [2000, 7000], to: [6000, 7000], width: 600 }),
      ),
    );
    state().select([itemId("plum")]);
    drag(handle("canopy"), [14_000, 3000], { free: true });
    expect(itemOf("plum")).toMatchObject({ canopy: expect.closeTo(4000, 0), at: [12_000, 3000] });
    state().select([itemId("gate")]);
    drag(handle("opening", 1), [12_700, 9000], { free: true });
    expect(itemOf("gate")).toMatchObject({ width: expect.closeTo(1200, 0) });
    expect(itemOf("gate").at[0]).toBeCloseTo(12_100, 0);
    state().select([itemId("way")]);
    drag(handle("path-width"), [3000, 7000 - 460]);
    expect(itemOf("way")).toMatchObject({ width: expect.closeTo(914.4, 6) });
    expect(labels()).toEqual(["Resize Tree", "Resize Gate", "Resize Path"]);
  });

  it("pulls a corner of a free bed, makes a new one from the middle of an edge, and takes one away", () => {
    const shape = {
      type: "polygon",
      points: [
        [-1000, -800],
        [1000, -800],
        [1200, 700],
        [-900, 900],
      ],
    } as const;
    open(inMetres(bed("free", { at: [4000, 4000], shape })));
    state().select([itemId("free")]);
    const corners = () => outlineOf(itemOf<typeof salads>("free"));
    drag([5000, 3200], [5400, 3000], { free: true });
    expect(corners()).toContainEqual([expect.closeTo(5400, 0), expect.closeTo(3000, 0)]);
    drag(handle("new-corner", 2), [4200, 5500], { free: true });
    expect(corners()).toHaveLength(5);
    expect(corners()).toContainEqual([expect.closeTo(4200, 0), expect.closeTo(5500, 0)]);
    const at: Point = [4200, 5500];
    doublePress(desk, hitAt(at), at, nearness(false, PIXELS));
    expect(corners()).toHaveLength(4);
    expect(labels()).toHaveLength(3);
  });

  it("never shows nor keeps an outline that crosses itself", () => {
    const shape = {
      type: "polygon",
      points: [
        [-1000, -1000],
        [1000, -1000],
        [1000, 1000],
        [-1000, 1000],
      ],
    } as const;
    open(inMetres(bed("free", { at: [4000, 4000], shape })));
    state().select([itemId("free")]);
    drag([5000, 3000], [4000, 6000], { free: true });
    const kept = outlineOf(itemOf<typeof salads>("free"));
    const crossing: Op[] = [
      {
        op: "set",
        id: itemId("free"),
        changes: {
          shape: {
            type: "polygon",
            points: [
              [-1000, -1000],
              [0, 2000],
              [1000, 1000],
              [-1000, 1000],
            ],
          },
        },
      },
    ];
    expect(() => state().commit("Cross", crossing)).toThrow(RangeError);
    expect(kept).not.toContainEqual([expect.closeTo(4000, 0), expect.closeTo(6000, 0)]);
  });

  it("puts a corner into a fence where it is double clicked, keeping its ends", () => {
    open(gardenOf(fence("fence", { from: [1000, 1000], to: [9000, 1000] })));
    state().select([itemId("fence")]);
    const at: Point = [3500, 1010];
    doublePress(desk, { on: "item", id: itemId("fence") }, at, nearness(false, PIXELS));
    expect(itemOf<ReturnType<typeof fence>>("fence").points).toHaveLength(3);
    state().undo();
    expect(itemOf<ReturnType<typeof fence>>("fence").points).toHaveLength(2);
  });
});
