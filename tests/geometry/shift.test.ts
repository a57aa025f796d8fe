import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { intersection } from "../../src/geometry/clip.ts";
import { convexHull, convexSum, isConvex } from "../../src/geometry/convex.ts";
import { ringArea, signedArea } from "../../src/geometry/ring.ts";
import { type Shape, shapeRing } from "../../src/geometry/shape.ts";
import { blockedShifts, nearestShift, overlapOf, shiftsWithin } from "../../src/geometry/shift.ts";
import type { Point, Ring } from "../../src/geometry/types.ts";
import { add, placed } from "../../src/geometry/vector.ts";

const box = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const moved = (ring: Ring, by: Point): Ring => ring.map((corner) => add(corner, by));
const sharedMm2 = (a: Ring, b: Ring) => intersection([a], [b]).reduce((sum, ring) => sum + ringArea(ring), 0);

describe("overlapOf", () => {
  it("is the shortest way apart", () => {
    expect(overlapOf(box(0, 0, 1200, 2500), box(1100, 400, 900, 700))).toEqual({ depth: 100, by: [-100, 0] });
    expect(overlapOf(box(1100, 400, 900, 700), box(0, 0, 1200, 2500))).toEqual({ depth: 100, by: [100, 0] });
  });

  it("is nothing where outlines touch or stand apart", () => {
    expect(overlapOf(box(0, 0, 1200, 2500), box(1200, 400, 900, 700))).toBeNull();
    expect(overlapOf(box(0, 0, 1200, 2500), box(1300, 400, 900, 700))).toBeNull();
  });

  it("counts the way out of a thing that lies wholly inside another", () => {
    expect(overlapOf(box(500, 300, 200, 100), box(0, 0, 3000, 1000))?.depth).toBeCloseTo(400, 6);
  });

  it("lets a bed stand in the bay of a U, and parts it from an arm by the shorter way", () => {
    const u = shapeRing({ type: "u", width: 2400, length: 1800, bayWidth: 900, bayLength: 1200 });
    expect(overlapOf(box(-300, -200, 600, 700), u)).toBeNull();
    expect(overlapOf(box(-480, -200, 600, 700), u)).toEqual({ depth: 30, by: [30, 0] });
  });

  const shape = fc.oneof(
    fc.record({ type: fc.constant("rectangle" as const), width: size(), length: size() }),
    fc.record({ type: fc.constant("oval" as const), width: size(), length: size() }),
    size().map(
      (width): Shape => ({
        type: "l",
        width,
        length: width * 1.3,
        armWidth: width / 3,
        armLength: width / 4,
      }),
    ),
    size().map(
      (width): Shape => ({
        type: "u",
        width,
        length: width * 0.9,
        bayWidth: width / 2,
        bayLength: width / 3,
      }),
    ),
  );
  function size() {
    return fc.integer({ min: 300, max: 2500 });
  }
  const standing = fc
    .tuple(
      shape,
      fc.integer({ min: -900, max: 900 }),
      fc.integer({ min: -900, max: 900 }),
      fc.integer({ min: 0, max: 359 }),
    )
    .map(([drawn, x, y, turn]) => shapeRing(drawn).map((corner) => placed(corner, [x, y], turn)));

  it("parts any two outlines, and no shorter shift that was tried does", () => {
    fc.assert(
      fc.property(standing, standing, (a, b) => {
        const overlap = overlapOf(a, b);
        // Clipping works in whole micrometres: along sides of some metres that leaves a few mm².
        const none = 20;
        if (!overlap) {
          expect(sharedMm2(a, b)).toBeLessThan(none);
          return;
        }
        expect(sharedMm2(moved(a, overlap.by), b)).toBeLessThan(none);
        for (let degrees = 0; degrees < 360; degrees += 15) {
          const shorter = 0.98 * overlap.depth - 1;
          if (shorter <= 0) continue;
          const angle = (degrees * Math.PI) / 180;
          const tried = moved(a, [shorter * Math.cos(angle), shorter * Math.sin(angle)]);
          expect(sharedMm2(tried, b), `${degrees} degrees`).toBeGreaterThan(0);
        }
      }),
      { numRuns: 400, seed: 41 },
    );
  });
});

describe("nearestShift", () => {
  const bed = box(0, 0, 1000, 2000);

  it("is no shift at all where nothing is in the way", () => {
    expect(nearestShift([blockedShifts(bed, box(1500, 0, 700, 900))], null)).toEqual([0, 0]);
  });

  it("goes round a second thing when the first alone would push it there", () => {
    // 200 to the left would clear the first, but the second stands there.
    const first = blockedShifts(bed, box(800, 500, 600, 700));
    const second = blockedShifts(bed, box(-650, -3000, 600, 9000));
    const by = nearestShift([first, second], null);
    // Down 1200 is shorter than right 1400 and up 1500.
    expect(by).toEqual([0, 1200]);
  });

  it("brings a thing back into the yard by the shortest way", () => {
    const yard = box(300, -100, 6000, 5000);
    expect(nearestShift([], shiftsWithin(bed, yard, 9000))).toEqual([300, 0]);
  });

  it("fits a thing into a yard with a notch", () => {
    const yard: Ring = [
      [0, 0],
      [5000, 0],
      [5000, 1500],
      [3000, 1500],
      [3000, 4000],
      [0, 4000],
    ];
    // In the notch it would have to go up 500 or left 350.
    expect(nearestShift([], shiftsWithin(moved(bed, [2350, 0]), yard, 9000))).toEqual([-350, 0]);
  });

  it("is null where no shift will do, or none short enough", () => {
    expect(nearestShift([], shiftsWithin(bed, box(0, 0, 900, 9000), 9000))).toBeNull();
    const within = shiftsWithin(bed, box(300, -100, 6000, 5000), 250);
    expect(nearestShift([], within)).toBeNull();
  });
});

describe("convex outlines", () => {
  it("know themselves, corners along a side included", () => {
    expect(isConvex(box(3, 5, 70, 90))).toBe(true);
    expect(
      isConvex([
        [0, 0],
        [50, 0],
        [100, 0],
        [100, 70],
        [0, 70],
      ]),
    ).toBe(true);
    expect(isConvex(shapeRing({ type: "oval", width: 700, length: 900 }))).toBe(true);
    expect(isConvex(shapeRing({ type: "l", width: 9, length: 8, armWidth: 3, armLength: 2 }))).toBe(false);
  });

  it("add up to an outline as wide and as high as both together", () => {
    expect(convexSum(box(0, 0, 30, 50), box(100, 200, 7, 11))).toEqual(box(100, 200, 37, 61));
    // A 4 by 3 rectangle and a 4-4-3 right triangle: both areas, and the rectangle's sides swept by the triangle's.
    const sum = convexSum(box(0, 0, 4, 3), [
      [0, 0],
      [4, 0],
      [0, 3],
    ]);
    expect(isConvex(sum)).toBe(true);
    expect(signedArea(sum)).toBeCloseTo(12 + 6 + 4 * 3 + 4 * 3, 9);
  });

  it("go round points", () => {
    expect(
      convexHull([
        [0, 0],
        [4, 4],
        [8, 0],
        [4, 1],
        [8, 6],
        [0, 6],
      ]),
    ).toEqual([
      [0, 0],
      [8, 0],
      [8, 6],
      [0, 6],
    ]);
  });
});
