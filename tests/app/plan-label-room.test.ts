import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { labelRooms, type Room } from "../../app/plan/label-room.ts";
import { shapeRing } from "../../src/geometry/shape.ts";
import { contains, itemId, newItem, type Point, type Ring, type Shape, signedArea } from "../../src/index.ts";

/** Points along the sides of a room, drawn in by a hair. */
function rim({ centre: [x, y], width, length }: Room): Point[] {
  const [w, l] = [(width / 2) * 0.999, (length / 2) * 0.999];
  const parts = [-1, -0.5, 0, 0.5, 1];
  return parts.flatMap((t): Point[] => [
    [x + w * t, y - l],
    [x + w * t, y + l],
    [x - w, y + l * t],
    [x + w, y + l * t],
  ]);
}

const SHAPES: Record<string, Shape> = {
  rectangle: { type: "rectangle", width: 1200, length: 2500 },
  oval: { type: "oval", width: 1300, length: 2100 },
  "an L with a broad arm across": { type: "l", width: 2600, length: 2000, armWidth: 500, armLength: 900 },
  "an L with a broad arm along": { type: "l", width: 2000, length: 2600, armWidth: 1100, armLength: 300 },
  "a U": { type: "u", width: 2500, length: 1900, bayWidth: 800, bayLength: 1200 },
  "a U that is nearly all bay": { type: "u", width: 2500, length: 1900, bayWidth: 700, bayLength: 1850 },
  keyhole: { type: "keyhole", diameter: 1800, slotWidth: 450, middleDiameter: 600 },
  "a keyhole with a large middle": { type: "keyhole", diameter: 1800, slotWidth: 450, middleDiameter: 1500 },
  "a dart": {
    type: "polygon",
    points: [
      [0, 0],
      [3000, 1000],
      [0, 2000],
      [800, 1000],
    ],
  },
};

describe("the room for a label", () => {
  it.each(Object.entries(SHAPES))("lies inside %s", (_name, shape) => {
    const ring = shapeRing(shape);
    for (const room of labelRooms(shape)) {
      expect(Math.min(room.width, room.length)).toBeGreaterThan(0);
      for (const point of rim(room)) expect(contains(ring, point), `${point}`).toBe(true);
    }
  });

  it("is the whole of a rectangle, and the broader arm of an L", () => {
    expect(labelRooms(SHAPES.rectangle!)).toEqual([{ centre: [0, 0], width: 1200, length: 2500 }]);
    expect(labelRooms(SHAPES["an L with a broad arm across"]!)[0]).toEqual({
      centre: [0, -550],
      width: 2600,
      length: 900,
    });
  });

  it("lies inside any outline drawn by hand", () => {
    // Corners at growing bearings about a middle: any such ring is simple.
    const reach = fc.double({ min: 300, max: 3000, noNaN: true });
    fc.assert(
      fc.property(fc.array(reach, { minLength: 3, maxLength: 9 }), (reaches) => {
        const ring: Ring = reaches.map((r, i): Point => {
          const angle = (2 * Math.PI * i) / reaches.length;
          return [r * Math.cos(angle), r * Math.sin(angle)];
        });
        fc.pre(signedArea(ring) > 1000);
        const room = labelRooms({ type: "polygon", points: ring })[0]!;
        for (const point of rim(room)) expect(contains(ring, point)).toBe(true);
      }),
      { seed: 7, numRuns: 120 },
    );
  });

  it("is remembered by the shape", () => {
    const bed = newItem("bed-free", { id: itemId("free"), at: [0, 0], units: "us" });
    if (bed.kind !== "bed") throw new Error("a free bed is a bed");
    expect(labelRooms(bed.shape)).toBe(labelRooms(bed.shape));
  });
});
