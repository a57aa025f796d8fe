import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { perimeter, ringArea } from "../../src/geometry/ring.ts";
import {
  boundsOf,
  centroid,
  clockwise,
  contains,
  type Point,
  type Ring,
  signedArea,
  turnedAbout,
} from "../../src/index.ts";

const box: Ring = [
  [100, 200],
  [1300, 200],
  [1300, 2700],
  [100, 2700],
];
/** 9 by 3 and 4 by 5: 47 in all. */
const ell: Ring = [
  [0, 0],
  [9, 0],
  [9, 3],
  [4, 3],
  [4, 8],
  [0, 8],
];

describe("rings", () => {
  it("have an area, positive where they run clockwise as seen", () => {
    expect(signedArea(box)).toBe(3_000_000);
    expect(signedArea(box.toReversed())).toBe(-3_000_000);
    expect(ringArea(ell.toReversed())).toBe(47);
    expect(signedArea([])).toBe(0);
  });

  it("are made clockwise", () => {
    expect(clockwise(box)).toBe(box);
    expect(signedArea(clockwise(box.toReversed()))).toBe(3_000_000);
  });

  it("have a perimeter and bounds", () => {
    expect(perimeter(box)).toBe(7400);
    expect(perimeter(ell)).toBe(34);
    expect(boundsOf(ell)).toEqual({ minX: 0, minY: 0, maxX: 9, maxY: 8 });
    expect(() => boundsOf([])).toThrow(RangeError);
  });

  it("have a centre of their area", () => {
    expect(centroid(box)).toEqual([700, 1450]);
    // (27 (4.5, 1.5) + 20 (2, 5.5)) / 47
    expect(centroid(ell)[0]).toBeCloseTo(161.5 / 47, 12);
    expect(centroid(ell)[1]).toBeCloseTo(150.5 / 47, 12);
    expect(
      centroid([
        [3, 5],
        [7, 9],
      ]),
    ).toEqual([5, 7]);
    expect(() => centroid([])).toThrow(RangeError);
  });

  it("contain the points inside them", () => {
    expect(contains(ell, [2, 7])).toBe(true);
    expect(contains(ell, [8, 2])).toBe(true);
    expect(contains(ell, [6, 5])).toBe(false);
    expect(contains(ell, [-1, 4])).toBe(false);
  });

  it("keep area and perimeter, and carry their centre along, however they are turned", () => {
    const mm = fc.integer({ min: -9000, max: 9000 });
    fc.assert(
      fc.property(mm, mm, fc.double({ min: -720, max: 720, noNaN: true }), (x, y, degrees) => {
        const turned = ell.map((corner) => turnedAbout(corner, [x, y], degrees));
        expect(signedArea(turned)).toBeCloseTo(47, 4);
        expect(perimeter(turned)).toBeCloseTo(34, 6);
        const [cx, cy] = turnedAbout(centroid(ell), [x, y], degrees);
        const centre: Point = centroid(turned);
        expect(centre[0]).toBeCloseTo(cx, 4);
        expect(centre[1]).toBeCloseTo(cy, 4);
      }),
      { seed: 41, numRuns: 200 },
    );
  });
});
