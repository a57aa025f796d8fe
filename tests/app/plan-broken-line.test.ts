import { describe, expect, it } from "vitest";
import { brokenLine, isLettered, type Lettered } from "../../app/plan/broken-line.ts";

/** 40 by 10 px of letters, from 30 to 70 across; lines stop 2 px short of them. */
const level: Lettered = { at: [50, 0], turn: 0, width: 40, height: 10 };

describe("a line through lettering", () => {
  it("is broken where the letters stand, and is whole where there are none", () => {
    expect(
      brokenLine(
        [
          [0, 0],
          [100, 0],
        ],
        [level],
      ),
    ).toEqual([
      [
        [0, 0],
        [expect.closeTo(28, 9), 0],
      ],
      [
        [expect.closeTo(72, 9), 0],
        [100, 0],
      ],
    ]);
    const beside = [
      [0, 8],
      [100, 8],
    ] as const;
    expect(brokenLine(beside, [level])).toEqual([beside]);
    expect(brokenLine(beside, [])).toEqual([beside]);
  });

  it("goes by the way the letters are turned", () => {
    const [before, after] = brokenLine(
      [
        [0, 0],
        [100, 0],
      ],
      [{ ...level, turn: 90 }],
    );
    expect(before![1][0]).toBeCloseTo(50 - 7, 9);
    expect(after![0][0]).toBeCloseTo(50 + 7, 9);
  });

  it("leaves out what lies within, once for places that overlap", () => {
    const wide = { ...level, at: [60, 0] as const };
    const pieces = brokenLine(
      [
        [0, 0],
        [100, 0],
        [100, 50],
      ],
      [wide, level],
    );
    expect(pieces.map(([[from], [to]]) => [from, to])).toEqual([
      [0, expect.closeTo(28, 9)],
      [expect.closeTo(82, 9), 100],
      [100, 100],
    ]);
    expect(
      brokenLine(
        [
          [40, 0],
          [60, 0],
        ],
        [level],
      ),
    ).toEqual([]);
    expect(isLettered([50, 6], [level])).toBe(true);
    expect(isLettered([50, 8], [level])).toBe(false);
  });
});
