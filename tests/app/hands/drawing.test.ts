import { beforeEach, describe, expect, it } from "vitest";
import { aimDrawing, endDrawing, takePointBack, tapDrawing } from "../../../app/plan/hands/drawing.ts";
import type { Desk, Hand } from "../../../app/plan/hands/gesture.ts";
import { createMarks } from "../../../app/plan/hands/marks.ts";
import {
  dropPlacing,
  hidePlaced,
  putDown,
  putDownNear,
  showPlaced,
} from "../../../app/plan/hands/placing.ts";
import { planKey } from "../../../app/plan/hands/plan-keys.ts";
import { type LineItem, planPoints } from "../../../app/plan/hands/plan-points.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { boundsOf, outlineOf, type Point, placed, signedArea } from "../../../src/index.ts";
import { bed, fence, gardenWith } from "../../helpers/garden-of.ts";

/** 1 pixel is 10 mm; with Alt, so that points fall where they are tapped, to the millimetre. */
const handAt = (plan: Point): Hand => ({
  plan,
  pixel: [plan[0] / 10, plan[1] / 10],
  free: true,
  even: false,
  touch: false,
});
let desk: Desk;
const state = () => desk.editor.getState();
const last = () => state().garden.items.at(-1)!;

beforeEach(() => {
  desk = { editor: createEditor(gardenWith({ units: "metric" })), marks: createMarks() };
  state().setView({ x: 0, y: 0, scale: 0.1 });
});

describe("drawing by taps", () => {
  const draw = (what: "path" | "fence" | "bed-free" | "ground-free" | "yard", ...points: Point[]) => {
    state().pick(what);
    for (const point of points) tapDrawing(desk, what, handAt(point));
  };

  it("draws a path point by point, ended by a tap on its last point, as one step", () => {
    draw("path", [0, 0], [3000, 0], [3000, 2000], [3000, 2000]);
    expect(planPoints(last() as LineItem)).toEqual([
      [0, 0],
      [3000, 0],
      [3000, 2000],
    ]);
    expect(state().past.map(({ label }) => label)).toEqual(["Add Path 1"]);
    expect([...state().selection]).toEqual(["path-1"]);
    expect(state().placing).toBeNull();
    expect(desk.marks.getState().drawing).toBeNull();
  });

  it("closes an outline by a tap on its first corner, running clockwise whichever way it was drawn", () => {
    draw("bed-free", [0, 0], [0, 2000], [1500, 1800], [1400, 100], [20, 10]);
    const free = last();
    if (free.kind !== "bed") throw new Error("a bed was drawn");
    expect(outlineOf(free)).toHaveLength(4);
    expect(free.shape.type === "polygon" && signedArea(free.shape.points)).toBeGreaterThan(0);
  });

  it("shows the thing as it would be with the point under the hand", () => {
    draw("fence", [0, 0]);
    aimDrawing(desk, "fence", handAt([2500, 0]));
    expect(state().draft?.items).toHaveLength(1);
    expect(desk.marks.getState().drawing?.next).toEqual([2500, 0]);
    expect(state().garden.items).toHaveLength(0);
  });

  it("takes points back, and ends in nothing when it is dropped", () => {
    draw("ground-free", [0, 0], [2000, 0], [2000, 1500]);
    takePointBack(desk, "ground-free");
    expect(desk.marks.getState().drawing?.points).toHaveLength(2);
    endDrawing(desk, "ground-free");
    expect(state().message.text).toContain("at least 3");
    dropPlacing(desk);
    expect(state().garden.items).toEqual([]);
    expect(state().draft).toBeNull();
    expect(state().past).toEqual([]);
  });

  it("makes a straight piece of a single point", () => {
    draw("fence", [4000, 3000]);
    endDrawing(desk, "fence");
    expect(planPoints(last() as LineItem)).toHaveLength(2);
  });

  it("refuses an outline that crosses itself and keeps what was drawn of it", () => {
    draw("bed-free", [0, 0], [2000, 2000], [2000, 0], [0, 2000]);
    endDrawing(desk, "bed-free");
    expect(state().message.text).toContain("crosses itself");
    expect(desk.marks.getState().drawing?.points).toHaveLength(4);
    expect(state().garden.items).toEqual([]);
  });

  it("draws the yard anew and selects it", () => {
    draw("yard", [0, 0], [9000, 0], [9000, 6000], [0, 6500], [0, 0]);
    expect(boundsOf(state().garden.yard)).toEqual({ minX: 0, minY: 0, maxX: 9000, maxY: 6500 });
    expect(state().yardSelected).toBe(true);
    state().undo();
    expect(boundsOf(state().garden.yard).maxX).toBe(20_000);
  });
});

describe("drawing pipes", () => {
  const draw = (what: "main" | "drip-line", ...points: Point[]) => {
    state().pick(what);
    for (const point of points) tapDrawing(desk, what, handAt(point));
  };
  const turned = bed("roots", { at: [3000, 4000], turn: 30, w: 1200, h: 2400 });

  it("adds a run to the main as one step, and the first takes the place of the planner's", () => {
    expect(state().garden.water.drawnMain).toBeNull();
    draw("main", [0, 0], [2000, 0], [2000, 3000], [2000, 3000]);
    expect(state().garden.water.drawnMain).toEqual([
      [
        [0, 0],
        [2000, 0],
        [2000, 3000],
      ],
    ]);
    expect(state().placing).toBeNull();
    draw("main", [2000, 0], [5000, 0]);
    endDrawing(desk, "main");
    expect(state().garden.water.drawnMain).toHaveLength(2);
    expect(state().past.map(({ label }) => label)).toEqual(["Draw the main", "Draw the main"]);
    state().undo();
    state().undo();
    expect(state().garden.water.drawnMain).toBeNull();
  });

  it("keeps a bed's line in the bed's own frame, so that it goes where the bed goes", () => {
    desk.editor.getState().open(gardenWith({ units: "metric" }, turned));
    state().select([turned.id]);
    const onPlan: readonly Point[] = [
      [3200, 3200],
      [2400, 4700],
    ];
    draw("drip-line", ...onPlan, [2400, 4700]);
    const drawn = last();
    if (drawn.kind !== "bed") throw new Error("the bed is gone");
    const [line] = drawn.watering.drip.drawn!;
    // By hand: (200, -800) from the bed's middle, turned back by 30 degrees.
    expect(line![0]![0]).toBeCloseTo(200 * Math.cos(Math.PI / 6) - 800 * Math.sin(Math.PI / 6), 6);
    expect(line![0]![1]).toBeCloseTo(-200 * Math.sin(Math.PI / 6) - 800 * Math.cos(Math.PI / 6), 6);
    const back = line!.map((point) => placed(point, turned.at, turned.turn));
    expect(back.flat()).toEqual(onPlan.flat().map((mm) => expect.closeTo(mm, 6)));
    expect(state().past.map(({ label }) => label)).toEqual(["Draw a drip line"]);
  });

  it("goes by keys too: Backspace takes a point back, Enter ends, Escape drops it", () => {
    const press = (key: string) =>
      planKey(desk, { key, code: key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false });
    draw("main", [0, 0], [2000, 0], [2500, 900]);
    expect(press("Backspace")).toBe(true);
    expect(press("Enter")).toBe(true);
    expect(state().garden.water.drawnMain).toEqual([
      [
        [0, 0],
        [2000, 0],
      ],
    ]);
    draw("main", [0, 0], [0, 3000]);
    press("Escape");
    expect(state().placing).toBeNull();
    expect(state().draft).toBeNull();
    expect(state().garden.water.drawnMain).toHaveLength(1);
  });

  it("asks for a bed where none is chosen, and for two points", () => {
    desk.editor.getState().open(gardenWith({ units: "metric" }, turned));
    draw("drip-line", [0, 0], [1000, 0]);
    endDrawing(desk, "drip-line");
    expect(state().message.text).toBe("Choose a bed first");
    expect(state().past).toEqual([]);
    dropPlacing(desk);
    draw("main", [0, 0]);
    endDrawing(desk, "main");
    expect(state().message.text).toContain("at least 2");
    expect(state().garden.water.drawnMain).toBeNull();
  });
});

describe("placing from the barrow", () => {
  it("shows the thing under the hand, puts it down on release, and selects it, as one step", () => {
    showPlaced(desk, "bed", handAt([3000, 4000]));
    expect(state().draft?.items).toHaveLength(1);
    hidePlaced(desk);
    expect(state().draft).toBeNull();
    putDown(desk, "bed", handAt([3000, 4000]));
    expect(last().at).toEqual([3000, 4000]);
    expect([...state().selection]).toEqual(["bed-1"]);
    expect(state().past).toHaveLength(1);
  });

  it("finds free ground near the middle of the view for what is placed by key", () => {
    const middle = bed("middle", {
      at: [3000, 4000],
      shape: { type: "rectangle", width: 1200, length: 2400 },
    });
    // A fence right round bounds everything and yet leaves everything free.
    const round = fence("round", { from: [-9000, -9000], to: [9000, -9000] });
    const all: readonly Point[] = [
      [-9000, -9000],
      [9000, -9000],
      [9000, 9000],
      [-9000, 9000],
    ];
    desk.editor.getState().open(gardenWith({ units: "metric" }, { ...round, points: all }, middle));
    putDownNear(desk, "bed", [3000, 4000]);
    const put = last();
    if (put.kind !== "bed") throw new Error("a bed was placed");
    const [a, b] = [boundsOf(outlineOf(middle)), boundsOf(outlineOf(put))];
    const gap = Math.max(b.minX - a.maxX, a.minX - b.maxX, b.minY - a.maxY, a.minY - b.maxY);
    expect(gap).toBeGreaterThanOrEqual(609.6 - 0.5);
    expect(Math.hypot(put.at[0] - 3000, put.at[1] - 4000)).toBeLessThan(3500);
  });
});
