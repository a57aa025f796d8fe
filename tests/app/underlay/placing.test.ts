import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  cornersOf,
  exchanged,
  inPicture,
  laidDown,
  liesUnder,
  onPlan,
  scaled,
  turnedTo,
} from "../../../app/underlay/placing.ts";
import { applyOps, distance, emptyGarden, type Point, type Underlay } from "../../../src/index.ts";

const PICTURE = "a".repeat(64);
const YARD = { minX: 0, minY: 0, maxX: 12_000, maxY: 9000 };
const laid = laidDown({ picture: PICTURE, pixels: [1600, 1000] }, [5000, 4000], YARD);
const near = ([x, y]: Point, [ex, ey]: Point) => {
  expect(x).toBeCloseTo(ex, 6);
  expect(y).toBeCloseTo(ey, 6);
};

describe("a picture beneath the plan", () => {
  it("is laid down about a place, as wide as the yard, and can be dragged", () => {
    expect(laid).toMatchObject({ at: [5000, 4000], turn: 0, mmPerPixel: 7.5, locked: false, data: null });
    near(onPlan(laid, [800, 500]), [5000, 4000]);
    near(onPlan(laid, [0, 0]), [5000 - 800 * 7.5, 4000 - 500 * 7.5]);
    expect(distance(cornersOf(laid)[0]!, cornersOf(laid)[1]!)).toBe(12_000);
    // A garden holds it as it is.
    const garden = applyOps(emptyGarden("us"), [{ op: "set-garden", changes: { underlay: laid } }]);
    expect(garden.underlay).toEqual(laid);
  });

  it("lies under its own ground alone, however it is turned", () => {
    const quarter: Underlay = { ...laid, turn: 90 };
    // 12 m by 7.5 m about [5000, 4000]; turned it is 7.5 m by 12 m.
    expect([liesUnder(laid, [10_900, 4000]), liesUnder(laid, [5000, 8000])]).toEqual([true, false]);
    expect([liesUnder(quarter, [10_900, 4000]), liesUnder(quarter, [5000, 8000])]).toEqual([false, true]);
  });

  it("is scaled so that two of its points are as far apart as was measured", () => {
    // 3-4-5: 500 px apart, and 20 ft on the ground.
    const points: readonly [Point, Point] = [
      [100, 200],
      [400, 600],
    ];
    const after = scaled(laid, points, 6096);
    expect(after.mmPerPixel).toBeCloseTo(6096 / 500, 12);
    expect(distance(onPlan(after, points[0]), onPlan(after, points[1]))).toBeCloseTo(6096, 6);
    near(onPlan(after, [250, 400]), onPlan(laid, [250, 400]));
  });

  it("is turned by the smaller of the two turns that lay a line level or upright", () => {
    const points: readonly [Point, Point] = [
      [100, 100],
      [400, 400],
    ];
    expect(turnedTo(laid, points, "level").turn).toBeCloseTo(-45, 9);
    expect(turnedTo(laid, points, "upright").turn).toBeCloseTo(45, 9);
    // The other way round the line is the same line.
    expect(turnedTo(laid, [points[1], points[0]], "level").turn).toBeCloseTo(-45, 9);
    expect(
      turnedTo(
        laid,
        [
          [100, 100],
          [900, 100],
        ],
        "level",
      ).turn,
    ).toBeCloseTo(0, 9);
  });

  it("is neither scaled nor turned by points that lie on each other", () => {
    const same: readonly [Point, Point] = [
      [100, 200],
      [103, 204],
    ];
    expect(() => scaled(laid, same, 1000)).toThrow(RangeError);
    expect(() => turnedTo(laid, same, "level")).toThrow(RangeError);
  });

  it("keeps its width and its place where another one takes it", () => {
    const other = exchanged(laid, { picture: "b".repeat(64), pixels: [800, 900] });
    expect(other).toMatchObject({ at: laid.at, pixels: [800, 900], mmPerPixel: 15, opacity: laid.opacity });
  });

  const pixel = fc.tuple(
    fc.double({ min: 0, max: 1600, noNaN: true }),
    fc.double({ min: 0, max: 1000, noNaN: true }),
  );
  const turn = fc.double({ min: -180, max: 180, noNaN: true });
  it("finds each point again, keeps the middle of its two points in place, and lays their line as asked", () => {
    fc.assert(
      fc.property(
        pixel,
        pixel,
        turn,
        fc.constantFrom("level" as const, "upright" as const),
        (a, b, turned, lie) => {
          fc.pre(distance(a, b) >= 10);
          const one: Underlay = { ...laid, turn: turned };
          const [backX, backY] = inPicture(one, onPlan(one, a));
          expect(Math.hypot(backX - a[0], backY - a[1])).toBeLessThan(1e-6);
          const after = scaled(turnedTo(one, [a, b], lie), [a, b], 5432.1);
          const [pa, pb] = [onPlan(after, a), onPlan(after, b)];
          const aside = lie === "level" ? pb[1] - pa[1] : pb[0] - pa[0];
          expect(Math.abs(aside)).toBeLessThan(1e-6);
          expect(distance(pa, pb)).toBeCloseTo(5432.1, 6);
          const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
          const [was, is] = [onPlan(one, middle), onPlan(after, middle)];
          expect(distance(was, is)).toBeLessThan(1e-6);
        },
      ),
      { seed: 5, numRuns: 300 },
    );
  });
});
