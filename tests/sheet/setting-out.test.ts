import { describe, expect, it } from "vitest";
import type { Point } from "../../src/geometry/types.ts";
import { pegsOf, proofOf, tapedPoints } from "../../src/sheet/setting-out.ts";
import { bed } from "../helpers/garden-of.ts";

/** Where two tapes meet below the line of the pegs: how a builder finds the corner again. */
function taped(p1: Point, p2: Point, fromP1: number, fromP2: number): Point {
  const between = Math.hypot(p2[0] - p1[0], p2[1] - p1[1]);
  const along = (fromP1 ** 2 - fromP2 ** 2 + between ** 2) / (2 * between);
  const away = Math.sqrt(Math.max(0, fromP1 ** 2 - along ** 2));
  const [ux, uy] = [(p2[0] - p1[0]) / between, (p2[1] - p1[1]) / between];
  return [p1[0] + along * ux - away * uy, p1[1] + along * uy + away * ux];
}

describe("the pegs", () => {
  it("stand at the ends of the longest side, P1 at the left", () => {
    const yard: Point[] = [
      [0, 0],
      [7000, 0],
      [7000, 11000],
      [500, 11000],
    ];
    expect(pegsOf({ yard })).toEqual({ p1: [0, 0], p2: [500, 11000] });
  });

  it("stand on the upper of two sides alike", () => {
    const yard: Point[] = [
      [0, 0],
      [9000, 0],
      [9000, 4000],
      [0, 4000],
    ];
    expect(pegsOf({ yard })).toEqual({ p1: [0, 0], p2: [9000, 0] });
  });
});

describe("setting out by two tapes", () => {
  const pegs = { p1: [0, 0] as Point, p2: [12000, 0] as Point };

  it("finds the corners of a turned bed again", () => {
    const turnedBed = bed("salads", {
      at: [4000, 3000],
      turn: 27,
      shape: { type: "rectangle", width: 1200, length: 2500 },
    });
    for (const { at, fromP1, fromP2 } of tapedPoints(turnedBed, pegs)) {
      const found = taped(pegs.p1, pegs.p2, fromP1, fromP2);
      expect(Math.hypot(found[0] - at[0], found[1] - at[1])).toBeLessThan(0.01);
    }
  });

  it("names the corner nearest P1 first, then its neighbour nearest P2 (3-4-5)", () => {
    const straight = bed("beans", {
      at: [4200, 5250],
      shape: { type: "rectangle", width: 2400, length: 2500 },
    });
    const [a, b] = tapedPoints(straight, pegs);
    expect(a).toMatchObject({ what: "a", at: [3000, 4000], fromP1: 5000 });
    expect(b).toMatchObject({ what: "b", at: [5400, 4000] });
  });

  it("tapes a round bed by its middle, a free one by every corner", () => {
    const round = bed("herbs", { at: [3000, 4000], shape: { type: "oval", width: 1500, length: 1500 } });
    expect(tapedPoints(round, pegs)).toMatchObject([{ what: "middle", fromP1: 5000 }]);
    const free = bed("roots", {
      shape: {
        type: "polygon",
        points: [
          [0, 0],
          [900, 0],
          [700, 1300],
          [-200, 800],
          [-300, 400],
        ],
      },
    });
    expect(tapedPoints(free, pegs).map(({ what }) => what)).toEqual(["a", "b", "c", "d", "e"]);
  });
});

describe("what proves a frame", () => {
  it("is the diagonal by Pythagoras: 8 ft 11 5/16 in for 4 ft by 8 ft", () => {
    const proof = proofOf(bed("a", { shape: { type: "rectangle", width: 48 * 25.4, length: 96 * 25.4 } }));
    expect(proof).toEqual({ diagonal: expect.closeTo(107.331 * 25.4, 0) });
  });

  it("is the radius of a round bed, and nothing for a free outline", () => {
    expect(proofOf(bed("a", { shape: { type: "oval", width: 1800, length: 1800 } }))).toEqual({
      radius: 900,
    });
    expect(
      proofOf(
        bed("b", {
          shape: {
            type: "polygon",
            points: [
              [0, 0],
              [900, 0],
              [0, 700],
            ],
          },
        }),
      ),
    ).toBeNull();
  });
});
