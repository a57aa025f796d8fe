import { beforeEach, describe, expect, it } from "vitest";
import { doublePress } from "../../../app/plan/hands/double-press.ts";
import type { Desk, Hand } from "../../../app/plan/hands/gesture.ts";
import { handlesOf } from "../../../app/plan/hands/handles.ts";
import { hitTest, nearness } from "../../../app/plan/hands/hit-test.ts";
import { createMarks } from "../../../app/plan/hands/marks.ts";
import { heldPatch, patchPoint, soilBox } from "../../../app/plan/hands/patches.ts";
import { type Key, planKey } from "../../../app/plan/hands/plan-keys.ts";
import { aimPatch, placingCrop, putShare, tapPatch, waitingCrop } from "../../../app/plan/hands/planting.ts";
import { Press } from "../../../app/plan/hands/press.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { growing, type ItemOf, newPlanting, type Point, placed, plantsOf } from "../../../src/index.ts";
import { bed, gardenWith } from "../../helpers/garden-of.ts";

/** A mound has no wall to take from its soil: 1.2 m by 2.4 m, about the origin. */
const mound = { made: "mound", height: 200 } as const;
const salads = bed("salads", { name: "Salads", x: -600, y: -1200, w: 1200, h: 2400, wall: mound });

let desk: Desk;
let press: Press;
const state = () => desk.editor.getState();
const now = (id = "salads") => state().garden.items.find((item) => item.id === id) as ItemOf<"bed">;
const labels = () => state().past.map(({ label }) => label);
const plants = (index: number) => plantsOf(now(), state().garden.site)[index]!.count;

/** 1 pixel is 10 mm. */
const handAt = (plan: Point, how: Partial<Hand> = {}): Hand => ({
  plan,
  pixel: [plan[0] / 10, plan[1] / 10],
  free: true,
  even: false,
  touch: false,
  ...how,
});

function open(...beds: ItemOf<"bed">[]) {
  desk = {
    editor: createEditor(
      gardenWith({ units: "metric", site: { lastFrost: "04-28", firstFrost: "10-12" } }, ...beds),
    ),
    marks: createMarks(),
  };
  state().setView({ x: 0, y: 0, scale: 0.1 });
  press = new Press(desk);
}

const hit = (at: Point) => {
  const { garden } = state();
  return hitTest(
    garden,
    handlesOf(garden, state(), desk.marks.getState().patch),
    [],
    at,
    nearness(false, 0.1),
  );
};

function drag(from: Point, to: Point, how: Partial<Hand> = {}) {
  press.down(handAt(from, how), hit(from), false);
  press.move(handAt([(from[0] + to[0]) / 2, (from[1] + to[1]) / 2], how));
  press.move(handAt(to, how));
  press.up(handAt(to, how));
}

const key = (name: string, how: Partial<Key> = {}) =>
  planKey(desk, {
    key: name,
    code: name,
    shiftKey: false,
    ctrlKey: false,
    metaKey: false,
    altKey: false,
    ...how,
  });

beforeEach(() => open(salads));

describe("drawing a crop's place in a bed", () => {
  it("is one drag and one step: the place is the box that was drawn, and is held afterwards", () => {
    state().pick(placingCrop("lettuce-leaf"));
    drag([-600, -1200], [0, -600]);
    expect(now().plantings).toEqual([
      { ...newPlanting("lettuce-leaf"), patch: { at: [-300, -900], width: 600, length: 600 } },
    ]);
    expect(labels()).toEqual(["Plant leaf lettuce in Salads"]);
    expect([...state().selection]).toEqual([salads.id]);
    expect(desk.marks.getState()).toMatchObject({
      patch: { id: salads.id, index: 0 },
      held: [],
      readout: null,
    });
    expect(state().placing).toBeNull();
    state().undo();
    expect(now()).toBe(salads);
  });

  it("counts its plants while it grows, and stays on the soil", () => {
    state().pick(placingCrop("carrot"));
    press.down(handAt([-600, -1200]), hit([-600, -1200]), false);
    press.move(handAt([-300, -1000]));
    // 2 rows of 8 plants and so on: whatever is set in the draft is what is told.
    const told = () => desk.marks.getState().readout?.text;
    const drawn = () => state().draft!.items[0] as ItemOf<"bed">;
    const first = plantsOf(drawn(), state().garden.site)[0]!.count;
    expect(told()).toMatch(new RegExp(`^Carrot: ${first} plants in \\d+ rows, `));
    press.move(handAt([5000, 5000]));
    expect(drawn().plantings[0]!.patch).toEqual({ at: [0, 0], width: 1200, length: 2400 });
    const all = plantsOf(drawn(), state().garden.site)[0]!.count;
    expect(all).toBeGreaterThan(20 * first);
    expect(told()).toContain(`Carrot: ${all} plants`);
    press.cancel();
    expect(state().draft).toBeNull();
    expect(now()).toBe(salads);
    expect(desk.marks.getState()).toMatchObject({ held: [], readout: null, patchFrom: null });
  });

  it("stays on the soil to the left and above as well", () => {
    state().pick(placingCrop("carrot"));
    drag([0, 0], [-5000, -5000]);
    expect(now().plantings[0]!.patch).toEqual({ at: [-300, -600], width: 600, length: 1200 });
  });

  it("follows a bed that is turned, in the bed's own frame", () => {
    open({ ...salads, turn: 30, at: [3000, 1000] });
    state().pick(placingCrop("beet"));
    const on = (own: Point) => placed(own, [3000, 1000], 30);
    drag(on([-500, -1000]), on([100, 200]));
    const { patch } = now().plantings[0]!;
    // With snapping off a place is kept to the millimetre.
    expect(patch!.at[0]).toBeCloseTo(-200, 0);
    expect(patch!.at[1]).toBeCloseTo(-400, 0);
    expect([patch!.width, patch!.length].map(Math.round)).toEqual([600, 1200]);
  });

  it("is two taps as well, with the place shown between them", () => {
    state().pick(placingCrop("pea"));
    tapPatch(desk, "pea", handAt([-500, -500]));
    expect(state().past).toEqual([]);
    aimPatch(desk, "pea", handAt([100, 100]));
    expect((state().draft!.items[0] as ItemOf<"bed">).plantings[0]!.patch).toEqual({
      at: [-200, -200],
      width: 600,
      length: 600,
    });
    tapPatch(desk, "pea", handAt([500, 100]));
    expect(now().plantings[0]!.patch).toEqual({ at: [0, -200], width: 1000, length: 600 });
    expect(labels()).toEqual(["Plant pea in Salads"]);
  });

  it("says what is missing: a tap beside all beds, a place of no size, a share with no bed chosen", () => {
    state().pick(placingCrop("pea"));
    tapPatch(desk, "pea", handAt([9000, 9000]));
    expect(state().message.text).toBe("Tap in a bed");
    tapPatch(desk, "pea", handAt([0, 0]));
    tapPatch(desk, "pea", handAt([4, 4]));
    expect(state().message.text).toBe("Draw it a little larger");
    expect(key("Enter")).toBe(true);
    expect(state().message.text).toBe("Choose a bed first");
    expect(now()).toBe(salads);
  });

  it("is an even share of the bed chosen with Enter, and of the bed under the hand when dropped there", () => {
    const beans = bed("beans", { x: 3000, y: 0, w: 1200, h: 1200, wall: mound });
    open(salads, beans);
    state().select([salads.id]);
    state().pick(placingCrop("kale"));
    key("Enter");
    expect(now().plantings).toEqual([newPlanting("kale")]);
    expect(putShare(desk, "pea", [3500, 500])).toBe(true);
    expect(now("beans").plantings).toEqual([newPlanting("pea")]);
    expect(putShare(desk, "pea", [9000, 0])).toBe(false);
    expect(labels()).toHaveLength(2);
  });

  it("leaves a full bed as it is, and says so", () => {
    const full = { ...salads, plantings: growing(...Array.from({ length: 60 }, () => "radish" as const)) };
    open(full);
    state().select([salads.id]);
    putShare(desk, "pea");
    expect(now()).toBe(full);
    expect(state().message.text).toContain("60");
  });

  it("snaps to the soil's edge and to the sides of other places", () => {
    open({
      ...salads,
      plantings: [{ ...newPlanting("leek"), patch: { at: [-300, 0], width: 600, length: 2400 } }],
    });
    state().pick(placingCrop("pea"));
    // 8 pixels are 80 mm: the left side meets the other place at 0, the top the soil at -1200.
    drag([30, -1150], [560, 0], { free: false });
    expect(now().plantings[1]!.patch).toEqual({ at: [300, -600], width: 600, length: 1200 });
  });

  it("knows a crop that waits from all else that may", () => {
    expect(waitingCrop(placingCrop("mint"))).toBe("mint");
    expect(waitingCrop("crop")).toBe("lettuce-leaf");
    for (const other of [null, "bed", "crop:triffid", "yard"]) expect(waitingCrop(other)).toBeNull();
  });
});

describe("the place of a planting that is held", () => {
  const patch = { at: [0, 0] as const, width: 400, length: 600 };
  const planted = { ...salads, plantings: [{ ...newPlanting("beet"), patch }, newPlanting("basil")] };
  const place = () => now().plantings[0]!.patch!;

  beforeEach(() => {
    open(planted);
    state().select([salads.id]);
    desk.marks.setState({ patch: { id: salads.id, index: 0 } });
  });

  it("has handles of its own and its bed none; without it, the bed's come back", () => {
    const does = () =>
      new Set(handlesOf(state().garden, state(), desk.marks.getState().patch).map((one) => one.does));
    expect(does()).toEqual(new Set(["patch-size", "patch-move"]));
    expect(key("Escape")).toBe(true);
    expect(does()).toContain("resize");
    expect(state().selection.size).toBe(1);
  });

  it("is carried by its middle, as one step, and kept on the soil", () => {
    drag([0, 0], [150, 240]);
    expect(place()).toEqual({ at: [150, 240], width: 400, length: 600 });
    expect(labels()).toEqual(["Place beet in Salads"]);
    drag([150, 240], [5000, 240]);
    expect(place()).toEqual({ at: [400, 240], width: 400, length: 600 });
  });

  it("is pulled by a corner and by a side, the opposite ones staying", () => {
    drag([200, 300], [400, 500]);
    expect(place()).toEqual({ at: [100, 100], width: 600, length: 800 });
    drag([-200, 100], [-500, 900]);
    expect(place()).toEqual({ at: [-50, 100], width: 900, length: 800 });
    expect(labels()).toHaveLength(2);
  });

  it("goes by arrow keys, grows with Ctrl and an arrow, each run one step", () => {
    key("ArrowRight");
    key("ArrowDown", { shiftKey: true });
    expect(place()).toEqual({ at: [10, 100], width: 400, length: 600 });
    key("ArrowRight", { ctrlKey: true, shiftKey: true });
    expect(place()).toEqual({ at: [60, 100], width: 500, length: 600 });
    expect(labels()).toEqual(["Place beet in Salads"]);
    for (let i = 0; i < 30; i++) key("ArrowLeft", { metaKey: true, shiftKey: true });
    expect(place().width).toBe(25);
    for (let i = 0; i < 30; i++) key("ArrowDown", { shiftKey: true });
    expect(place().at[1] + place().length / 2).toBe(1200);
    expect(now().at).toEqual(salads.at);
  });

  it("moves as the arrow points, whichever way its bed is turned", () => {
    open({ ...planted, turn: 90 });
    state().select([salads.id]);
    desk.marks.setState({ patch: { id: salads.id, index: 0 } });
    const before = patchPoint(now(), place(), [0, 0]);
    key("ArrowRight", { shiftKey: true });
    const after = patchPoint(now(), place(), [0, 0]);
    expect(after[0] - before[0]).toBeCloseTo(100, 6);
    expect(after[1] - before[1]).toBeCloseTo(0, 6);
  });

  it("gives a planting that shares a place of its own once it is moved", () => {
    key("p");
    expect(desk.marks.getState().patch).toEqual({ id: salads.id, index: 1 });
    expect(state().message.text).toMatch(/^Basil, 2 of 2: \d+ plants/);
    const share = heldPatch(state().garden, state().selection, desk.marks.getState().patch)!.patch;
    key("ArrowUp");
    expect(now().plantings[1]!.patch).toMatchObject({ width: share.width, length: share.length });
    key("P", { shiftKey: true });
    expect(desk.marks.getState().patch?.index).toBe(0);
  });

  it("is taken out with Delete, which leaves the bed standing", () => {
    expect(key("Delete")).toBe(true);
    expect(now().plantings.map(({ crop }) => crop)).toEqual(["basil"]);
    expect(labels()).toEqual(["Take out beet in Salads"]);
    state().undo();
    expect(now()).toBe(planted);
  });

  it("is taken hold of by a double press on its ground, and let go by a press elsewhere", () => {
    desk.marks.setState({ patch: null });
    doublePress(desk, hit([0, 0]), [0, 0], nearness(false, 0.1));
    expect(desk.marks.getState().patch).toEqual({ id: salads.id, index: 0 });
    press.down(handAt([9000, 9000]), hit([9000, 9000]), false);
    expect(desk.marks.getState().patch).toBeNull();
  });

  it("says where a bed has no crops, and means nothing with no bed chosen", () => {
    open(salads);
    state().select([salads.id]);
    expect(key("p")).toBe(true);
    expect(state().message.text).toBe("No crops in this bed yet");
    state().select([]);
    expect(key("p")).toBe(false);
  });

  it("tells fewer plants where the place is smaller", () => {
    const before = plants(0);
    key("ArrowLeft", { ctrlKey: true, shiftKey: true });
    key("ArrowLeft", { ctrlKey: true, shiftKey: true });
    expect(plants(0)).toBeLessThan(before);
    expect(plants(0)).toBeGreaterThan(0);
  });
});

it("measures the soil inside the wall, not the frame", () => {
  const boards = bed("boards", { x: 0, y: 0, w: 1219.2, h: 2438.4 });
  const box = soilBox(boards)!;
  // Two boards of 1 1/2 in, the dressed thickness of a 2x, take 3 in.
  expect(box.maxX - box.minX).toBeCloseTo(1219.2 - 76.2, 2);
  expect(box.maxY - box.minY).toBeCloseTo(2438.4 - 76.2, 2);
});
