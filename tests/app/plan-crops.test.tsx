import { afterEach, describe, expect, it } from "vitest";
import { openMoment, setDay } from "../../app/moment/moment.ts";
import { cropCaptions } from "../../app/plan/crop-captions.ts";
import { labelBox, overlap } from "../../app/plan/label.ts";
import { ownToScreen } from "../../app/plan/own-frame.ts";
import { paintCropCaptions } from "../../app/plan/paint/crop-captions.ts";
import { paintCrops } from "../../app/plan/paint/crops.ts";
import type { Pen } from "../../app/plan/pen.ts";
import { toScreen } from "../../app/plan/viewport.ts";
import { dayShown, showDay, whenDayShown } from "../../app/planting/shown-day.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { type ItemOf, newPlanting, type Planting, type Point, placed, plantsOf } from "../../src/index.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";

/** A pen on a canvas that counts what it is asked for. */
function recorder(scale: number) {
  const calls: Record<string, number> = {};
  const words: string[] = [];
  const own: Record<string, unknown> = { canvas: { width: 900, height: 700 } };
  const ctx = new Proxy(own, {
    get: (target, key: string) =>
      key in target
        ? target[key]
        : (...args: unknown[]) => {
            calls[key] = (calls[key] ?? 0) + 1;
            if (key === "fillText") words.push(String(args[0]));
          },
    set: (target, key: string, value) => {
      target[key] = value;
      return true;
    },
  });
  const pen: Pen = {
    ctx: ctx as unknown as CanvasRenderingContext2D,
    view: { x: -100, y: -100, scale },
    ratio: 1,
    units: "us",
  };
  return { pen, calls, words };
}

const site = { lastFrost: "04-28", firstFrost: "10-12" } as const;
const whole = { at: [0, 0] as const, width: 1100, length: 2300 };
const planted = (...plantings: Planting[]) =>
  bed("roots", { name: "Roots", x: 0, y: 0, w: 1219.2, h: 2438.4, plantings });
const carrots = planted({ ...newPlanting("carrot"), patch: whole });

function draw(item: ItemOf<"bed">, scale: number) {
  useEditor.getState().open(gardenWith({ site }, item));
  const { pen, calls, words } = recorder(scale);
  paintCrops(pen, item);
  const marks = { ...calls };
  paintCropCaptions(pen, item);
  expect(calls.save ?? 0).toBe(calls.restore ?? 0);
  return { marks, words };
}

const count = (item: ItemOf<"bed">) => plantsOf(item, gardenWith({ site }).site)[0]!;

afterEach(() => {
  showDay(null);
  openMoment()();
});

describe("crops on the plan", () => {
  it("are a tone far off, rows with ticks nearer, and the sign of each plant near by", () => {
    const { count: plants, rows } = count(carrots);
    expect(plants).toBeGreaterThan(300);
    // Carrots stand 3 in apart: 2 px at 0.03, 8 px at 0.1, 23 px at 0.3.
    const far = draw(carrots, 0.03).marks;
    expect(far.lineTo).toBe(3);
    const middle = draw(carrots, 0.1).marks;
    expect(middle.lineTo).toBe(3 + rows.length + plants);
    expect(middle.arc).toBeUndefined();
    // A plus for the family of the carrot: two strokes a plant.
    const near = draw(carrots, 0.25).marks;
    expect(near.lineTo).toBe(3 + rows.length + 2 * plants);
  });

  it("in a block are dots in an outline, with no rows", () => {
    const block = planted({ ...newPlanting("carrot"), set: "block", patch: whole });
    const { marks } = draw(block, 0.1);
    expect(marks.rect).toBe(count(block).count);
    expect(marks.lineTo).toBe(3);
  });

  it("have their spread about them where there is room to see it", () => {
    const tomatoes = planted({ ...newPlanting("tomato"), patch: whole });
    const { count: plants } = count(tomatoes);
    // The tomato's sign has two rings; its spread is a third.
    expect(draw(tomatoes, 0.2).marks.arc).toBe(3 * plants);
    expect(draw(tomatoes, 0.04).marks.arc).toBe(2 * plants);
  });

  it("out of sight are not drawn, whole beds and single plants", () => {
    const away = { ...carrots, at: [50_000, 50_000] as const };
    expect(draw(away, 0.25).marks.lineTo).toBeUndefined();
    const half = { ...carrots, at: [0, 0] as const };
    const { plants, rows } = count(half);
    const { marks } = draw(half, 0.25);
    const view = { x: -100, y: -100, scale: 0.25 };
    const seen = plants.filter((plant) => toScreen(view, plant).every((px) => px > -9)).length;
    expect(seen).toBeLessThan(plants.length);
    expect(marks.lineTo).toBe(3 + rows.length + 2 * seen);
  });

  it("are drawn where the engine set them, in a bed that is turned", () => {
    const turned = { ...carrots, turn: 30, at: [1500, 900] as const };
    const view = { x: -40, y: 70, scale: 0.137 };
    const own: Point = [123, -456];
    const [x, y] = ownToScreen(turned, view)(own);
    const [ex, ey] = toScreen(view, placed(own, turned.at, 30));
    expect(x).toBeCloseTo(ex, 9);
    expect(y).toBeCloseTo(ey, 9);
  });
});

describe("the day shown", () => {
  const both = planted(
    { ...newPlanting("pea"), patch: whole },
    { ...newPlanting("bean-bush"), patch: whole },
  );
  const [pea, bean] = plantsOf(both, gardenWith({ site }).site).map(({ standing }) => standing);

  it("is the bed's fullest unless one is chosen, and the Sun leaf's while that is open", () => {
    expect(draw(both, 0.1).words[0]).toMatch(/^Pea/);
    showDay(bean!.from + 5);
    expect(draw(both, 0.1).words[0]).toMatch(/^Snap bush bean/);
    const shut = openMoment();
    setDay("2026-01-10");
    expect(dayShown()).toBe(10);
    expect(draw(both, 0.1)).toEqual({ marks: {}, words: [] });
    shut();
    expect(dayShown()).toBe(bean!.from + 5);
  });

  it("draws the plan anew when it becomes another, and only then", () => {
    let drawn = 0;
    const stop = whenDayShown(() => drawn++);
    showDay(pea!.from);
    showDay(pea!.from);
    setDay("2026-07-01");
    expect(drawn).toBe(1);
    const shut = openMoment();
    expect(drawn).toBe(2);
    shut();
    expect(drawn).toBe(3);
    stop();
    showDay(null);
    expect(drawn).toBe(3);
  });
});

describe("captions of crops", () => {
  const byRule = (text: string, { size }: { size: number }) => text.length * size * 0.5;
  const captions = (item: ItemOf<"bed">, scale: number, taken: Parameters<typeof cropCaptions>[5] = []) => {
    const all = plantsOf(item, gardenWith({ site }).site);
    return cropCaptions(item, all, all, { x: 0, y: 0, scale }, "us", taken, byRule);
  };
  const said = (item: ItemOf<"bed">, scale: number) =>
    captions(item, scale).map(({ lines }) => lines.map(({ text }) => text).join("/"));

  it("tell crop and spacing, then the crop alone, then what there is room for of its name", () => {
    const lettuce = planted({
      ...newPlanting("lettuce-leaf"),
      patch: { at: [0, 0], width: 900, length: 500 },
    });
    expect(said(lettuce, 0.2)).toEqual(["Leaf lettuce · 6 in"]);
    expect(said(lettuce, 0.1)).toEqual(["Leaf lettuce/6 in"]);
    expect(said(lettuce, 0.085)).toEqual(["Leaf lettuce"]);
    expect(said(lettuce, 0.065)).toEqual(["Leaf let…"]);
  });

  it("tell in one place what the bed holds where no patch has room for words", () => {
    const narrow = (crop: "carrot" | "beet" | "leek", x: number): Planting => ({
      ...newPlanting(crop),
      patch: { at: [x, 0], width: 60, length: 300 },
    });
    const mixed = planted(narrow("carrot", -300), narrow("beet", 0), narrow("leek", 300));
    expect(said(mixed, 0.06)).toEqual(["3 crops"]);
    expect(said(planted(narrow("carrot", 0)), 0.06)).toEqual(["Carrot"]);
    expect(said(mixed, 0.01)).toEqual([]);
  });

  it("keep off the bed's name and off one another", () => {
    const name = { minX: -40, minY: -12, maxX: 40, maxY: 12 };
    const middle = toScreen({ x: 0, y: 0, scale: 0.1 }, carrots.at);
    const taken = {
      minX: middle[0] + name.minX,
      minY: middle[1] + name.minY,
      maxX: middle[0] + name.maxX,
      maxY: middle[1] + name.maxY,
    };
    const [label] = captions(carrots, 0.1, [taken]);
    expect(label).toBeDefined();
    expect(overlap(labelBox(label!), taken)).toBe(false);
    const many = planted(...(["carrot", "beet", "leek", "pea"] as const).map(newPlanting));
    const boxes = captions(many, 0.15).map(labelBox);
    expect(boxes.length).toBeGreaterThan(2);
    boxes.forEach((box, i) => {
      for (const other of boxes.slice(i + 1)) expect(overlap(box, other)).toBe(false);
    });
  });

  it("tell what follows in the same ground", () => {
    const both = planted(
      { ...newPlanting("pea"), patch: whole },
      { ...newPlanting("bean-bush"), patch: whole },
    );
    const all = plantsOf(both, gardenWith({ site }).site);
    const labels = cropCaptions(both, all.slice(0, 1), all, { x: 0, y: 0, scale: 0.3 }, "us", [], byRule);
    expect(labels[0]!.lines.map(({ text }) => text)).toEqual(["Pea · 4 in", "then snap bush bean"]);
  });
});
