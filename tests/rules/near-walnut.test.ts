import { FOOT, type Ring } from "../../src/index.ts";
import { nearWalnut } from "../../src/rules/near-walnut.ts";
import { bed, gardenWith, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const yard: Ring = [
  [-90_000, -90_000],
  [90_000, -90_000],
  [90_000, 90_000],
  [-90_000, 90_000],
];
const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
const walnut = (far: number) => tree("walnut", { at: [1200 + far, 900], species: "black-walnut" });
const at = (far: number) => gardenWith({ yard }, salads, walnut(far));

testRule(nearWalnut, {
  passes: {
    "80 ft from the trunk": at(80 * FOOT),
    "80 ft less half a tolerance": at(80 * FOOT - 0.4),
    "another tree": gardenWith({ yard }, salads, tree("plum", { at: [3000, 900] })),
    "a table bed": gardenWith({ yard }, { ...salads, legs: 700 }, walnut(9000)),
  },
  flags: {
    "45 ft from the trunk, too far in to be shifted out": {
      garden: at(45 * FOOT),
      measured: [45 * FOOT],
      title: "Salads: 45 ft from a black walnut",
      waysOut: 0,
    },
    "one tolerance inside 50 ft": { garden: at(50 * FOOT - 0.6), measured: [50 * FOOT - 0.6], waysOut: 0 },
    "50 ft, which is caution only": {
      garden: at(50 * FOOT),
      measured: [50 * FOOT],
      grade: "note",
      waysOut: 0,
    },
    "75 ft, from where a shift is near": {
      garden: at(75 * FOOT),
      measured: [75 * FOOT],
      grade: "note",
      waysOut: 1,
    },
  },
});
