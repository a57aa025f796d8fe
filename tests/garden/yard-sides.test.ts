import { describe, expect, it } from "vitest";
import { insertCorner, type Ring, removeCorner, yardWithSide } from "../../src/index.ts";

const rectangle: Ring = [
  [0, 0],
  [9000, 0],
  [9000, 6000],
  [0, 6000],
];
/** An L: 9 m by 6 m less the lower right corner. */
const ell: Ring = [
  [0, 0],
  [9000, 0],
  [9000, 2500],
  [4000, 2500],
  [4000, 6000],
  [0, 6000],
];

describe("yardWithSide", () => {
  it("keeps a rectangle a rectangle", () => {
    expect(yardWithSide(rectangle, 0, 9500)).toEqual([
      [0, 0],
      [9500, 0],
      [9500, 6000],
      [0, 6000],
    ]);
    expect(yardWithSide(rectangle, 1, 5000)).toEqual([
      [0, 0],
      [9000, 0],
      [9000, 5000],
      [0, 5000],
    ]);
  });

  it("pushes from the side's start where it is the last one", () => {
    expect(yardWithSide(rectangle, 3, 6400)).toEqual([
      [0, -400],
      [9000, -400],
      [9000, 6000],
      [0, 6000],
    ]);
  });

  it("keeps an L's right angles, and lets the side across take up the change", () => {
    expect(yardWithSide(ell, 2, 4200)).toEqual([
      [0, 0],
      [9000, 0],
      [9000, 2500],
      [4800, 2500],
      [4800, 6000],
      [0, 6000],
    ]);
  });

  it("slides a corner that stands in the middle of a straight side", () => {
    const dotted = insertCorner(rectangle, 0, [4000, 0]);
    expect(yardWithSide(dotted, 0, 4700)[1]).toEqual([4700, 0]);
    expect(yardWithSide(dotted, 0, 4700).toSpliced(1, 1)).toEqual(rectangle);
  });

  it("moves the end corner alone where no side is parallel", () => {
    const triangle: Ring = [
      [0, 0],
      [3000, 0],
      [3000, 4000],
    ];
    expect(yardWithSide(triangle, 0, 3700)).toEqual([
      [0, 0],
      [3700, 0],
      [3000, 4000],
    ]);
  });

  it("gives every side the length asked for, whatever the outline", () => {
    const odd: Ring = [
      [0, 0],
      [7000, 500],
      [9500, 4100],
      [6000, 8000],
      [-700, 7300],
    ];
    for (const outline of [rectangle, ell, odd]) {
      for (let side = 0; side < outline.length; side++) {
        const next = (side + 1) % outline.length;
        const span = (ring: Ring) =>
          Math.hypot(ring[next]![0] - ring[side]![0], ring[next]![1] - ring[side]![1]);
        const asked = span(outline) + 333;
        expect(span(yardWithSide(outline, side, asked))).toBeCloseTo(asked, 6);
      }
    }
  });

  it("refuses no side, no length, and a length that makes sides cross", () => {
    expect(() => yardWithSide(rectangle, 4, 500)).toThrow(RangeError);
    expect(() => yardWithSide(rectangle, 0, 0)).toThrow(RangeError);
    expect(() => yardWithSide(rectangle, 0, Number.NaN)).toThrow(RangeError);
    expect(() => yardWithSide(ell, 2, 9500)).toThrow("would cross");
  });
});

describe("corners", () => {
  it("go in between two others and come out again", () => {
    const more = insertCorner(rectangle, 3, [-500, 3000]);
    expect(more).toHaveLength(5);
    expect(more[4]).toEqual([-500, 3000]);
    expect(removeCorner(more, 4)).toEqual(rectangle);
    expect(insertCorner(rectangle, 0, [4500, 0])[1]).toEqual([4500, 0]);
  });

  it("are refused where sides would cross, and a triangle keeps its three", () => {
    expect(() => insertCorner(rectangle, 0, [4000, 8000])).toThrow(RangeError);
    expect(() => insertCorner(rectangle, 4, [1, 1])).toThrow(RangeError);
    expect(() => removeCorner(rectangle.slice(0, 3), 1)).toThrow("keeps three corners");
    expect(() => removeCorner(rectangle, 4)).toThrow(RangeError);
  });
});
