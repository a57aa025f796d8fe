import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { farthestFrom, isAnyFarther } from "../../src/geometry/farthest.ts";
import type { Point, Ring } from "../../src/index.ts";

const mm = fc.integer({ min: 0, max: 2500 });
const point: fc.Arbitrary<Point> = fc.tuple(mm, mm);
const lines = fc.array(fc.tuple(point, point), { minLength: 1, maxLength: 6 });
const bed = (width: number, length: number): Ring => [
  [0, 0],
  [width, 0],
  [width, length],
  [0, length],
];

/** Both searches are exact to 0.1 mm. */
const EXACT_TO = 0.1;

describe("whether anything is farther", () => {
  it("is told of a bed reached from one side as it can be worked out by hand", () => {
    const oneSide: Point[][] = [
      [
        [0, 0],
        [0, 2400],
      ],
    ];
    expect(isAnyFarther([bed(1200, 2400)], oneSide, 1199)).toBe(true);
    expect(isAnyFarther([bed(1200, 2400)], oneSide, 1201)).toBe(false);
  });

  it("is so where there is nowhere to be, and is not where there is no ground", () => {
    expect(isAnyFarther([bed(1200, 2400)], [], 9999)).toBe(true);
    expect(isAnyFarther([], [], 0)).toBe(false);
  });

  it("agrees with how far the farthest is, whatever is asked", () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 2500 }), mm, lines, mm, (width, length, some, than) => {
        const ground = [bed(width, length + 300)];
        const { distance } = farthestFrom(ground, some)!;
        if (Math.abs(distance - than) <= 2 * EXACT_TO) return;
        expect(isAnyFarther(ground, some, than)).toBe(distance > than);
      }),
      { seed: 7, numRuns: 400 },
    );
  });
});
