import { describe, expect, it } from "vitest";
import { gapsFrom, gapsOf } from "../../src/access/gaps.ts";
import { obstaclesOf } from "../../src/access/obstacles.ts";
import { GAP_SIGHT } from "../../src/access/types.ts";
import { itemId } from "../../src/index.ts";
import {
  bed,
  fence,
  gardenOf,
  gardenWith,
  gate,
  house,
  path,
  shed,
  tree,
  WIDE_YARD,
  wall,
} from "../helpers/garden-of.ts";
import { distanceByJsts } from "../helpers/jsts-reference.ts";
import { denseScene, rowsScene, seeded, tangledScene, withMoved } from "../helpers/scenes.ts";

const widths = (garden: Parameters<typeof gapsOf>[0]) =>
  gapsOf(garden).map(({ between, width }) => [between.join(" "), Math.round(width * 1000) / 1000]);

describe("gapsOf", () => {
  it("measures beds to beds, house, shed, wall, fence and a tree's trunk, each pair once", () => {
    const garden = gardenOf(
      house("house", { x: -3000, y: -4500, w: 8000, h: 4000 }),
      bed("salads", { w: 1200, h: 2500 }),
      bed("roots", { x: 1900, w: 900, h: 2100 }),
      shed("shed", { x: -2000, y: 300, w: 1300, h: 900 }),
      fence("fence", { from: [-5000, 3100], to: [1500, 3100], thickness: 40 }),
      wall("wall", { from: [3500, -1000], to: [3500, 1000], thickness: 220 }),
      tree("tree", { at: [-700, 2000], trunk: 300 }),
    );
    expect(widths(garden)).toEqual([
      ["salads house", 500],
      ["salads roots", 700],
      ["salads shed", 700],
      ["salads fence", 580],
      ["salads tree", 550],
      ["roots house", 500],
      ["roots fence", Math.round(Math.hypot(400, 980) * 1000) / 1000],
      ["roots wall", 590],
    ]);
  });

  it("measures to the side of a closed wall's thickness, not to its middle line", () => {
    const garden = gardenOf(
      bed("salads", { w: 1200, h: 2500 }),
      wall("wall", { from: [1900, -900], to: [1900, 3000], thickness: 220 }),
    );
    expect(widths(garden)).toEqual([["salads wall", 590]]);
  });

  it("takes nothing that can be walked on for the side of a gap", () => {
    expect(widths(gardenOf(bed("salads"), path("path", { from: [1500, 0], to: [1500, 2400] })))).toEqual([]);
  });

  it("lets a fence open at its gate: the gap is to what is left of the fence", () => {
    const line = fence("fence", { from: [-6000, 3000], to: [6000, 3000], thickness: 40 });
    const opening = gate("gate", { at: [600, 3000], width: 1600 });
    expect(widths(gardenOf(bed("salads", { w: 1200, h: 2500 }), line, opening))).toEqual([
      ["salads fence", Math.round(Math.hypot(200, 480) * 1000) / 1000],
    ]);
  });

  it("tells the gap to the yard's outline, a notch included, whichever way round the yard is drawn", () => {
    const yard = [
      [-1000, -700],
      [1700, -700],
      [1700, 900],
      [1500, 900],
      [1500, 1100],
      [1700, 1100],
      [1700, 8000],
      [-1000, 8000],
    ] as const;
    const salads = bed("salads", { w: 1200, h: 2500 });
    expect(widths(gardenWith({ yard }, salads))).toEqual([["salads yard", 300]]);
    expect(widths(gardenWith({ yard: yard.toReversed() }, salads))).toEqual([["salads yard", 300]]);
  });

  it("calls the gap to the yard 0 for a bed across its outline, outside it, or larger than it", () => {
    const yard = [
      [0, 0],
      [3000, 0],
      [3000, 5000],
      [0, 5000],
    ] as const;
    for (const salads of [
      bed("salads", { x: -100, y: 1000, w: 1200, h: 2500 }),
      bed("salads", { x: -1900, y: 1000, w: 1200, h: 2500 }),
      bed("salads", { x: -500, y: -500, w: 9000, h: 9500 }),
    ]) {
      expect(widths(gardenWith({ yard }, salads))).toEqual([["salads yard", 0]]);
    }
  });

  it("calls the gap 0 between things that touch or overlap", () => {
    const garden = gardenOf(
      bed("salads", { w: 1200, h: 2500 }),
      bed("roots", { x: 1200, y: 300, w: 900, h: 2100 }),
      bed("beans", { x: 900, y: 2000, w: 700, h: 1300 }),
    );
    expect(widths(garden)).toEqual([
      ["salads roots", 0],
      ["salads beans", 0],
      ["roots beans", 0],
    ]);
  });

  it("has nothing to say of a yard without beds", () => {
    expect(gapsOf(gardenOf(house("house"), shed("shed", { x: 8300 })))).toEqual([]);
    expect(gapsOf(gardenOf())).toEqual([]);
  });

  it("loses no pair and invents none: all pairs measured one by one, by JSTS, in 30 gardens", () => {
    for (let seed = 1; seed <= 30; seed++) {
      const scene = seed % 3 === 0 ? tangledScene : seed % 3 === 1 ? denseScene : rowsScene;
      const garden = { ...scene(8, seed), yard: WIDE_YARD };
      const solid = obstaclesOf(garden);
      const expected = new Map<string, number>();
      for (const [i, a] of solid.entries()) {
        for (const b of solid.slice(i + 1)) {
          if (a.kind !== "bed" && b.kind !== "bed") continue;
          const key = [a.id, b.id].sort().join(" ");
          const width = Math.min(distanceByJsts(a.ring, b.ring), expected.get(key) ?? Infinity);
          if (width < GAP_SIGHT) expected.set(key, width);
        }
      }
      const gaps = gapsOf(garden).filter(({ between }) => between[1] !== "yard");
      expect(gaps.length, `seed ${seed}`).toBe(expected.size);
      for (const { between, width, from, to } of gaps) {
        expect(width, `seed ${seed}`).toBeCloseTo(expected.get([...between].sort().join(" ")) ?? -1, 6);
        expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(width, 6);
      }
    }
  });

  it("answers the same while one bed is dragged as it does for a garden it has never seen", () => {
    const random = seeded(88);
    let garden = denseScene(12, 4);
    gapsOf(garden);
    for (let step = 0; step < 40; step++) {
      garden = withMoved(garden, "bed-5", [random() * 300 - 150, random() * 300 - 150]);
      expect(gapsOf(garden)).toEqual(gapsOf(structuredClone(garden)));
    }
  });
});

describe("gapsFrom", () => {
  it("tells the gaps of one thing with itself first", () => {
    const garden = gardenOf(
      bed("roots", { x: 1900, w: 900, h: 2100 }),
      bed("salads", { w: 1200, h: 2500 }),
      bed("far", { x: 9000 }),
    );
    expect(gapsFrom(itemId("salads"), garden).map(({ between }) => between)).toEqual([["salads", "roots"]]);
    expect(gapsFrom(itemId("nobody"), garden)).toEqual([]);
  });
});
