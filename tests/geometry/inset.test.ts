import { describe, expect, it } from "vitest";
import { difference, offset } from "../../src/geometry/clip.ts";
import { plainInset } from "../../src/geometry/inset.ts";
import { signedArea } from "../../src/geometry/ring.ts";
import { shapeRing } from "../../src/geometry/shape.ts";
import { type Ring, turned } from "../../src/index.ts";
import { seeded } from "../helpers/scenes.ts";

const areaOf = (rings: readonly Ring[]) => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

describe("a ring drawn in", () => {
  it("is the smaller rectangle of a rectangle", () => {
    const ring = plainInset(shapeRing({ type: "rectangle", width: 1500, length: 2400 }), 600)?.ring;
    expect(ring).toEqual([
      [-150, -600],
      [150, -600],
      [150, 600],
      [-150, 600],
    ]);
  });

  it("runs on an arc about an inward corner: an L less its margin, by area", () => {
    const l = shapeRing({ type: "l", width: 3000, length: 2700, armWidth: 1300, armLength: 1250 });
    const ring = plainInset(l, 600)?.ring;
    // Strips 100 and 50 wide from the two ends to the corner, and there the square less a quarter of a round.
    const [across, down] = [1300 - 1200, 1250 - 1200];
    const arms = across * (2700 - 1250 - 600) + down * (3000 - 1300 - 600);
    const corner = (600 + across) * (600 + down) - (Math.PI * 600 ** 2) / 4;
    expect(ring && signedArea(ring)).toBeGreaterThan(arms + corner);
    // Chords lie within 0.05 mm of the arc, which is 942 mm long.
    expect(ring && signedArea(ring)).toBeLessThan(arms + corner + 0.05 * 942);
  });

  it("is not plain where a side vanishes, where nothing is left, and where the outline falls in two", () => {
    expect(plainInset(shapeRing({ type: "rectangle", width: 1100, length: 2400 }), 600)).toBeNull();
    const waist: Ring = [
      [0, 0],
      [2000, 0],
      [2000, 900],
      [5000, 900],
      [5000, 0],
      [7000, 0],
      [7000, 2000],
      [0, 2000],
    ];
    expect(plainInset(waist, 600)).toBeNull();
    expect(plainInset(waist, 500)).not.toBeNull();
  });

  it("gives up on a corner drawn twice and on a side that runs back on itself", () => {
    expect(
      plainInset(
        [
          [0, 0],
          [0, 0],
          [900, 0],
          [900, 700],
        ],
        50,
      ),
    ).toBeNull();
    expect(
      plainInset(
        [
          [0, 0],
          [900, 0],
          [400, 0],
          [400, 700],
        ],
        50,
      ),
    ).toBeNull();
  });

  // Clipper2's offset as the outside reference; both draw arcs with chords that lie within 0.05 mm.
  it("leaves nothing of arms just twice as wide, and the spot at the elbow", () => {
    // Both arms of the L are 1200 wide: what is left is a square of 600 less a quarter of a round of that radius.
    const l = shapeRing({ type: "l", width: 3000, length: 2700, armWidth: 1200, armLength: 1200 });
    const drawnIn = plainInset(l, 600);
    const elbow = 600 ** 2 - (Math.PI * 600 ** 2) / 4;
    expect(drawnIn && Math.abs(signedArea(drawnIn.ring) - elbow)).toBeLessThan(60);
    // And nothing at all of a bed that is just twice as wide.
    expect(plainInset(shapeRing({ type: "rectangle", width: 1200, length: 2400 }), 600)).toBeNull();
    const one = shapeRing({ type: "l", width: 3000, length: 2700, armWidth: 1300, armLength: 1200 });
    const clipped = areaOf(offset([one], -600, "round"));
    expect(Math.abs(signedArea(plainInset(one, 600)?.ring ?? []) - clipped)).toBeLessThan(60);
  });

  it.each(Array.from({ length: 200 }, (_, i) => i + 1))(
    "agrees with clipping wherever it answers: seed %i",
    (seed) => {
      const random = seeded(seed);
      const by = 40 + random() * 500;
      const turn = random() < 0.5 ? 0 : seed * 7;
      const ring = shapeOf(seed, random).map((corner) => turned(corner, turn));
      const plain = plainInset(ring, by);
      const clipped = areaOf(offset([ring], -by, "round"));
      if (plain) {
        const { ring: drawnIn, chorded } = plain;
        expect(Math.abs(signedArea(drawnIn) - clipped)).toBeLessThan(Math.max(60, 1e-4 * clipped));
        // A chord for an arc leaves a little more, never less, and nothing of it outside the ring.
        expect(signedArea(chorded)).toBeGreaterThanOrEqual(signedArea(drawnIn) - 1e-6);
        expect(areaOf(difference([drawnIn], [chorded]))).toBeLessThan(1);
        expect(areaOf(difference([chorded], [ring]))).toBeLessThan(1);
      }
      // Plain it must be where the shape is a rectangle, and something of it is left.
      if (seed % 4 === 0) expect(plain !== null).toBe(clipped > 0);
    },
  );
});

function shapeOf(seed: number, random: () => number): Ring {
  const mm = (least: number, most: number) => least + random() * (most - least);
  switch (seed % 4) {
    case 0:
      return shapeRing({ type: "rectangle", width: mm(300, 1700), length: mm(300, 2500) });
    case 1:
      return shapeRing({
        type: "l",
        width: mm(1900, 2900),
        length: mm(1900, 2900),
        armWidth: mm(300, 1500),
        armLength: mm(300, 1500),
      });
    case 2:
      return shapeRing({
        type: "u",
        width: mm(2200, 3200),
        length: mm(1600, 2900),
        bayWidth: mm(300, 1200),
        bayLength: mm(300, 1400),
      });
    default:
      return Array.from({ length: 9 }, (_, i): [number, number] => {
        const [angle, far] = [(2 * Math.PI * i) / 9, mm(700, 1900)];
        return [far * Math.cos(angle), far * Math.sin(angle)];
      });
  }
}
