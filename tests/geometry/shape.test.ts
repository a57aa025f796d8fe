import { describe, expect, it } from "vitest";
import { ringArea, signedArea } from "../../src/geometry/ring.ts";
import { ROUND_CHORDS, shapeRing } from "../../src/geometry/shape.ts";
import { boundsOf, isSimple, type Shape } from "../../src/index.ts";

const rectangle: Shape = { type: "rectangle", width: 1200, length: 2500 };
const l: Shape = { type: "l", width: 2000, length: 1700, armWidth: 700, armLength: 600 };
const u: Shape = { type: "u", width: 2400, length: 1800, bayWidth: 900, bayLength: 1100 };
const oval: Shape = { type: "oval", width: 1400, length: 2200 };
const keyhole: Shape = { type: "keyhole", diameter: 1800, slotWidth: 450, middleDiameter: 620 };

describe("shapeRing", () => {
  it.each<[string, Shape, number]>([
    ["a rectangle", rectangle, 1200 * 2500],
    // Two arms that share their corner.
    ["an L", l, 700 * 1700 + 600 * 2000 - 700 * 600],
    // The whole less its bay.
    ["a U", u, 2400 * 1800 - 900 * 1100],
  ])("gives %s its area", (_name, shape, area) => {
    expect(signedArea(shapeRing(shape))).toBeCloseTo(area, 6);
  });

  it.each([rectangle, l, u, oval, keyhole])("draws a plain clockwise outline: $type", (shape) => {
    expect(isSimple(shapeRing(shape))).toBe(true);
    expect(signedArea(shapeRing(shape))).toBeGreaterThan(0);
  });

  it.each([rectangle, l, u, oval])("fills its width and length, about its middle: $type", (shape) => {
    const { minX, minY, maxX, maxY } = boundsOf(shapeRing(shape));
    expect([-minX, maxX, -minY, maxY]).toEqual([
      expect.closeTo(shape.width / 2, 6),
      expect.closeTo(shape.width / 2, 6),
      expect.closeTo(shape.length / 2, 6),
      expect.closeTo(shape.length / 2, 6),
    ]);
  });

  it("draws rounds with chords whose corners lie on the true round", () => {
    const ring = shapeRing(oval);
    expect(ring).toHaveLength(ROUND_CHORDS);
    for (const [x, y] of ring) expect((x / 700) ** 2 + (y / 1100) ** 2).toBeCloseTo(1, 12);
    // A polygon of n sides in an ellipse has n/2 a b sin(2 pi / n).
    const area = (ROUND_CHORDS / 2) * 700 * 1100 * Math.sin((2 * Math.PI) / ROUND_CHORDS);
    expect(ringArea(ring)).toBeCloseTo(area, 4);
  });

  it("opens a keyhole below, as wide as asked, to a round of the size asked", () => {
    const ring = shapeRing(keyhole);
    const outer = ring.filter(([x, y]) => Math.abs(Math.hypot(x, y) - 900) < 1e-6);
    const middle = ring.filter(([x, y]) => Math.abs(Math.hypot(x, y) - 310) < 1e-6);
    expect(outer.length + middle.length).toBe(ring.length);
    const below = (points: readonly (readonly [number, number])[]) =>
      points.filter(([x, y]) => y > 0 && Math.abs(Math.abs(x) - 225) < 1e-6);
    expect(below(outer)).toHaveLength(2);
    expect(below(middle)).toHaveLength(2);
  });

  it("takes a free outline as it is", () => {
    const points = [
      [0, 0],
      [700, 100],
      [300, 900],
    ] as const;
    expect(shapeRing({ type: "polygon", points })).toBe(points);
  });
});
