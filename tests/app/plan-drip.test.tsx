import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { useFindings } from "../../app/live/findings.ts";
import { carriedLines } from "../../app/plan/drip/carried-lines.ts";
import { isDripShown, useDripShown } from "../../app/plan/drip/drip-shown.ts";
import { paintDrip } from "../../app/plan/paint/drip.ts";
import { paintDripScene } from "../../app/plan/paint/drip-scene.ts";
import type { Pen } from "../../app/plan/pen.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { applyOps, dripPlan, type Garden, type ItemOf, itemId, type Point } from "../../src/index.ts";
import { bed, gardenWith, tap } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

interface Recorded {
  readonly pen: Pen;
  readonly count: (call: string) => number;
  readonly dashes: string[];
  /** Where lines and dots begin, px. */
  readonly begins: Point[];
}

/** A pen on a canvas that writes down what it is asked for. */
function recorder(scale: number, x = 0, y = 0): Recorded {
  const calls: string[] = [];
  const dashes: string[] = [];
  const begins: Point[] = [];
  const own: Record<string, unknown> = { canvas: { width: 900, height: 700 } };
  const ctx = new Proxy(own, {
    get: (target, key: string) =>
      key in target
        ? target[key]
        : (...args: unknown[]) => {
            calls.push(key);
            if (key === "moveTo") begins.push([Number(args[0]), Number(args[1])]);
            if (key === "setLineDash" && (args[0] as number[]).length > 0) dashes.push(String(args[0]));
          },
    set: (target, key: string, value) => {
      target[key] = value;
      return true;
    },
  });
  const pen: Pen = {
    ctx: ctx as unknown as CanvasRenderingContext2D,
    view: { x, y, scale },
    ratio: 1,
    units: "us",
  };
  return { pen, dashes, begins, count: (call) => calls.filter((one) => one === call).length };
}

const BEANS = itemId("beans");
const plain = bed("beans", { name: "Beans", at: [4000, 4000], w: 1200, h: 2400 });
const beans: ItemOf<"bed"> = { ...plain, watering: { ...plain.watering, by: "drip" } };
const byHand = bed("bare", { name: "Bare", at: [8000, 4000], w: 1200, h: 2400 });
const garden = gardenWith({ units: "us" }, beans, byHand, tap("tap", { at: [1000, 1000] }));
const plan = dripPlan(garden);
const [lines] = plan.beds;

describe("pipes on the plan", () => {
  it("are a main in long dashes, and lines with a dot an emitter once those can be told apart", () => {
    const near = recorder(0.1);
    paintDrip(near.pen, plan);
    expect(near.dashes).toEqual(["14,4"]);
    expect(lines!.emittersApart * 0.1).toBeGreaterThan(7);
    // One more where the main meets the bed.
    expect(near.count("arc")).toBe(lines!.emitters.length + 1);

    const farther = recorder(0.02);
    paintDrip(farther.pen, plan);
    expect(farther.count("arc")).toBe(1);

    const far = recorder(0.004);
    paintDrip(far.pen, plan);
    expect(far.count("arc")).toBe(0);
    expect(far.dashes).toEqual(["14,4"]);
  });

  it("leave out what lies beside the canvas", () => {
    const beside = recorder(0.1, 20_000);
    paintDrip(beside.pen, plan);
    expect(beside.count("arc")).toBe(0);
  });
});

beforeEach(() => useDripShown.setState({ always: false }));

describe("when pipes are shown", () => {
  const looked = (ids: readonly string[], leaf: "snags" | "year-round" = "snags") =>
    isDripShown({ garden, leaf, selection: new Set(ids.map(itemId)) });

  it("is while water is looked at: its leaf, a tap, or a bed that is watered by drip", () => {
    expect(looked([])).toBe(false);
    expect(looked([], "year-round")).toBe(true);
    expect(looked(["tap"])).toBe(true);
    expect(looked(["beans"])).toBe(true);
    expect(looked(["bare"])).toBe(false);
    expect(looked(["bare", "beans"])).toBe(true);
  });

  it("is always, once they are to be kept on the plan", () => {
    useDripShown.setState({ always: true });
    expect(looked([])).toBe(true);
  });
});

describe("lines of the last plan", () => {
  const moved = (ops: Parameters<typeof applyOps>[1]): Garden => applyOps(garden, ops);

  it("go with a bed that is moved, and are the very same where nothing moved", () => {
    expect(carriedLines(plan.beds, garden, garden)).toBe(plan.beds);
    const away = moved([{ op: "move", id: BEANS, by: [500, -250] }]);
    const [carried] = carriedLines(plan.beds, garden, away);
    const [x, y] = lines!.lines[0]![0]!;
    expect(carried!.lines[0]![0]![0]).toBeCloseTo(x + 500, 6);
    expect(carried!.lines[0]![0]![1]).toBeCloseTo(y - 250, 6);
    expect(carried!.emitters).toHaveLength(lines!.emitters.length);
    const other = moved([{ op: "move", id: byHand.id, by: [100, 0] }]);
    expect(carriedLines(plan.beds, garden, other)[0]).toBe(lines);
  });

  it("lie as they would be laid anew where a bed is turned", () => {
    const turned = moved([{ op: "set", id: BEANS, changes: { turn: 90 } }]);
    const anew = dripPlan(turned).beds[0]!;
    const [carried] = carriedLines(plan.beds, garden, turned);
    const places = (points: readonly Point[]) =>
      points.map(([x, y]) => `${Math.round(x)},${Math.round(y)}`).toSorted();
    expect(places(carried!.emitters)).toEqual(places(anew.emitters));
  });

  it("are left out where the bed has another outline, is watered otherwise or is gone", () => {
    const wider = { type: "rectangle", width: 900, length: 2400 } as const;
    expect(
      carriedLines(plan.beds, garden, moved([{ op: "set", id: BEANS, changes: { shape: wider } }])),
    ).toEqual([]);
    const hose = { ...beans.watering, by: "hand" } as const;
    expect(
      carriedLines(plan.beds, garden, moved([{ op: "set", id: BEANS, changes: { watering: hose } }])),
    ).toEqual([]);
    expect(carriedLines(plan.beds, garden, moved([{ op: "remove", id: BEANS }]))).toEqual([]);
  });
});

describe("the scene of the pipes", () => {
  afterEach(() => useFindings.setState({ drip: null, dripOf: null }));

  it("draws the last plan with the bed under the hand, and nothing while water is not looked at", () => {
    onTheBoard(garden, { drip: plan, dripOf: garden });
    const unseen = recorder(0.1);
    paintDripScene(unseen.pen);
    expect(unseen.begins).toEqual([]);

    useEditor.getState().select([BEANS]);
    const still = recorder(0.1);
    paintDripScene(still.pen);
    useEditor.getState().preview([{ op: "move", id: BEANS, by: [1000, 0] }]);
    const held = recorder(0.1);
    paintDripScene(held.pen);
    // The main lies where it lay; the header, the lines and the dots are 1 m on, which is 100 px.
    const mains = plan.main.runs.length;
    expect(still.begins.length).toBeGreaterThan(mains);
    expect(held.begins.map(([x]) => x)).toEqual(
      still.begins.map(([x], i) => (i < mains ? x : expect.closeTo(x + 100, 6))),
    );
  });
});
