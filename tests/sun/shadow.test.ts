import { describe, expect, it } from "vitest";
import { contains, type Item, itemId } from "../../src/index.ts";
import { bedSoil } from "../../src/sun/bed-soil.ts";
import { casterOf } from "../../src/sun/casters.ts";
import { cellMiddle, cellsOver, emptyMask, isSet } from "../../src/sun/cells.ts";
import { castable, Raster } from "../../src/sun/raster.ts";
import { shadowOf } from "../../src/sun/shadow.ts";
import { bedShade } from "../../src/sun/sun-hours.ts";
import { bed, gardenWith, house, tree } from "../helpers/garden-of.ts";
import { looksOf, minutesAt, raysOf } from "../helpers/ray-reference.ts";

const bush = tree("bush", { at: [300, 200], trunk: 60, canopy: 2200, height: 1900, crownBase: 0 });
const cottage = house("cottage", {
  shape: { type: "l", width: 5200, length: 4100, armWidth: 1900, armLength: 1500 },
  at: [100, -300],
  turn: 33,
  height: 1200,
  roof: "gabled",
  roofRise: 1700,
});
const cells = cellsOver({ minX: -9000, minY: -9000, maxX: 9000, maxY: 9000 }, 97);

describe("a shadow as an outline and as cells", () => {
  const suns = [
    [0, 0],
    [1.3, 0],
    [0, -2.2],
    [-0.8, 0.35],
    [2.9, 1.7],
  ] as const;
  // Above the ground, through the crown's lower and upper half, and through the slope of the roof.
  const cases = ([bush, cottage] as Item[]).flatMap((item) =>
    [0, 300, 1400, 2000].flatMap((level) => suns.map((sun) => [item, level, sun] as const)),
  );

  it.each(cases.map(([item, level, sun]) => [item.id, level, sun.join(", "), item, sun] as const))(
    "is the same for the %s on a plane at %i mm with the shadow falling %s",
    (_id, level, _words, item, sun) => {
      const bodies = casterOf(item)!.parts.flatMap((part) => part.bodies);
      let [differ, shaded] = [0, 0];
      for (const body of bodies) {
        const ring = shadowOf(body, sun, level);
        const standing = castable(body, cells, level);
        expect(standing === null).toBe(ring === null);
        if (!ring || !standing) continue;
        const mask = emptyMask(cells);
        new Raster(cells).cast(standing, sun[0], sun[1], mask);
        for (let row = 0; row < cells.rows; row++) {
          for (let column = 0; column < cells.columns; column++) {
            const isShaded = isSet(mask, cells, column, row);
            if (isShaded) shaded++;
            if (isShaded !== contains(ring, cellMiddle(cells, column, row))) differ++;
          }
        }
      }
      // An outline of chords leaves out a hair of an ellipse: 2 mm of 2 m, which few middles of cells lie in.
      expect(differ).toBeLessThanOrEqual(Math.ceil(shaded / 100));
      if (level < 1900) expect(shaded).toBeGreaterThan(0);
    },
  );
});

describe("a bush down to the ground beside a tall bed", () => {
  it.each([600, 1200, 1700])("shades soil %i mm up as rays say, from what of it is higher", (height) => {
    const raised = bed("raised", {
      x: 500,
      y: 700,
      w: 1100,
      h: 1900,
      wall: { made: "metal", height, thickness: 3 },
    });
    const site = { latitude: 41, longitude: 3, north: 10 };
    const garden = gardenWith({ site }, bush, raised);
    const days = ["2026-04-20", "2026-06-21", "2026-09-20"];
    const { cells: soilCells, soil, level } = bedSoil(raised, 152.4)!;
    const looks = looksOf(garden, days, 15);
    const rays = raysOf([bush]);
    const minutes: number[] = [];
    for (let row = 0; row < soilCells.rows; row++) {
      for (let column = 0; column < soilCells.columns; column++) {
        if (!isSet(soil, soilCells, column, row)) continue;
        minutes.push(minutesAt(rays, looks, 15, cellMiddle(soilCells, column, row), level) / days.length);
      }
    }
    const found = bedShade(garden, itemId("raised"), { days, step: 15 })!;
    expect(found.hours * 60).toBeCloseTo(minutes.reduce((sum, one) => sum + one, 0) / minutes.length, 6);
    expect(found.shade!.map(({ id }) => id)).toEqual(["bush"]);
  });
});
