import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gapBetween, liesWithin, overlaps } from "../../src/geometry/gap.ts";
import { shapeRing } from "../../src/geometry/shape.ts";
import type { Point, Ring } from "../../src/geometry/types.ts";
import { placed, turnedAbout } from "../../src/geometry/vector.ts";
import { outlineOf } from "../../src/index.ts";
import { distanceByJsts } from "../helpers/jsts-reference.ts";
import { seeded, someBed } from "../helpers/scenes.ts";

const box = (x: number, y: number, w: number, h: number): Ring => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const turnedBy = (ring: Ring, degrees: number): Ring => ring.map((p) => turnedAbout(p, [300, 700], degrees));

describe("gapBetween", () => {
  it("measures straight across between facing sides", () => {
    expect(gapBetween(box(0, 0, 1200, 2500), box(1810, 300, 900, 700)).width).toBe(610);
  });

  it("measures corner to corner where no sides face (3-4-5)", () => {
    const { width, from, to } = gapBetween(box(0, 0, 1200, 2500), box(1500, 2900, 900, 700));
    expect({ width, from, to }).toEqual({ width: 500, from: [1200, 2500], to: [1500, 2900] });
  });

  it("finds a corner that points at the middle of a side, whichever ring comes first", () => {
    const wall: Ring = [
      [0, 0],
      [8000, 0],
    ];
    const turnedBed: Ring = [
      [3000, 250],
      [3500, 750],
      [3000, 1250],
      [2500, 750],
    ];
    expect(gapBetween(wall, turnedBed)).toEqual({ width: 250, from: [3000, 0], to: [3000, 250] });
    expect(gapBetween(turnedBed, wall)).toEqual({ width: 250, from: [3000, 250], to: [3000, 0] });
  });

  it("stays exactly 914.4 mm between two rows when the whole plan is turned", () => {
    for (const degrees of [0, 17, 45, 90, 123.4]) {
      const [left, right] = [box(0, 0, 1200, 2500), box(2114.4, 0, 900, 2500)].map((r) =>
        turnedBy(r, degrees),
      );
      expect(gapBetween(left!, right!).width).toBeCloseTo(914.4, 9);
    }
  });

  it("is zero where outlines touch along a side, at a corner, or with a corner on a side after a turn", () => {
    expect(gapBetween(box(0, 0, 1200, 2500), box(1200, 900, 300, 700)).width).toBe(0);
    expect(gapBetween(box(0, 0, 1200, 2500), box(1200, 2500, 300, 700)).width).toBe(0);
    const side = box(0, 0, 1200, 2500);
    const tip: Ring = [
      [1200, 800],
      [1700, 1100],
      [1900, 500],
    ];
    expect(gapBetween(turnedBy(side, 31), turnedBy(tip, 31)).width).toBe(0);
  });

  it("is zero where outlines overlap: crossing, one in the other, twins, and a cross without a corner inside", () => {
    const bed = box(0, 0, 1200, 2500);
    expect(gapBetween(bed, box(1000, 2000, 900, 700)).width).toBe(0);
    expect(gapBetween(bed, box(300, 500, 200, 100)).width).toBe(0);
    expect(gapBetween(box(300, 500, 200, 100), bed).width).toBe(0);
    expect(gapBetween(bed, box(0, 0, 1200, 2500)).width).toBe(0);
    expect(gapBetween(bed, box(-400, 1000, 2000, 300)).width).toBe(0);
  });

  it("gives a place on both outlines even where they overlap", () => {
    const { from, to } = gapBetween(box(0, 0, 1200, 2500), box(1000, 2000, 900, 700));
    expect(from).toEqual(to);
  });

  it("survives a corner drawn twice and a single point", () => {
    const stuttering: Ring = [
      [0, 0],
      [0, 0],
      [0, 70],
    ];
    expect(gapBetween(stuttering, [[20, 30]]).width).toBe(20);
  });

  it("tells a hair's breadth from touching: a nanometre is noise, a hundredth of a millimetre is a gap", () => {
    expect(gapBetween(box(0, 0, 1200, 2500), box(1200 + 1e-9, 0, 900, 2500)).width).toBe(0);
    expect(gapBetween(box(0, 0, 1200, 2500), box(1200.01, 0, 900, 2500)).width).toBeCloseTo(0.01, 9);
  });

  it("refuses a ring without points", () => {
    expect(() => gapBetween([], box(0, 0, 1200, 2500))).toThrow(RangeError);
  });

  // Reference: JSTS 2.12.1 DistanceOp, the JavaScript edition of the JTS Topology Suite.
  it("agrees with JSTS on 600 pairs of beds of every shape, turned freely", () => {
    const random = seeded(2207);
    for (let i = 0; i < 600; i++) {
      const spot = (): Point => [random() * 6000, random() * 6000];
      const [a, b] = [outlineOf(someBed("a", random, spot())), outlineOf(someBed("b", random, spot()))];
      expect(gapBetween(a, b).width, `pair ${i}`).toBeCloseTo(distanceByJsts(a, b), 6);
    }
  });

  const mm = fc.integer({ min: 1, max: 9000 });
  const rightOfLine = fc.array(fc.tuple(mm, mm), { minLength: 1, maxLength: 8 });
  const leftOfLine = rightOfLine.map((ring) => ring.map(([x, y]): Point => [-x, y]));
  it("is never wider than the distance between any two points along the outlines, and its ends are that far apart", () => {
    fc.assert(
      fc.property(leftOfLine, rightOfLine, (a, b) => {
        const { width, from, to } = gapBetween(a, b);
        expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(width, 6);
        for (const p of pointsAlong(a)) {
          for (const q of pointsAlong(b)) {
            expect(width).toBeLessThanOrEqual(Math.hypot(p[0] - q[0], p[1] - q[1]) + 1e-6);
          }
        }
      }),
      { seed: 71, numRuns: 150 },
    );
  });
});

describe("overlaps", () => {
  const bed = box(0, 0, 1200, 2500);
  it("holds for crossing rings, a ring in another, a cross, and twins", () => {
    for (const other of [
      box(1000, 2000, 900, 700),
      box(300, 500, 200, 100),
      box(-400, 1000, 2000, 300),
      box(0, 0, 1200, 2500),
      box(0, 0, 1200, 900),
    ]) {
      expect(overlaps(bed, other)).toBe(true);
      expect(overlaps(other, bed)).toBe(true);
    }
  });

  it("does not hold for rings that touch along a side, at a corner, or fill each other's bay", () => {
    expect(overlaps(bed, box(1200, 0, 900, 2500))).toBe(false);
    expect(overlaps(bed, box(1200, 2500, 900, 700))).toBe(false);
    const u = shapeRing({ type: "u", width: 2400, length: 1800, bayWidth: 900, bayLength: 1200 });
    const plug = box(-450, -300, 900, 1200);
    expect(overlaps(u, plug)).toBe(false);
    expect(overlaps(plug, u)).toBe(false);
  });
});

describe("liesWithin", () => {
  const yard = box(0, 0, 9000, 7000);
  it("holds inside and where the outline is touched, not across it or outside", () => {
    expect(liesWithin(box(100, 200, 1200, 2500), yard)).toBe(true);
    expect(liesWithin(box(0, 200, 1200, 2500), yard)).toBe(true);
    expect(liesWithin(box(-10, 200, 1200, 2500), yard)).toBe(false);
    expect(liesWithin(box(9100, 200, 1200, 2500), yard)).toBe(false);
  });

  it("sees a bed that fills a notch of the yard from outside", () => {
    const notched: Ring = [
      [0, 0],
      [9000, 0],
      [9000, 3000],
      [8000, 3000],
      [8000, 4000],
      [9000, 4000],
      [9000, 7000],
      [0, 7000],
    ];
    expect(liesWithin(box(8000, 3000, 1000, 1000), notched)).toBe(false);
    expect(
      liesWithin(
        box(7000, 3000, 1000, 1000).map((p) => placed(p, [0, 0], 0)),
        notched,
      ),
    ).toBe(true);
  });
});

function pointsAlong(ring: Ring): Point[] {
  return ring.flatMap(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    return [0, 0.2, 0.5, 0.9].map((t): Point => [ax + t * (bx - ax), ay + t * (by - ay)]);
  });
}
