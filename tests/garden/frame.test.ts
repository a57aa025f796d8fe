import { describe, expect, it } from "vitest";
import { boundsOf, frameOf, outlineOf, signedArea, wallSize } from "../../src/index.ts";
import { bed } from "../helpers/garden-of.ts";

const INCH = 25.4;

const boards = (board: string, courses: number) =>
  ({
    made: "boards",
    board,
    timber: "larch",
    courses,
    corner: "ends-between-sides",
    cornerPosts: true,
    capRail: null,
    bracing: "none",
  }) as const;

describe("wallSize", () => {
  // NIST Voluntary Product Standard PS 20-25, Table 3, dry dressed sizes.
  it.each([
    ["2x6", 2, 11, 1.5],
    ["2x6", 3, 16.5, 1.5],
    ["2x12", 1, 11.25, 1.5],
    ["1x8", 2, 14.5, 0.75],
    ["6x6", 2, 11, 5.5],
  ])(
    "stands boards by their dressed size, not their name: %s, %d courses",
    (board, courses, height, thickness) => {
      const size = wallSize(boards(board, courses));
      expect(size.height / INCH).toBeCloseTo(height, 9);
      expect(size.thickness / INCH).toBeCloseTo(thickness, 9);
    },
  );

  it("takes the size of other walls as given, and counts fabric and mounds as thin", () => {
    expect(wallSize({ made: "metal", height: 430, thickness: 0.8 })).toEqual({ height: 430, thickness: 0.8 });
    expect(wallSize({ made: "fabric", height: 310 })).toEqual({ height: 310, thickness: 0 });
    expect(wallSize({ made: "mound", height: 205 })).toEqual({ height: 205, thickness: 0 });
    const blocks = { made: "masonry", unitLength: 390, unitHeight: 190, thickness: 140, courses: 3 } as const;
    expect(wallSize(blocks)).toEqual({ height: 570, thickness: 140 });
  });
});

describe("frameOf", () => {
  it("measures soil inside the boards, and depth from where the soil stops below the rim", () => {
    const salads = bed("salads", {
      w: 48 * INCH,
      h: 96 * INCH,
      wall: boards("2x12", 1),
      fill: { belowRim: 13 },
    });
    const frame = frameOf(salads);
    // 45 in by 93 in inside boards 1 1/2 in thick.
    expect(signedArea(frame.inside[0]!) / INCH ** 2).toBeCloseTo(45 * 93, 0);
    expect(frame.soilDepth).toBeCloseTo(11.25 * INCH - 13, 9);
    expect(frame.rim).toBeCloseTo(11.25 * INCH, 9);
    expect(frameOf(salads), "remembered").toBe(frame);
  });

  it("stands a table bed on its legs", () => {
    const table = bed("table", { wall: { made: "metal", height: 170, thickness: 1 }, legs: 690 });
    expect(frameOf(table)).toMatchObject({ wallHeight: 170, rim: 860, soilDepth: 170 });
  });

  it("leaves no soil inside walls as thick as the bed, and none below the ground", () => {
    const thick = bed("thick", {
      w: 250,
      h: 900,
      wall: { made: "masonry", unitLength: 390, unitHeight: 190, thickness: 140, courses: 1 },
    });
    expect(frameOf(thick).inside).toEqual([]);
    expect(
      frameOf(bed("low", { wall: { made: "mound", height: 90 }, fill: { belowRim: 120 } })).soilDepth,
    ).toBe(0);
  });
});

describe("outlineOf", () => {
  it("turns about the middle, then stands where the thing stands", () => {
    const turned = bed("turned", {
      at: [3000, 5000],
      turn: 90,
      shape: { type: "rectangle", width: 1200, length: 2500 },
    });
    expect(boundsOf(outlineOf(turned))).toEqual({ minX: 1750, maxX: 4250, minY: 4400, maxY: 5600 });
    expect(outlineOf(turned), "remembered").toBe(outlineOf(turned));
  });

  it("runs clockwise even where a free outline was drawn the other way", () => {
    const points = [
      [0, 0],
      [300, 900],
      [700, 100],
    ] as const;
    expect(signedArea(outlineOf(bed("free", { shape: { type: "polygon", points } })))).toBeGreaterThan(0);
  });
});
