import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isSimple, type Point, type Ring } from "../../src/index.ts";

describe("isSimple", () => {
  it.each<[string, Ring]>([
    [
      "a triangle",
      [
        [0, 0],
        [700, 0],
        [300, 900],
      ],
    ],
    [
      "an L",
      [
        [0, 0],
        [9, 0],
        [9, 3],
        [4, 3],
        [4, 8],
        [0, 8],
      ],
    ],
    [
      "a corner in the middle of a side",
      [
        [0, 0],
        [400, 0],
        [900, 0],
        [900, 700],
        [0, 700],
      ],
    ],
    [
      "a ring that runs the other way",
      [
        [0, 0],
        [300, 900],
        [700, 0],
      ],
    ],
  ])("takes %s", (_name, ring) => {
    expect(isSimple(ring)).toBe(true);
  });

  it.each<[string, Ring]>([
    ["nothing", []],
    [
      "two corners",
      [
        [0, 0],
        [500, 900],
      ],
    ],
    [
      "corners in one line",
      [
        [0, 0],
        [500, 0],
        [900, 0],
      ],
    ],
    [
      "a bow tie",
      [
        [0, 0],
        [900, 700],
        [900, 0],
        [0, 800],
      ],
    ],
    [
      "a corner drawn twice",
      [
        [0, 0],
        [700, 0],
        [700, 0],
        [300, 900],
      ],
    ],
    [
      "a ring closed by its first corner again",
      [
        [0, 0],
        [700, 0],
        [300, 900],
        [0, 0],
      ],
    ],
    [
      "a spike that runs back along itself",
      [
        [0, 0],
        [900, 0],
        [500, 0],
        [500, 700],
        [0, 700],
      ],
    ],
    [
      "a corner that touches another side",
      [
        [0, 0],
        [900, 0],
        [900, 800],
        [450, 0],
        [0, 800],
      ],
    ],
    [
      "two rooms that meet in a point",
      [
        [0, 0],
        [500, 400],
        [900, 0],
        [900, 800],
        [500, 400],
        [0, 900],
      ],
    ],
    [
      "less ground than a square millimetre",
      [
        [0, 0],
        [0.9, 0],
        [0.9, 0.9],
      ],
    ],
    [
      "a corner that is no number",
      [
        [0, 0],
        [Number.NaN, 0],
        [300, 900],
      ],
    ],
  ])("refuses %s", (_name, ring) => {
    expect(isSimple(ring)).toBe(false);
  });

  const corner = fc.tuple(fc.integer({ min: -90, max: 90 }), fc.integer({ min: -90, max: 90 }));
  const ring = fc.array(corner, { minLength: 3, maxLength: 7 });

  it("says the same whichever corner comes first and whichever way round", () => {
    fc.assert(
      fc.property(ring, fc.nat(6), (corners: Point[], by) => {
        const start = by % corners.length;
        const rolled = [...corners.slice(start), ...corners.slice(0, start)];
        expect(isSimple(rolled)).toBe(isSimple(corners));
        expect(isSimple(corners.toReversed())).toBe(isSimple(corners));
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  it("takes every star-shaped ring, and refuses it with two neighbours swapped", () => {
    const radii = fc.array(fc.integer({ min: 300, max: 900 }), { minLength: 6, maxLength: 12 });
    fc.assert(
      fc.property(radii, fc.nat(11), (lengths, pick) => {
        const star = lengths.map((radius, i): Point => {
          const angle = (2 * Math.PI * i) / lengths.length;
          return [radius * Math.cos(angle), radius * Math.sin(angle)];
        });
        expect(isSimple(star)).toBe(true);
        const even = star.map((_, i): Point => {
          const angle = (2 * Math.PI * i) / star.length;
          return [700 * Math.cos(angle), 700 * Math.sin(angle)];
        });
        const i = pick % (even.length - 1);
        [even[i], even[i + 1]] = [even[i + 1]!, even[i]!];
        expect(isSimple(even)).toBe(false);
      }),
      { seed: 17, numRuns: 300 },
    );
  });
});
