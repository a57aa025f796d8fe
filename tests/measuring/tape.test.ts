import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { placesByTape, TapeError } from "../../src/index.ts";

const at = (x: number, y: number) => [x, y] as const;

describe("a place by two tapes", () => {
  it("is the corner of a 3-4-5 triangle, on either side", () => {
    // From (0, 0) and (5 m, 0), 3 m and 4 m away: Euclid I.47, the builder's square.
    const [left, right] = placesByTape({ from: at(0, 0), length: 3000 }, { from: at(5000, 0), length: 4000 });
    expect(left[0]).toBeCloseTo(1800, 9);
    expect(left[1]).toBeCloseTo(-2400, 9);
    expect(right[0]).toBeCloseTo(1800, 9);
    expect(right[1]).toBeCloseTo(2400, 9);
  });

  it("is as far from both points as was measured, wherever they are", () => {
    const metre = fc.integer({ min: -20_000, max: 20_000 });
    fc.assert(
      fc.property(metre, metre, metre, metre, metre, metre, (ax, ay, bx, by, px, py) => {
        const [a, b, p] = [at(ax, ay), at(bx, by), at(px, py)];
        const apart = (u: readonly [number, number], v: readonly [number, number]) =>
          Math.hypot(u[0] - v[0], u[1] - v[1]);
        fc.pre(apart(a, b) > 1 && apart(a, p) > 0 && apart(b, p) > 0);
        const places = placesByTape({ from: a, length: apart(a, p) }, { from: b, length: apart(b, p) });
        for (const place of places) {
          // Where the point lies almost on the line, a hair along it is much aside: the tape says it no better.
          expect(Math.abs(apart(place, a) - apart(p, a))).toBeLessThan(0.01);
          expect(Math.abs(apart(place, b) - apart(p, b))).toBeLessThan(0.01);
        }
        const nearest = Math.min(...places.map((place) => apart(place, p)));
        expect(nearest).toBeLessThan(0.1);
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it("lies on the line itself where the tapes just meet", () => {
    const places = placesByTape({ from: at(0, 0), length: 2000 }, { from: at(5000, 0), length: 3000 });
    expect(places).toEqual([at(2000, 0), at(2000, 0)]);
    // A third of a millimetre short is nobody's mistake.
    expect(() =>
      placesByTape({ from: at(0, 0), length: 2000 }, { from: at(5000, 0), length: 2999.7 }),
    ).not.toThrow();
  });

  it("says by how much an impossible pair misses", () => {
    const refused = (a: number, b: number) => {
      try {
        placesByTape({ from: at(0, 0), length: a }, { from: at(5000, 0), length: b });
      } catch (error) {
        if (error instanceof TapeError) return error.gap;
        throw error;
      }
      return null;
    };
    expect(refused(1900, 3000)).toBeCloseTo(100, 9);
    expect(refused(9000, 3900)).toBeCloseTo(100, 9);
    expect(refused(3900, 9000)).toBeCloseTo(100, 9);
    expect(refused(3000, 4000)).toBeNull();
  });

  it("needs two points and two lengths", () => {
    const tape = { from: at(100, 100), length: 500 };
    expect(() => placesByTape(tape, tape)).toThrow(RangeError);
    expect(() => placesByTape(tape, { from: at(0, 0), length: 0 })).toThrow(RangeError);
  });
});
