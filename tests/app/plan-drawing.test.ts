import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { carried } from "../../app/plan/carried.ts";
import { goneInDraft, newInDraft } from "../../app/plan/draft-items.ts";
import { hatchAnchor, tileSide } from "../../app/plan/hatch.ts";
import { TILES } from "../../app/plan/hatch-tiles.ts";
import { northAt, northWords, readDegrees } from "../../app/plan/north.ts";
import { postPlaces } from "../../app/plan/paint/barrier.ts";
import { paintOrder } from "../../app/plan/paint-order.ts";
import { crisp, lineWidth } from "../../app/plan/pen.ts";
import { pannedBy, toScreen } from "../../app/plan/viewport.ts";
import { applyOps, emptyGarden, itemId, newItem, type Op, type Preset } from "../../src/index.ts";

const RATIOS = [1, 1.25, 1.5, 2, 3];
const place = (preset: Preset, id: string) =>
  newItem(preset, { id: itemId(id), at: [3000, 2000], units: "metric" });

describe("a hatch", () => {
  it("hangs on a whole device pixel, less than one from its point", () => {
    const px = fc.double({ min: -3000, max: 3000, noNaN: true });
    fc.assert(
      fc.property(px, px, fc.constantFrom(...RATIOS), (x, y, ratio) => {
        const [ax, ay] = hatchAnchor([x, y], ratio);
        for (const [anchor, point] of [
          [ax, x],
          [ay, y],
        ] as const) {
          expect(Math.abs(anchor * ratio - Math.round(anchor * ratio))).toBeLessThan(1e-6);
          expect(Math.abs(anchor - point) * ratio).toBeLessThanOrEqual(0.5 + 1e-6);
        }
      }),
    );
  });

  it("is carried along when the plan is panned by whole pixels", () => {
    const view = { x: 130, y: 70, scale: 0.0731 };
    const before = hatchAnchor(toScreen(view, [3000, 2000]), 2);
    const after = hatchAnchor(toScreen(pannedBy(view, [17, -9]), [3000, 2000]), 2);
    expect(after[0] - before[0]).toBeCloseTo(17, 9);
    expect(after[1] - before[1]).toBeCloseTo(-9, 9);
  });

  it.each(Object.entries(TILES))("%s is tiled in whole device pixels at every ratio", (_name, { size }) => {
    for (const ratio of RATIOS) {
      expect(Number.isInteger(tileSide(size, ratio))).toBe(true);
      expect(Math.abs(tileSide(size, ratio) - size * ratio)).toBeLessThanOrEqual(0.5);
    }
  });
});

describe("a crisp line", () => {
  it("fills whole device pixels, at any ratio, place and width", () => {
    const widths = fc.constantFrom(0.5, 1, 1.25, 1.5, 2, 2.5);
    fc.assert(
      fc.property(
        fc.double({ min: -500, max: 500, noNaN: true }),
        widths,
        fc.constantFrom(...RATIOS),
        (x, w, ratio) => {
          const edge = (crisp({ ratio }, x, w) - lineWidth({ ratio }, w) / 2) * ratio;
          expect(Math.abs(edge - Math.round(edge))).toBeLessThan(1e-6);
        },
      ),
    );
  });
  it("is never thinner than a device pixel", () => {
    expect(lineWidth({ ratio: 1 }, 0.2)).toBe(1);
    expect(lineWidth({ ratio: 2 }, 0.2)).toBe(0.5);
  });
});

describe("what a gesture holds", () => {
  const garden = applyOps(emptyGarden("metric"), [
    { op: "add", item: place("bed", "roots") },
    { op: "add", item: place("bed-l", "herbs") },
    { op: "add", item: place("shed", "shed") },
  ]);
  const during = (ops: readonly Op[]) => {
    const state = { garden, draft: applyOps(garden, ops) };
    return {
      fresh: newInDraft(state).map(({ id }) => `${id}`),
      gone: goneInDraft(state).map((id) => `${id}`),
    };
  };

  it("is what has moved, and no other thing", () => {
    expect(during([{ op: "move", id: itemId("herbs"), by: [300, 50] }])).toEqual({
      fresh: ["herbs"],
      gone: ["herbs"],
    });
  });
  it("is what has been added, and what has been taken away", () => {
    expect(during([{ op: "add", item: place("tap", "tap") }])).toEqual({ fresh: ["tap"], gone: [] });
    expect(during([{ op: "remove", id: itemId("shed") }])).toEqual({ fresh: [], gone: ["shed"] });
  });
  it("is nothing between gestures, and the very same nothing", () => {
    expect(newInDraft({ garden, draft: null })).toBe(newInDraft({ garden, draft: garden }));
    expect(goneInDraft({ garden, draft: null })).toEqual([]);
  });
});

describe("the order things are drawn in", () => {
  it("puts ground and paths under beds, gates over fences and crowns over all", () => {
    const items = (["tree", "gate", "bed", "fence", "path", "ground"] as const).map((preset) =>
      place(preset, preset),
    );
    expect(paintOrder(items).map(({ id }) => `${id}`)).toEqual([
      "ground",
      "path",
      "bed",
      "fence",
      "gate",
      "tree",
    ]);
  });
  it("keeps the garden's own order among things that stand", () => {
    const items = [place("shed", "shed"), place("bed", "roots"), place("house", "house")];
    expect(paintOrder(items)).toEqual(items);
  });
});

describe("what was found on a thing", () => {
  it("goes along with it when it is moved and turned", () => {
    const before = { ...place("bed", "roots"), at: [1000, 2000] as const, turn: 0 };
    const after = { ...before, at: [1500, 2700] as const, turn: 90 };
    const [x, y] = carried([1400, 2000], before, after);
    expect(x).toBeCloseTo(1500, 9);
    expect(y).toBeCloseTo(3100, 9);
    expect(carried([1400, 2000], before, before)).toEqual([1400, 2000]);
  });
});

describe("the posts of a fence", () => {
  it("stand at each end and corner, and no farther apart than the spacing", () => {
    expect(
      postPlaces(
        [
          [0, 0],
          [5000, 0],
          [5000, 700],
        ],
        2500,
      ),
    ).toEqual([
      [0, 0],
      [2500, 0],
      [5000, 0],
      [5000, 700],
    ]);
  });
});

describe("north", () => {
  it("points where the arrow's tip is pulled, clockwise from up", () => {
    expect(northAt([0, -40], false)).toBe(0);
    expect(northAt([40, 0], false)).toBe(90);
    expect(northAt([-40, 0], false)).toBe(270);
    expect(northAt([20, -60], false)).toBe(18);
  });
  it("is caught near an eighth of a turn, unless set free", () => {
    const near = (degrees: number): readonly [number, number] => {
      const rad = (degrees * Math.PI) / 180;
      return [Math.sin(rad) * 50, -Math.cos(rad) * 50];
    };
    expect(northAt(near(42), true)).toBe(45);
    expect(northAt(near(42), false)).toBe(42);
    expect(northAt(near(357), true)).toBe(0);
    expect(northAt(near(38), true)).toBe(38);
  });
  it("is told as people say it", () => {
    expect(northWords(0)).toBe("straight up");
    expect(northWords(30)).toBe("30° right of up");
    expect(northWords(-20)).toBe("20° left of up");
    expect(northWords(120)).toBe("120° right of up");
    expect(northWords(180)).toBe("straight down");
  });
  it("is read as typed, and refused otherwise", () => {
    expect(readDegrees(" 12,5° ")).toBe(12.5);
    expect(readDegrees("−30")).toBe(330);
    expect(readDegrees("360")).toBe(0);
    for (const text of ["", "north", "12 13", "361", "1e2", "-"]) expect(readDegrees(text), text).toBeNull();
  });
});
