import { describe, expect, it } from "vitest";
import { applyOps, bedShade, EXAMPLES, type Garden, type ItemOf, itemId } from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { shadedByBed } from "../../src/rules/shaded-by-bed.ts";
import { bed, gardenWith, house } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** Long low beds from west to east with a path of 3 ft between them, the trellised one to the south of the other. */
const site = { latitude: 44, longitude: 0, north: 0 };
const yard: Garden["yard"] = [
  [-6000, -6000],
  [6000, -6000],
  [6000, 12_000],
  [-6000, 12_000],
];
const low = (id: string, y: number, changes: Partial<ItemOf<"bed">> = {}) => ({
  ...bed(id.toLowerCase(), { name: id, x: -1800, y, w: 3600, h: 1200 }),
  ...changes,
});
const trellised = (y: number, trellis = 2200) => low("Peas", y, { trellis });
const NORTH = -1070;
const SOUTH = 1070;
const lettuce = low("Salads", NORTH);
const open = (...beds: readonly ItemOf<"bed">[]): Garden => gardenWith({ site, yard }, ...beds);

/** A house to the west takes the afternoon, so that what is left counts. */
const west = house("house", { x: -14_000, y: -12_000, w: 9000, h: 24_000, height: 7000, roof: "flat" });
const dim = (...beds: readonly ItemOf<"bed">[]): Garden => gardenWith({ site, yard }, west, ...beds);

const taken = (garden: Garden, from: string, by: string): number => {
  const without = { ...garden, items: garden.items.filter(({ id }) => id !== by) };
  return bedShade(without, itemId(from))!.hours - bedShade(garden, itemId(from))!.hours;
};

const near = low("Salads", 100);
const close = open(near, trellised(1350));
const afternoon = dim(near, trellised(1350));

testRule(shadedByBed, {
  passes: {
    "a trellis on the pole side": open(low("Salads", SOUTH), trellised(NORTH)),
    "beds of one height": open(lettuce, low("Peas", SOUTH)),
    "a trellis a long way off": open(lettuce, trellised(9000)),
    "a bed that the gardener lets be shaded": { ...close, limits: { bedShade: 6 } },
    "one bed": open(trellised(0)),
  },
  flags: {
    "a trellis close by to the south, where the low bed has plenty all the same": {
      garden: close,
      measured: [taken(close, "salads", "peas")],
      grade: "note",
      waysOut: [
        "Lower the trellis of Peas to 48 in",
        "Let Salads and Peas change places",
        expect.stringMatching(/^Move Salads .+ of sun$/),
      ],
    },
    "the same where the afternoon is gone already": {
      garden: afternoon,
      measured: [taken(afternoon, "salads", "peas")],
      grade: "should",
      waysOut: 3,
    },
    "a tall bed beside a low one": {
      garden: dim(
        near,
        low("Peas", 1350, { wall: { made: "metal", height: 1500, thickness: 2 } }),
        low("Beans", 9000),
      ),
      measured: [
        taken(
          dim(near, low("Peas", 1350, { wall: { made: "metal", height: 1500, thickness: 2 } })),
          "salads",
          "peas",
        ),
      ],
      waysOut: 2,
    },
  },
});

describe("the ways out of a bed in another's shade", () => {
  const [snag] = checkGarden(afternoon).filter(({ rule }) => rule === "shaded-by-bed");

  it("lower the trellis no more than it takes: a foot more would shade again", () => {
    const lowered = applyOps(afternoon, snag!.waysOut[0]!.ops).items.find(({ id }) => id === "peas");
    const height = lowered?.kind === "bed" ? lowered.trellis! : Number.NaN;
    const at = (trellis: number) => taken(dim(near, trellised(1350, trellis)), "salads", "peas");
    expect(at(height)).toBeLessThanOrEqual(1.05);
    expect(at(Math.min(2200, height + 304.8))).toBeGreaterThan(1.05);
  });

  it("make no other snag", () => {
    const keys = (of: Garden) =>
      checkGarden(of)
        .filter(({ grade }) => grade !== "note")
        .map(({ key }) => key);
    const before = keys(afternoon);
    for (const { label, ops } of snag!.waysOut) {
      expect(
        keys(applyOps(afternoon, ops)).filter((key) => !before.includes(key)),
        label,
      ).toEqual([]);
    }
  });
});

it("in the southern example tells of the greens beside the trellised tomatoes, which have plenty", () => {
  const snags = checkGarden(EXAMPLES.find(({ id }) => id === "southern-yard")!.garden).filter(
    ({ rule }) => rule === "shaded-by-bed",
  );
  expect(snags.map(({ grade, itemIds }) => [grade, ...itemIds])).toEqual([["note", "greens", "tomatoes"]]);
});
