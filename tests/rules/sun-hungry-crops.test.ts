import { describe, expect, it } from "vitest";
import {
  applyOps,
  bedShade,
  type CropId,
  type Garden,
  type ItemOf,
  itemId,
  type Point,
} from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { sunHungryCrops } from "../../src/rules/sun-hungry-crops.ts";
import { bed, gardenWith, house } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** Deep in a corner between two houses, a bed gets part sun; north of it the yard is open. */
const site = { latitude: 44, longitude: 0, north: 0 };
const yard: readonly Point[] = [
  [0, 0],
  [14_000, 0],
  [14_000, 18_000],
  [0, 18_000],
];
const south = house("south", { x: 0, y: 15_500, w: 14_000, h: 2500, height: 5200, roof: "flat" });
const west = house("west", { name: "Barn", x: 0, y: 8500, w: 3000, h: 7000, height: 6500, roof: "flat" });
const corner = (crops: readonly CropId[]): ItemOf<"bed"> =>
  bed("beans", { name: "Beans", at: [4800, 12_900], crops });
const gardenOf = (crops: readonly CropId[], changes: Partial<Garden> = {}): Garden => ({
  ...gardenWith({ site, yard }, south, west, corner(crops)),
  ...changes,
});
/** What it gets there, by the reckoning of the bed alone, which is held to rays elsewhere. */
const hours = bedShade(gardenOf([]), itemId("beans"))!.hours;

testRule(sunHungryCrops, {
  passes: {
    "leaf and root crops in part sun": gardenOf(["lettuce-leaf", "carrot", "kale"]),
    "nothing sown, of which another rule speaks": gardenOf([]),
    "fruiting crops in the open": gardenWith({ site }, bed("beans", { crops: ["tomato", "bean-pole"] })),
    "fruiting crops where the gardener asks for less": gardenOf(["tomato"], {
      limits: { sun: 3, sunLeast: 2 },
    }),
    "crops that get too little for any, of which another rule speaks": gardenOf(["tomato"], {
      limits: { sun: 9, sunLeast: 8 },
    }),
  },
  flags: {
    "a fruiting crop in part sun: it is swapped or moved": {
      garden: gardenOf(["tomato"]),
      measured: [hours],
      title: `Beans: ${hours.toFixed(1)} h of sun a day for tomato`,
      waysOut: 2,
    },
    "one of several, which is swapped, left out or moved": {
      garden: gardenOf(["lettuce-leaf", "pepper"]),
      measured: [hours],
      waysOut: 3,
    },
    "a fruiting crop that may change places with lettuce in a sunny bed": {
      garden: {
        ...gardenOf(["pepper"]),
        items: [
          ...gardenOf(["pepper"]).items,
          bed("sunny", { name: "Sunny bed", at: [10_000, 3000], crops: ["lettuce-leaf"] }),
        ],
      },
      measured: [hours],
      waysOut: [
        "Grow leaf lettuce instead of pepper",
        "Grow pepper in Sunny bed, and leaf lettuce here",
        expect.stringMatching(/^Move /),
      ],
    },
    "many at once": { garden: gardenOf(["tomato", "pepper", "eggplant"]), measured: [hours], waysOut: 2 },
  },
});

describe("the ways out of a fruiting crop in part sun", () => {
  const garden = gardenOf(["tomato"]);
  const [snag] = checkGarden(garden).filter(({ rule }) => rule === "sun-hungry-crops");
  const taking = (i: number) => applyOps(garden, snag!.waysOut[i]!.ops);
  const others = (of: Garden) =>
    checkGarden(of)
      .filter(({ grade, rule }) => grade !== "note" && rule !== "sun-hungry-crops")
      .map(({ key }) => key);

  it("starts from part sun", () => {
    expect(hours).toBeGreaterThan(4.1);
    expect(hours).toBeLessThan(5.9);
    expect(snag).toMatchObject({ grade: "should", limit: 6, unit: "h" });
    expect(snag!.detail).toMatch(/Barn takes|South takes|House takes/);
  });

  it("names a crop that does with it, or a place with 6 hours", () => {
    expect(snag!.waysOut.map(({ label }) => label)).toEqual([
      "Grow leaf lettuce instead of tomato",
      expect.stringMatching(/^Move .+, to [6-9](\.\d)? h of sun$/),
    ]);
    expect(bedShade(taking(1), itemId("beans"))!.hours).toBeGreaterThanOrEqual(6);
  });

  it("make no other snag", () => {
    const before = others(garden);
    for (const i of [0, 1]) expect(others(taking(i)).filter((key) => !before.includes(key))).toEqual([]);
  });
});
