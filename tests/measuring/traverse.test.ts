import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Leg, legsOf, traverse } from "../../src/index.ts";

const FOOT = 304.8;

/** Degrees, minutes, seconds. */
const dms = (degrees: number, minutes: number, seconds: number) => degrees + minutes / 60 + seconds / 3600;

/** Sides by azimuth, as surveyors write them, as sides with the turns between. */
const legsByAzimuth = (sides: readonly (readonly [azimuth: number, feet: number])[]): Leg[] =>
  sides.map(([azimuth, feet], i) => {
    const turn = sides[(i + 1) % sides.length]![0] - azimuth;
    return { length: feet * FOOT, turn: turn - 360 * Math.round(turn / 360) };
  });

// The five-sided traverse worked through in C. D. Ghilani and P. R. Wolf, Elementary Surveying, chapter 10 (figures from
// memory): preliminary azimuths and lengths, sums of departures and latitudes 0.026 and 0.077 ft, closure 0.08 ft in
// 2,466 ft or 1 in 30,000; balanced departures and latitudes of the first side 517.444 and -388.835 ft.
const SIDES = [
  [dms(126, 55, 17), 647.25],
  [dms(178, 18, 58), 203.03],
  [dms(15, 31, 54), 720.35],
  [dms(284, 35, 20), 610.24],
  [dms(206, 9, 41), 285.13],
] as const;

describe("a traverse", () => {
  const legs = legsByAzimuth(SIDES);
  const walked = traverse(legs, [0, 0], SIDES[0][0]);

  it("misses its start by what the handbook's worked example does", () => {
    expect(walked.misclosure[0] / FOOT).toBeCloseTo(0.026, 2);
    // Latitudes run up the plan, y down it.
    expect(-walked.misclosure[1] / FOOT).toBeCloseTo(0.077, 2);
    expect(walked.gap / FOOT).toBeCloseTo(0.08, 2);
    expect(walked.perimeter / FOOT).toBeCloseTo(2466, 2);
    expect(walked.perimeter / walked.gap).toBeGreaterThan(28_000);
    expect(walked.perimeter / walked.gap).toBeLessThan(32_000);
  });

  it("is closed by the compass rule as the example is", () => {
    const [a, b] = walked.closed;
    expect((b![0] - a![0]) / FOOT).toBeCloseTo(517.444, 2);
    expect(-(b![1] - a![1]) / FOOT).toBeCloseTo(-388.835, 2);
  });

  it("gives any outline back from its own sides and turns", () => {
    const coordinate = fc.integer({ min: 1000, max: 20_000 });
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        coordinate,
        fc.integer({ min: -40, max: 40 }),
        (w, h, cut, slant) => {
          const ring = [
            [0, 0],
            [w, slant],
            [w, h],
            [w / 2 + cut / 100, h],
            [w / 2, h / 2],
            [0, h],
          ] as const;
          const { heading, legs: own } = legsOf(ring);
          const again = traverse(own, ring[0], heading);
          expect(again.gap).toBeLessThan(1e-6);
          expect(Math.abs(again.turnError)).toBeLessThan(1e-9);
          for (const [i, corner] of again.closed.entries()) {
            expect(Math.hypot(corner[0] - ring[i]![0], corner[1] - ring[i]![1])).toBeLessThan(1e-6);
          }
        },
      ),
      { seed: 11, numRuns: 200 },
    );
  });

  it("shares an error of the turns alike among the corners", () => {
    // A 10 by 6 m yard whose four square corners were each read a degree short.
    const square = [10_000, 6000, 10_000, 6000].map((length) => ({ length, turn: 89 }));
    const { turnError, gap, closed } = traverse(square, [0, 0], 90);
    expect(turnError).toBeCloseTo(-4, 9);
    expect(gap).toBeGreaterThan(200);
    const corners = [
      [0, 0],
      [10_000, 0],
      [10_000, 6000],
      [0, 6000],
    ] as const;
    for (const [i, [x, y]] of corners.entries()) {
      expect(closed[i]![0]).toBeCloseTo(x, 6);
      expect(closed[i]![1]).toBeCloseTo(y, 6);
    }
  });

  it("may be walked either way round", () => {
    const square = [10_000, 6000, 10_000, 6000].map((length) => ({ length, turn: -90 }));
    expect(traverse(square, [0, 0], 90).closed[1]![0]).toBeCloseTo(10_000, 6);
    expect(traverse(square, [0, 0], 90).closed[2]![1]).toBeCloseTo(-6000, 6);
  });

  it.each([
    ["two sides", [1, 2].map(() => ({ length: 900, turn: 180 })), /three sides/],
    ["a side of nothing", [0, 1, 1].map((length) => ({ length, turn: 120 })), /side 1/],
    ["a corner left out", [1000, 1000, 1000].map((length) => ({ length, turn: 90 })), /add up to 270°/],
    [
      "a side that crosses another",
      [
        { length: 4000, turn: 150 },
        { length: 4000, turn: -150 },
        { length: 4000, turn: 150 },
        { length: 4000, turn: 210 },
      ],
      /crosses itself/,
    ],
  ])("is refused for %s", (_name, bad, message) => {
    expect(() => traverse(bad, [0, 0], 0)).toThrow(message);
  });
});
