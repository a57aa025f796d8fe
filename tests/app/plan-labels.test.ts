import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { alongLine, clearPlace } from "../../app/plan/clear-place.ts";
import { groundLabels, groundWords } from "../../app/plan/ground-labels.ts";
import { bedSize, labelBox, makeLabel, readable } from "../../app/plan/label.ts";
import type { Letters } from "../../app/plan/lettering.ts";
import { toScreen } from "../../app/plan/viewport.ts";
import { boundsOf, type Item, itemId, newItem, outlineOf, type Point } from "../../src/index.ts";
import { thing } from "../helpers/garden-of.ts";

/** Half an em a letter: no canvas here, and no tests that hang on a font. */
const byRule = (text: string, { size }: Letters) => text.length * size * 0.5;

const bed = (changes: object = {}): Item =>
  ({
    ...newItem("bed", { id: itemId("salads"), at: [5000, 4000], units: "us" }),
    name: "Salads",
    ...changes,
  }) as Item;
const at = (scale: number) => ({ x: 0, y: 0, scale });
const said = (item: Item, scale: number) =>
  makeLabel(item, at(scale), "us", byRule)?.lines.map(({ text }) => text) ?? null;

describe("a bed's label", () => {
  it("says its name and its size while there is room, then its name, then nothing", () => {
    expect(said(bed(), 0.08)).toEqual(["Salads", "48 × 96 · 11 in"]);
    expect(said(bed(), 0.03)).toEqual(["Salads"]);
    expect(said(bed(), 0.01)).toBeNull();
  });

  it("gives the dressed height: two courses of 2x6 stand 11 in, not 12", () => {
    const item = bed();
    if (item.kind !== "bed") throw new Error("a bed is a bed");
    expect(bedSize(item, "us")).toBe("48 × 96 · 11 in");
    expect(bedSize(item, "metric")).toBe("121.9 × 243.8 · 27.9 cm");
  });

  it("lies level in a broad bed and runs upwards in a narrow one", () => {
    const broad = { shape: { type: "rectangle", width: 2400, length: 900 } };
    const narrow = { shape: { type: "rectangle", width: 500, length: 2400 } };
    expect(makeLabel(bed(broad), at(0.07), "us", byRule)?.turn).toBe(0);
    expect(makeLabel(bed(narrow), at(0.07), "us", byRule)?.turn).toBe(-90);
  });

  it("is never upside down, however the bed is turned", () => {
    fc.assert(
      fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (turn) => {
        const upright = readable(turn);
        expect(upright).toBeGreaterThanOrEqual(-90);
        expect(upright).toBeLessThan(90);
        // It is the same line of words: a whole number of half turns away.
        const halves = (turn - upright) / 180;
        expect(Math.abs(halves - Math.round(halves))).toBeLessThan(1e-9);
      }),
    );
  });

  it("stays within its bed at every turn and zoom", () => {
    const turns = fc.double({ min: 0, max: 360, noNaN: true });
    const scales = fc.double({ min: 0.01, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(turns, scales, (turn, scale) => {
        const item = bed({ turn });
        const label = makeLabel(item, at(scale), "us", byRule);
        if (!label || item.kind !== "bed") return;
        const words = labelBox(label);
        const outline = boundsOf(outlineOf(item).map((corner) => toScreen(at(scale), corner)));
        expect(words.minX).toBeGreaterThan(outline.minX);
        expect(words.maxX).toBeLessThan(outline.maxX);
        expect(words.minY).toBeGreaterThan(outline.minY);
        expect(words.maxY).toBeLessThan(outline.maxY);
      }),
    );
  });
});

describe("other labels", () => {
  const at00 = (preset: "gate" | "door" | "tree" | "ground" | "house", changes: object = {}): Item =>
    ({ ...newItem(preset, { id: itemId("it"), at: [3000, 2000], units: "us" }), ...changes }) as Item;

  it("name a gate with its clear width, a kitchen door by its use", () => {
    expect(said(at00("gate"), 0.08)).toEqual(["gate 42 in"]);
    expect(said(at00("door"), 0.08)).toEqual(["kitchen"]);
    expect(said(at00("house"), 0.08)).toEqual(["HOUSE"]);
  });

  it("stand on the side that the leaf of a door does not sweep", () => {
    const y = (swing: string) => makeLabel(at00("door", { swing }), at(0.08), "us", byRule)!.at[1];
    const door = 2000 * 0.08;
    expect(y("out")).toBeLessThan(door);
    expect(y("in")).toBeGreaterThan(door);
  });

  it("leave a tree without words when its crown has no room for them", () => {
    expect(said(at00("tree"), 0.05)).toEqual(["tree 20 ft"]);
    expect(said(at00("tree"), 0.008)).toBeNull();
  });
});

describe("the name of a patch of ground", () => {
  const box = (width: number, length: number) => ({ type: "rectangle" as const, width, length });
  const ground = thing("ground", "patch", { cover: "loose-gravel", shape: box(4000, 3000) });
  const place = (...items: readonly Item[]) =>
    groundLabels([ground, ...items], at(0.08), byRule)[0]?.at ?? null;

  it("says its cover in its middle, or its own name", () => {
    expect(groundLabels([ground], at(0.08), byRule)[0]?.lines[0]?.text).toBe("loose gravel");
    expect(groundWords({ ...ground, name: "Terrace" })).toBe("Terrace");
    expect(place()).toEqual([0, 0]);
  });
  it("moves aside for what stands on it, and goes where nothing is left", () => {
    const aside = place(thing("shed", "shed", { shape: box(1500, 900) }));
    expect(Math.min(aside![0], aside![1])).toBeGreaterThan(50);
    expect(place(thing("shed", "shed", { shape: box(3900, 2900) }))).toBeNull();
  });
  it("is not driven out by a fence that runs round it all", () => {
    const round: [number, number][] = [
      [-1900, -1400],
      [1900, -1400],
      [1900, 1400],
      [-1900, 1400],
    ];
    expect(place(thing("fence", "fence", { points: round }))).toEqual([0, 0]);
  });
  it("is left out where its words are wider than it", () => {
    expect(groundLabels([ground], at(0.01), byRule)).toEqual([]);
  });
});

describe("words on a line", () => {
  const line: Point[] = [
    [0, 0],
    [300, 0],
    [300, 100],
  ];
  it("stand half way along it, corners counted", () => {
    expect(alongLine(line, 0.5)).toEqual([200, 0]);
    expect(alongLine(line, 0.875)).toEqual([300, 50]);
  });
  it("give way to what is there, and stay where there is no place", () => {
    const taken = { minX: 150, minY: -30, maxX: 250, maxY: 30 };
    expect(clearPlace(line, 40, 12, [])).toEqual({ minX: 180, minY: -6, maxX: 220, maxY: 6 });
    expect(clearPlace(line, 40, 12, [taken])).toEqual({ minX: 100, minY: -6, maxX: 140, maxY: 6 });
    const all = { minX: -999, minY: -999, maxX: 999, maxY: 999 };
    expect(clearPlace(line, 40, 12, [all])).toEqual({ minX: 180, minY: -6, maxX: 220, maxY: 6 });
  });
});
