import { describe, expect, it } from "vitest";
import { outsideLabels } from "../../app/plan/outside-labels.ts";
import { paintFindings, type Shown } from "../../app/plan/paint/findings.ts";
import { paintItem } from "../../app/plan/paint/item.ts";
import { paintYardGround, paintYardLine } from "../../app/plan/paint/yard.ts";
import type { Pen } from "../../app/plan/pen.ts";
import {
  type Access,
  BARROW,
  type BedAccess,
  boundsOf,
  INCH,
  type Item,
  itemId,
  newItem,
  outlineOf,
  type Point,
  type Snag,
} from "../../src/index.ts";
import { bed, gardenWith, thing } from "../helpers/garden-of.ts";

interface Recorded {
  readonly pen: Pen;
  readonly words: string[];
  readonly calls: string[];
  readonly dashes: string[];
}

/** A pen on a canvas that writes down what it is asked for. */
function recorder(scale = 0.1): Recorded {
  const words: string[] = [];
  const calls: string[] = [];
  const dashes: string[] = [];
  const own: Record<string, unknown> = { canvas: { width: 900, height: 700 }, createPattern: () => ({}) };
  const ctx = new Proxy(own, {
    get: (target, key: string) =>
      key in target
        ? target[key]
        : (...args: unknown[]) => {
            calls.push(key);
            if (key === "fillText") words.push(String(args[0]));
            if (key === "setLineDash" && (args[0] as number[]).length > 0) dashes.push(String(args[0]));
          },
    set: (target, key: string, value) => {
      target[key] = value;
      return true;
    },
  });
  const view = { x: -2000, y: -2000, scale };
  return {
    pen: { ctx: ctx as unknown as CanvasRenderingContext2D, view, ratio: 1, units: "us" },
    words,
    calls,
    dashes,
  };
}

const count = (calls: readonly string[], name: string) => calls.filter((call) => call === name).length;

describe("drawing things", () => {
  it.each(BARROW.map(({ preset }) => preset))("draws a %s, and leaves the canvas as it was", (preset) => {
    const { pen, calls } = recorder();
    paintItem(pen, newItem(preset, { id: itemId("it"), at: [100, 200], units: "us" }));
    expect(count(calls, "fill") + count(calls, "stroke")).toBeGreaterThan(0);
    expect(count(calls, "save")).toBe(count(calls, "restore"));
  });

  it("dashes a mound, which has no wall, and no bed of boards", () => {
    const boards = recorder();
    paintItem(boards.pen, bed("roots", { w: 1200, h: 2400 }));
    expect(boards.dashes).toEqual([]);
    const mound = recorder();
    paintItem(mound.pen, bed("roots", { w: 1200, h: 2400, wall: { made: "mound", height: 200 } }));
    expect(mound.dashes).toEqual(["6,4"]);
  });

  it("tells a table bed by its legs and a trellis by its crosses", () => {
    const strokes = (item: Item) => {
      const { pen, calls } = recorder();
      paintItem(pen, item);
      return { rects: count(calls, "strokeRect"), lines: count(calls, "lineTo") };
    };
    const plain = strokes(bed("roots", { w: 1200, h: 2400 }));
    expect(strokes(bed("roots", { w: 1200, h: 2400, legs: 600 })).rects - plain.rects).toBe(4);
    expect(strokes(bed("roots", { w: 1200, h: 2400, trellis: 1500 })).lines - plain.lines).toBeGreaterThan(
      20,
    );
  });

  it("draws the yard with a dot at each corner that stands apart", () => {
    const { pen, calls } = recorder();
    const yard: Point[] = [
      [0, 0],
      [6000, 0],
      [6100, 50],
      [6100, 4000],
      [0, 4000],
    ];
    paintYardGround(pen, gardenWith({ yard }));
    expect(count(calls, "arc")).toBe(0);
    paintYardLine(pen, { yard });
    expect(count(calls, "arc")).toBe(4);
  });
});

describe("drawing what has been found", () => {
  const roots = bed("roots", { x: 0, y: 0, w: 1200, h: 2400, name: "Roots" });
  const salads = bed("salads", { x: 1708, y: 0, w: 900, h: 2400, name: "Salads" });
  const garden = gardenWith({}, roots, salads);
  const access = (changes: Partial<BedAccess> = {}): Access => ({
    freeGround: [],
    gaps: [],
    wheelchair: null,
    beds: [
      {
        id: roots.id,
        standing: [],
        reach: 610,
        outOfReach: [],
        outOfReachAreaMm2: 0,
        farthest: { at: [600, 1200], distance: 600 },
        closedBy: [],
        fromGate: null,
        fromDoor: null,
        kitchen: null,
        hose: null,
        ...changes,
      },
    ],
  });
  const narrow: Snag = {
    key: "narrow",
    rule: "narrow-path",
    grade: "must",
    itemIds: [roots.id, salads.id],
    at: [
      [1200, 1000],
      [1708, 1000],
    ],
    measured: 20 * INCH,
    limit: 24 * INCH,
    unit: "mm",
    title: "",
    detail: "",
    waysOut: [],
    waysOutKnown: true,
    why: "",
    source: { how: "practice", text: "" },
  };
  const shown = (changes: Partial<Shown>): Shown => ({
    garden,
    of: garden,
    snags: [narrow],
    access: access(),
    selection: new Set(),
    activeSnag: null,
    ...changes,
  });
  const drawn = (changes: Partial<Shown>) => {
    const { pen, words, calls } = recorder();
    paintFindings(pen, shown(changes));
    return { words, calls };
  };

  it("writes what a gap lacks on it while its snag is looked at, and only then", () => {
    expect(drawn({ activeSnag: "narrow" }).words).toEqual(["20 in · 4 in short"]);
    expect(drawn({}).words).toEqual([]);
  });

  it("hatches soil beyond reach and writes the bed's name over it again", () => {
    const outer: Point[] = [
      [300, 900],
      [900, 900],
      [900, 1500],
      [300, 1500],
    ];
    const { words, calls } = drawn({ snags: [], access: access({ outOfReach: [{ outer, holes: [] }] }) });
    expect(words[0]).toBe("Roots");
    expect(count(calls, "fill")).toBe(2);
    expect(drawn({ snags: [] }).calls).toEqual([]);
  });

  it("shows the ways of the one thing selected", () => {
    const route = { from: itemId("door"), to: roots.id, length: 18 * 12 * INCH };
    const hose = {
      ...route,
      points: [
        [-900, -900],
        [0, 0],
      ] as Point[],
    };
    const kitchen = {
      ...route,
      length: 26 * 12 * INCH,
      points: [
        [-900, 2000],
        [0, 2000],
      ] as Point[],
    };
    const ways = access({ hose, kitchen });
    expect(drawn({ snags: [], access: ways }).words).toEqual([]);
    expect(drawn({ snags: [], access: ways, selection: new Set([roots.id]) }).words).toEqual([
      "kitchen 26 ft",
      "hose 18 ft",
    ]);
    const long: Snag = { ...narrow, key: "long", rule: "long-hose", itemIds: [roots.id], at: [] };
    const looking = { snags: [long], access: ways, selection: new Set([roots.id]), activeSnag: "long" };
    expect(drawn(looking).words, "only the way that the snag is about").toEqual(["hose 18 ft"]);
  });
});

describe("names that have no room in their beds", () => {
  const view = { x: -3000, y: -3000, scale: 0.05 };
  const round = thing("bed", "berries", {
    name: "Strawberries and rhubarb",
    shape: { type: "oval", width: 1200, length: 1200 },
  });
  const boxes = (...others: Item[]) => outsideLabels([round, ...others], view, "us");

  it("stand under them, or above where something stands under them", () => {
    const own = boundsOf(outlineOf(round));
    const [below] = boxes();
    expect(below!.at[1]).toBeGreaterThan((own.maxY + 3000) * 0.05);
    const [above] = boxes(bed("roots", { x: -1200, y: 700, w: 2400, h: 900 }));
    expect(above!.at[1]).toBeLessThan((own.minY + 3000) * 0.05);
  });

  it("are left out where there is nowhere to stand, and for beds without a name", () => {
    const walls = [
      bed("n", { x: -3000, y: -1500, w: 6000, h: 800 }),
      bed("s", { x: -3000, y: 700, w: 6000, h: 800 }),
      bed("w", { x: -3000, y: -600, w: 2300, h: 1200 }),
      bed("e", { x: 700, y: -600, w: 2300, h: 1200 }),
    ];
    expect(boxes(...walls)).toEqual([]);
    expect(outsideLabels([{ ...round, name: "" }], view, "us")).toEqual([]);
  });
});
