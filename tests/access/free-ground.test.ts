import { describe, expect, it } from "vitest";
import { freeGround } from "../../src/access/free-ground.ts";
import { signedArea } from "../../src/geometry/ring.ts";
import type { Garden, Ring } from "../../src/index.ts";
import { bed, fence, gardenWith, gate, keepClear, path, shed, tree } from "../helpers/garden-of.ts";

const yard: Ring = [
  [0, 0],
  [9000, 0],
  [9000, 7000],
  [0, 7000],
];
const areas = (...items: Garden["items"]) =>
  freeGround(gardenWith({ yard }, ...items)).map(({ outer, holes }) =>
    Math.round([outer, ...holes].reduce((sum, ring) => sum + signedArea(ring), 0)),
  );

describe("freeGround", () => {
  it("is the whole of an empty yard, whichever way round it is drawn", () => {
    expect(areas()).toEqual([63_000_000]);
    expect(freeGround(gardenWith({ yard: yard.toReversed() }))).toHaveLength(1);
  });

  it("is less by beds, sheds, and a tree's trunk but not its crown", () => {
    expect(
      areas(
        bed("salads", { x: 1000, y: 900, w: 1200, h: 2500 }),
        shed("shed", { x: 6000, y: 4000, w: 2100, h: 1700 }),
      ),
    ).toEqual([63_000_000 - 3_000_000 - 3_570_000]);
    const [left] = areas(tree("tree", { at: [3000, 3000], trunk: 300, canopy: 5000 }));
    // The trunk is drawn with 16 chords: 16/2 sin(22.5 degrees) times the square of its radius.
    expect(63_000_000 - left!).toBeCloseTo(8 * Math.sin(Math.PI / 8) * 150 ** 2, -1);
  });

  it("takes nothing away for paths and ground kept clear", () => {
    expect(
      areas(path("path", { from: [0, 3000], to: [9000, 3000] }), keepClear("drain", { x: 2000, y: 2000 })),
    ).toEqual([63_000_000]);
  });

  it("falls in two where a fence runs across, and hangs together through its gate", () => {
    const line = fence("fence", { from: [-100, 3000], to: [9100, 3000], thickness: 50 });
    expect(areas(line)).toHaveLength(2);
    expect(areas(line, gate("gate", { at: [4000, 3000], width: 1000 }))).toEqual([63_000_000 - 8000 * 50]);
  });

  it("counts ground under two overlapping beds once, and beds outside the yard not at all", () => {
    expect(
      areas(
        bed("a", { x: 1000, y: 1000, w: 1200, h: 2500 }),
        bed("b", { x: 1600, y: 1000, w: 1200, h: 2500 }),
      ),
    ).toEqual([63_000_000 - 1800 * 2500]);
    expect(areas(bed("a", { x: -5000, y: 1000, w: 1200, h: 2500 }))).toEqual([63_000_000]);
    expect(areas(bed("a", { x: -600, y: 1000, w: 1200, h: 2500 }))).toEqual([63_000_000 - 600 * 2500]);
  });

  it("is none where a bed covers the whole yard", () => {
    expect(areas(bed("a", { x: -100, y: -100, w: 9900, h: 8000 }))).toEqual([]);
  });
});
