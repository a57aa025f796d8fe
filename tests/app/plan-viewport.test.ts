import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitted, pannedBy, toPlan, toScreen, zoomedAbout } from "../../app/plan/viewport.ts";
import type { Point } from "../../src/index.ts";

const view = { x: -1200, y: 700, scale: 0.08 };
const px = fc.double({ min: -4000, max: 4000, noNaN: true });

const near = (actual: Point, expected: Point, within: number) => {
  expect(Math.abs(actual[0] - expected[0])).toBeLessThan(within);
  expect(Math.abs(actual[1] - expected[1])).toBeLessThan(within);
};

describe("the viewport", () => {
  it("shows its own corner at the upper left of the element", () => {
    expect(toScreen(view, [-1200, 700])).toEqual([0, 0]);
    expect(toScreen(view, [-200, 2700])).toEqual([80, 160]);
  });

  it("finds a pixel's place on the plan again", () => {
    fc.assert(
      fc.property(px, px, (x, y) => {
        near(toScreen(view, toPlan(view, [x, y])), [x, y], 1e-9);
      }),
    );
  });

  it("keeps what lies under the pointer there while zooming, whatever the factor", () => {
    const factor = fc.double({ min: 0.001, max: 1000, noNaN: true });
    fc.assert(
      fc.property(px, px, factor, (x, y, by) => {
        const under = toPlan(view, [x, y]);
        near(toScreen(zoomedAbout(view, [x, y], by), under), [x, y], 1e-6);
      }),
    );
  });

  it("stops at a 1 km yard on a phone and at a saw cut on a large screen", () => {
    expect(zoomedAbout(view, [0, 0], 1e-9).scale).toBe(0.002);
    expect(zoomedAbout(view, [0, 0], 1e9).scale).toBe(4);
  });

  it("carries the paper along with the hand", () => {
    const carried = pannedBy(view, [30, -50]);
    near(toScreen(carried, [-1200, 700]), [30, -50], 1e-9);
  });

  it("fits a box whole, in the middle, with its margin on the tighter side", () => {
    const fit = fitted({ minX: 1000, minY: 500, maxX: 9000, maxY: 2500 }, 900, 700, 50);
    expect(fit.scale).toBe(0.1);
    near(toScreen(fit, [1000, 1500]), [50, 350], 1e-9);
    near(toScreen(fit, [9000, 1500]), [850, 350], 1e-9);
  });
});
