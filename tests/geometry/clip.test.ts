import { describe, expect, it } from "vitest";
import { difference, intersection, offset, regionsOf, thickened, union } from "../../src/geometry/clip.ts";
import { ringArea, signedArea } from "../../src/geometry/ring.ts";
import { boundsOf, contains, type Ring } from "../../src/index.ts";

const box = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const total = (rings: readonly Ring[]) => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

const bed = box(0, 0, 1200, 2500);
const patch = box(900, 2000, 700, 900);

describe("clip", () => {
  it("keeps the parts to the whole", () => {
    const shared = 300 * 500;
    expect(total(intersection([bed], [patch]))).toBe(shared);
    expect(total(difference([bed], [patch]))).toBe(1200 * 2500 - shared);
    expect(total(union([bed, patch]))).toBe(1200 * 2500 + 700 * 900 - shared);
  });

  it("gives outer rings clockwise and holes the other way round", () => {
    const [outer, hole] = difference([bed], [box(300, 400, 500, 600)]).toSorted(
      (a, b) => ringArea(b) - ringArea(a),
    );
    expect(signedArea(outer!)).toBe(1200 * 2500);
    expect(signedArea(hole!)).toBe(-500 * 600);
  });

  it("sorts holes into the rings they lie in", () => {
    const apart = box(5000, 0, 800, 900);
    const lake = box(300, 400, 500, 600).toReversed();
    const regions = regionsOf([apart, bed, lake], contains);
    expect(regions).toEqual([
      { outer: apart, holes: [] },
      { outer: bed, holes: [lake] },
    ]);
  });

  it("offsets with pointed corners to the exact box", () => {
    expect(boundsOf(offset([bed], -38, "mitred")[0]!)).toEqual({
      minX: 38,
      minY: 38,
      maxX: 1162,
      maxY: 2462,
    });
    expect(total(offset([bed], 300, "mitred"))).toBe(1800 * 3100);
  });

  it("offsets with round corners to area, sides and a full round", () => {
    const exact = 1200 * 2500 + 300 * 2 * (1200 + 2500) + Math.PI * 300 ** 2;
    // Chords lie at most 0.05 mm inside the arc: over its 1885 mm that is under 100 mm².
    expect(Math.abs(total(offset([bed], 300, "round")) - exact)).toBeLessThan(100);
  });

  it("leaves nothing of what is thinner than twice the inset", () => {
    expect(offset([bed], -601, "mitred")).toEqual([]);
  });

  it("thickens a line with square ends to its length times its width", () => {
    const line = [
      [0, 0],
      [3000, 4000],
    ] as const;
    expect(total(thickened(line, 50, "butt"))).toBeCloseTo(5000 * 50, -2);
    expect(Math.abs(total(thickened(line, 800, "round")) - (5000 * 800 + Math.PI * 400 ** 2))).toBeLessThan(
      300,
    );
  });
});
