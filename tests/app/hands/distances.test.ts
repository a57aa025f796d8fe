import { describe, expect, it } from "vitest";
import { distancesOf } from "../../../app/plan/hands/distances.ts";
import { INCH, itemId } from "../../../src/index.ts";
import { bed, gardenWith, path, shed } from "../../helpers/garden-of.ts";

const kneeling = { gardener: { kneeling: true, barrow: false } } as const;
const left = bed("left", { x: 0, y: 0, w: 48 * INCH, h: 96 * INCH });
const right = (gap: number) => bed("right", { x: (48 + gap) * INCH, y: 300, w: 900, h: 1700 });
const toTheRight = (garden: Parameters<typeof distancesOf>[0]) => {
  const found = distancesOf(garden, itemId("left")).find(
    ({ from, to }) => to[0] > from[0] + 1 && to[1] === from[1],
  );
  return found && { words: found.words, fails: found.fails };
};

describe("distances to the neighbours", () => {
  // 24 in to kneel is common practice; see the limits table.
  it.each([
    [20, "20 in · 4 in short", true],
    [23.5, "23½ in · ½ in short", true],
    [24, "2′ 0″", false],
    [36, "3′ 0″", false],
    [1, "1″", false],
  ] as const)("tell a gap of %f in beside a bed as %s", (gap, words, fails) => {
    expect(toTheRight(gardenWith(kneeling, left, right(gap)))).toEqual({ words, fails });
  });

  it("ask for more where a wheelchair is used, and for less where nobody kneels", () => {
    const wheelchair = gardenWith({ gardener: { kneeling: true, wheelchair: true } }, left, right(30));
    expect(toTheRight(wheelchair)).toEqual({ words: "30 in · 6 in short", fails: true });
    const standing = gardenWith({ gardener: { kneeling: false } }, left, right(20));
    expect(toTheRight(standing)?.fails).toBe(false);
  });

  it("ask for no way beside a shed that stands near another, nor for a thing that is not there", () => {
    const garden = gardenWith(
      kneeling,
      shed("left", { x: 0, y: 0, w: 2400, h: 1800 }),
      shed("b", { x: 2700, y: 0, w: 2000, h: 1700 }),
    );
    expect(toTheRight(garden)?.fails).toBe(false);
    expect(distancesOf(garden, itemId("nobody"))).toEqual([]);
  });

  it("run through a path to what stands beyond it", () => {
    const way = path("way", { from: [1500, -5000], to: [1500, 5000], width: 300 });
    expect(toTheRight(gardenWith(kneeling, left, way, right(36)))).toEqual({ words: "3′ 0″", fails: false });
  });
});
