import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { perimeter } from "../../src/geometry/ring.ts";
import { type Shape, shapeRing } from "../../src/geometry/shape.ts";
import { turned } from "../../src/geometry/vector.ts";
import { wallSides } from "../../src/takeoff/sides.ts";

const boards = (shape: Shape, thickness: number, corner: "ends-between-sides" | "ends-over-sides") =>
  wallSides(shape, thickness, corner).sides.map(
    ({ called, board }) => `${called} ${Math.round(board * 10) / 10}`,
  );
const rectangle = { type: "rectangle", width: 1200, length: 2500 } as const;
const ell = { type: "l", width: 2400, length: 3000, armWidth: 900, armLength: 700 } as const;
const u = { type: "u", width: 2600, length: 1900, bayWidth: 1000, bayLength: 1100 } as const;
const shed: Shape = {
  type: "polygon",
  points: [
    [0, 0],
    [2000, 0],
    [2000, 1000],
    [1000, 2000],
    [0, 2000],
  ],
};

describe("the boards of a wall", () => {
  it("run through along the long sides, or across the ends", () => {
    expect(boards(rectangle, 38, "ends-between-sides")).toEqual([
      "end 1124",
      "side 2500",
      "end 1124",
      "side 2500",
    ]);
    expect(boards(rectangle, 38, "ends-over-sides")).toEqual([
      "end 1200",
      "side 2424",
      "end 1200",
      "side 2424",
    ]);
  });

  it("calls the sides of a square those that run up the plan", () => {
    const square = { type: "rectangle", width: 1200, length: 1200 } as const;
    expect(boards(square, 20, "ends-between-sides")).toEqual([
      "end 1160",
      "side 1200",
      "end 1160",
      "side 1200",
    ]);
  });

  it("run on past the inner corner of an L, where the other board stops at it", () => {
    // Clockwise from the top: outer corners take a thickness from the boards between, inner corners give one to
    // those that run through.
    expect(boards(ell, 40, "ends-between-sides")).toEqual([
      "end 2320",
      "side 700",
      "end 1460",
      "side 2340",
      "end 820",
      "side 3000",
    ]);
  });

  it("are mitred where corners are not square, as long as their outside", () => {
    const { sides, joined } = wallSides(shed, 50, "ends-between-sides");
    expect(joined).toBe("mitred");
    expect(sides.map(({ board }) => Math.round(board))).toEqual([2000, 1000, 1414, 1000, 2000]);
  });

  it("are mitred to their longer, inner face at an inner corner", () => {
    const arrow: Shape = {
      type: "polygon",
      points: [
        [0, 0],
        [1500, 500],
        [3000, 0],
        [1500, 2000],
      ],
    };
    const { sides } = wallSides(arrow, 50, "ends-between-sides");
    const half = Math.atan2(500, 1500);
    expect(sides[0]?.board).toBeCloseTo(Math.hypot(1500, 500) + 50 * Math.tan(half), 6);
    expect(sides[2]?.board).toBeCloseTo(Math.hypot(1500, 2000), 6);
  });

  it("take a round wall as one bent board along its outline", () => {
    const { sides, joined } = wallSides(
      { type: "oval", width: 1500, length: 1500 },
      38,
      "ends-between-sides",
    );
    expect(joined).toBe("bent");
    expect(sides).toHaveLength(1);
    // 64 chords fall short of the circle by a part in 2500.
    expect(sides[0]?.board).toBeCloseTo(Math.PI * 1500, -1);
  });

  it("do not care for points in the middle of a side or drawn twice", () => {
    const points = [
      [0, 0],
      [700, 0],
      [1200, 0],
      [1200, 0],
      [1200, 2500],
      [0, 2500],
    ] as const;
    expect(boards({ type: "polygon", points }, 38, "ends-over-sides").sort()).toEqual(
      boards(rectangle, 38, "ends-over-sides").sort(),
    );
  });

  it("leave out a side too short for its corners", () => {
    const sliver = { type: "rectangle", width: 60, length: 900 } as const;
    expect(boards(sliver, 38, "ends-between-sides")).toEqual(["side 900", "side 900"]);
  });

  const thickness = fc.integer({ min: 10, max: 60 });
  const corner = fc.constantFrom("ends-between-sides", "ends-over-sides");
  it("come, where corners are square, to the outline less four thicknesses", () => {
    fc.assert(
      fc.property(fc.constantFrom<Shape>(rectangle, ell, u), thickness, corner, (shape, t, how) => {
        const total = wallSides(shape, t, how).sides.reduce((sum, { board }) => sum + board, 0);
        expect(total).toBeCloseTo(perimeter(shapeRing(shape)) - 4 * t, 6);
      }),
    );
  });

  it("are the same for a shape drawn turned, either way round", () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Shape>(ell, u, shed),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (shape, by) => {
          const points = shapeRing(shape).map((point) => turned(point, by));
          const lengths = (drawn: Shape) =>
            wallSides(drawn, 38, "ends-between-sides")
              .sides.map(({ board }) => board.toFixed(3))
              .sort();
          expect(lengths({ type: "polygon", points })).toEqual(lengths(shape));
          expect(lengths({ type: "polygon", points: points.toReversed() })).toEqual(lengths(shape));
        },
      ),
    );
  });
});
