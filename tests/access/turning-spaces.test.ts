import { describe, expect, it } from "vitest";
import { overlaps } from "../../src/geometry/gap.ts";
import { access, type Garden, INCH, type Point, type Ring, type TurningSpace } from "../../src/index.ts";
import { bed, gardenWith, gate, wall } from "../helpers/garden-of.ts";

/**
 * The 2010 ADA Standards, 304.3, give two turning spaces: a circle 60 in across (304.3.1), and a T within a 60 in
 * square, its arms and base 36 in wide, each clear 12 in past the other way, the base 24 in (304.3.2).
 */

const wheeled = (yard: Ring, ...items: Parameters<typeof gardenWith>[1][]) =>
  gardenWith({ yard, gardener: { wheelchair: true, kneeling: false, barrow: false } }, ...items);
const spaceAt = (garden: Garden): TurningSpace | null | undefined =>
  access(garden).wheelchair?.turningAt.find(({ bed: id }) => id === "salads")?.space;

/** Two ways that meet as a T: one `across` wide along the upper side of the yard, one `base` wide down from its middle. */
const teeYard = (across: number, base: number): Ring => [
  [-3000, 0],
  [3000, 0],
  [3000, across],
  [base / 2, across],
  [base / 2, 4000],
  [-base / 2, 4000],
  [-base / 2, across],
  [-3000, across],
];
/** A square court at the end of a way. */
const courtYard = (side: number): Ring => [
  [-side / 2, 0],
  [side / 2, 0],
  [side / 2, side],
  [500, side],
  [500, 4000],
  [-500, 4000],
  [-500, side],
  [-side / 2, side],
];
const way = gate("gate", { at: [0, 4000], width: 900 });
/** A low bed let into the upper side: it stands in the way of nothing below it. */
const bedAbove = (yard: Ring): { yard: Ring; salads: ReturnType<typeof bed> } => ({
  yard: [[-3000, -700], [3000, -700], ...yard.slice(1)].map(([x, y]): Point => [x, y]),
  salads: bed("salads", { x: -400, y: -700, w: 800, h: 700 }),
});

describe("a turning space", () => {
  it("is a T where two 36 in ways meet and no circle fits", () => {
    const tee = teeYard(36 * INCH, 36 * INCH);
    const sides = [
      wall("left", { from: [-3000, -350], to: [-400, -350], thickness: 700 }),
      wall("right", { from: [400, -350], to: [3000, -350], thickness: 700 }),
    ];
    const { yard, salads } = bedAbove(tee);
    const space = spaceAt(wheeled(yard, way, salads, ...sides));
    expect(space?.kind).toBe("t");
    if (space?.kind !== "t") return;
    for (const [x, y] of space.outline) {
      expect(y).toBeGreaterThan(-1);
      expect(y <= 36 * INCH + 1 || Math.abs(x) <= 18 * INCH + 1).toBe(true);
    }
    expect(
      overlaps(space.outline, [
        [-400, -700],
        [400, -700],
        [400, -1],
        [-400, -1],
      ]),
    ).toBe(false);
  });

  it("is no T by an edition whose T is not known here", () => {
    const { yard, salads } = bedAbove(teeYard(36 * INCH, 36 * INCH));
    const sides = [
      wall("left", { from: [-3000, -350], to: [-400, -350], thickness: 700 }),
      wall("right", { from: [400, -350], to: [3000, -350], thickness: 700 }),
    ];
    const garden = wheeled(yard, way, salads, ...sides);
    const roomier = { ...garden, gardener: { ...garden.gardener, edition: "a117-2017" as const } };
    expect(spaceAt(roomier)).toBeNull();
  });

  it("is none where one of the two ways is an inch short", () => {
    const sides = [
      wall("left", { from: [-3000, -350], to: [-400, -350], thickness: 700 }),
      wall("right", { from: [400, -350], to: [3000, -350], thickness: 700 }),
    ];
    const short = bedAbove(teeYard(35 * INCH, 36 * INCH));
    expect(spaceAt(wheeled(short.yard, way, short.salads, ...sides))).toBeNull();
  });

  it("is a circle in a round court 60 in across, where no T fits: its corners reach out 42 in", () => {
    // A round of 60 in and a little, entered through a slot; the bed lies beside the slot.
    const radius = 30.4 * INCH;
    const round = Array.from({ length: 48 }, (_, i): Point => {
      const angle = Math.PI / 2 + 0.62 + ((2 * Math.PI - 1.24) * i) / 47;
      return [radius * Math.cos(angle) * 1.0005, radius * Math.sin(angle) * 1.0005];
    });
    const mouth = round[0]![0];
    const yard: Ring = [...round, [-mouth, 4000], [mouth, 4000]];
    const salads = bed("salads", { x: -350, y: -1600, w: 700, h: 700 });
    expect(spaceAt(wheeled(yard, way, salads))?.kind).toBe("circle");
  });

  it("is none in a round court an inch too small for the circle", () => {
    const radius = 29.4 * INCH;
    const round = Array.from({ length: 48 }, (_, i): Point => {
      const angle = Math.PI / 2 + 0.66 + ((2 * Math.PI - 1.32) * i) / 47;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
    const mouth = round[0]![0];
    const yard: Ring = [...round, [-mouth, 4000], [mouth, 4000]];
    expect(spaceAt(wheeled(yard, way, bed("salads", { x: -350, y: -1600, w: 700, h: 700 })))).toBeNull();
  });

  it("is a circle wherever one fits, even if a T does too", () => {
    const yard = courtYard(2400);
    expect(spaceAt(wheeled(yard, way, bed("salads", { x: -1200, y: 0, w: 500, h: 500 })))?.kind).toBe(
      "circle",
    );
  });
});
