import { describe, expect, it } from "vitest";
import { sideDimensions } from "../../src/access/side-dimensions.ts";
import { gapBetween, overlaps } from "../../src/geometry/gap.ts";
import { type Garden, itemId, outlineOf, type Ring } from "../../src/index.ts";
import { bed, fence, gardenWith, house, path, tap } from "../helpers/garden-of.ts";
import { rowsScene, withMoved } from "../helpers/scenes.ts";

const yard: Ring = [
  [-3000, -2000],
  [6000, -2000],
  [6000, 9000],
  [-3000, 9000],
];
const told = (garden: Garden, id: string) =>
  Object.fromEntries(
    sideDimensions(garden, itemId(id)).map(({ side, width, other }) => [
      side,
      [Math.round(width * 1000) / 1000, other],
    ]),
  );

describe("sideDimensions", () => {
  const salads = bed("salads", { w: 1200, h: 2500 });

  it("runs to the yard's outline where nothing else stands", () => {
    expect(told(gardenWith({ yard }, salads), "salads")).toEqual({
      right: [4800, "yard"],
      down: [6500, "yard"],
      left: [3000, "yard"],
      up: [2000, "yard"],
    });
  });

  it("runs to what is first met straight that way, and not to what is passed by", () => {
    const garden = gardenWith(
      { yard },
      salads,
      bed("roots", { x: 1900, y: 300, w: 900, h: 2100 }),
      bed("passed", { x: 1500, y: 2600, w: 900, h: 400 }),
      bed("behind", { x: 3000, y: 0, w: 900, h: 2100 }),
      house("house", { x: -2000, y: -1900, w: 4000, h: 1400 }),
      fence("fence", { from: [-1000, -500], to: [-1000, 4000], thickness: 50 }),
    );
    expect(told(garden, "salads")).toEqual({
      right: [700, "roots"],
      down: [6500, "yard"],
      left: [975, "fence"],
      up: [500, "house"],
    });
  });

  it("stands in the middle of the sides that face each other", () => {
    const garden = gardenWith({ yard }, salads, bed("roots", { x: 1900, y: 300, w: 900, h: 3100 }));
    const right = sideDimensions(garden, itemId("salads")).find(({ side }) => side === "right");
    expect(right).toMatchObject({ from: [1200, 1400], to: [1900, 1400] });
  });

  it("starts from the corner of a turned bed that is met first", () => {
    const turned = bed("roots", {
      shape: { type: "rectangle", width: 1000, length: 1000 },
      at: [3000, 1100],
      turn: 45,
    });
    const right = sideDimensions(gardenWith({ yard }, salads, turned), itemId("salads")).find(
      ({ side }) => side === "right",
    );
    expect(right?.width).toBeCloseTo(1800 - 500 * Math.SQRT2, 6);
    expect(right?.to[1]).toBeCloseTo(1100, 6);
  });

  it("is 0 to what is touched, and goes past nothing that is overlapped", () => {
    const touching = bed("roots", { x: 1200, y: 300, w: 900, h: 2100 });
    expect(told(gardenWith({ yard }, salads, touching), "salads")).toMatchObject({ right: [0, "roots"] });
  });

  it("measures taps and paths too, and knows nobody who is not there", () => {
    const garden = gardenWith(
      { yard },
      salads,
      tap("tap", { at: [-700, 1000] }),
      path("path", { from: [2000, 500], to: [2000, 900] }),
    );
    expect(told(garden, "tap")).toMatchObject({ right: [700, "salads"], left: [2300, "yard"] });
    expect(told(garden, "path")).toMatchObject({ left: [800, "salads"], right: [4000, "yard"] });
    expect(sideDimensions(garden, itemId("nobody"))).toEqual([]);
  });

  it("is how far a bed can be shifted that way until it touches: no less, no more", () => {
    for (let seed = 1; seed <= 12; seed++) {
      const garden = rowsScene(9, seed);
      for (const { from, to, width, other } of sideDimensions(garden, itemId("bed-5"))) {
        expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(width, 6);
        if (other === "yard" || width < 1) continue;
        const along = (share: number) =>
          withMoved(garden, "bed-5", [(to[0] - from[0]) * share, (to[1] - from[1]) * share]);
        const ring = (from: Garden, id: string) => {
          const item = from.items.find((candidate) => candidate.id === id);
          return item && "shape" in item ? outlineOf(item) : null;
        };
        const target = ring(garden, other);
        if (!target) continue;
        const short = along((width - 0.5) / width);
        expect(overlaps(ring(short, "bed-5")!, target), `seed ${seed}`).toBe(false);
        expect(gapBetween(ring(along(1), "bed-5")!, target).width, `seed ${seed}`).toBeLessThan(0.001);
      }
    }
  });
});
