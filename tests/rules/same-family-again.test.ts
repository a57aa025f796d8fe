import type { CropId, Garden } from "../../src/index.ts";
import { sameFamilyAgain } from "../../src/rules/same-family-again.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const of = (
  crops: readonly CropId[],
  lastYear: readonly CropId[],
  upkeep: Partial<Garden["upkeep"]> = { topUp: "advice", topUpsAYear: 1 },
  ...others: Garden["items"]
): Garden => {
  const garden = gardenOf(
    bed("north", { name: "North bed", crops, lastYear, wall: { made: "fabric", height: 500 } }),
    ...others,
  );
  return { ...garden, upkeep: { ...garden.upkeep, ...upkeep } };
};

testRule(sameFamilyAgain, {
  passes: {
    "another family than last year": of(["carrot"], ["tomato"]),
    "a bed of which nothing is known": of(["tomato"], []),
    "asparagus that stands on": of(["asparagus"], ["asparagus"]),
    "chives that stand on": of(["chives"], ["chives", "pea"]),
    "basil beside thyme that stands on in its own place": of(["thyme", "basil"], ["thyme"]),
  },
  flags: {
    "basil where thyme has been taken out": {
      garden: of(["basil"], ["thyme"]),
      measured: [1],
      waysOut: 1,
    },
    "tomatoes after peppers": {
      garden: of(["tomato"], ["pepper"]),
      measured: [1],
      title: "North bed: tomato after last year's pepper",
      waysOut: ["Grow cucumber instead of tomato"],
    },
    "onions after chives, which are of their family": {
      garden: of(["onion-bulb", "carrot"], ["chives"]),
      measured: [1],
      waysOut: 1,
    },
    "tomatoes again where 2 in and more of compost go on each year": {
      garden: of(["tomato"], ["tomato"], { topUp: "habit", topUpsAYear: 1 }),
      measured: [1],
      grade: "note",
      waysOut: 1,
    },
    "tomatoes again where an inch goes on twice": {
      garden: of(["tomato"], ["tomato"], { topUp: "advice", topUpsAYear: 2 }),
      measured: [1],
      grade: "note",
      waysOut: 1,
    },
    "cabbages that may change places with beans": {
      garden: of(
        ["cabbage"],
        ["kale"],
        { topUp: "advice", topUpsAYear: 1 },
        bed("south", {
          name: "South bed",
          x: 4000,
          crops: ["bean-bush"],
          lastYear: ["carrot"],
          wall: { made: "fabric", height: 500 },
        }),
      ),
      measured: [1],
      waysOut: ["Grow green onion instead of cabbage", "Grow cabbage in South bed, and snap bush bean here"],
    },
  },
});
