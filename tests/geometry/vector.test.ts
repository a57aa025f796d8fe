import { describe, expect, it } from "vitest";
import {
  cross,
  distance,
  dot,
  midpoint,
  placed,
  scale,
  turned,
  turnedAbout,
  unplaced,
} from "../../src/index.ts";

describe("vectors", () => {
  it("turn clockwise as seen, with y down: right turns to down", () => {
    expect(turned([300, 0], 90)).toEqual([0, 300]);
    expect(turned([300, 100], 180).map((n) => n + 0)).toEqual([-300, -100]);
    expect(turned([300, 100], -90).map((n) => n + 0)).toEqual([100, -300]);
    expect(turned([300, 100], 720)).toEqual([300, 100]);
  });

  it("turn by any angle about any point", () => {
    const [x, y] = turnedAbout([500, 200], [300, 200], 30);
    expect(x).toBeCloseTo(300 + 200 * Math.cos(Math.PI / 6), 9);
    expect(y).toBeCloseTo(300, 9);
  });

  it("are placed on the plan and taken back", () => {
    expect(placed([10, 20], [1000, 2000], 90)).toEqual([980, 2010]);
    const [x, y] = unplaced(placed([17, -23], [1400, 900], 41), [1400, 900], 41);
    expect(x).toBeCloseTo(17, 9);
    expect(y).toBeCloseTo(-23, 9);
  });

  it("have the usual products", () => {
    expect(dot([3, 4], [5, 7])).toBe(43);
    expect(cross([3, 4], [5, 7])).toBe(1);
    expect(distance([100, 200], [400, 600])).toBe(500);
    expect(midpoint([100, 200], [400, 700])).toEqual([250, 450]);
    expect(scale([3, -4], 2.5)).toEqual([7.5, -10]);
  });
});
