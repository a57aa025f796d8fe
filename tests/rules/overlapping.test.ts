import { overlapping } from "../../src/rules/overlapping.ts";
import {
  bed,
  fence,
  gardenOf,
  gardenWith,
  house,
  keepClear,
  path,
  shed,
  tree,
} from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });

testRule(overlapping, {
  passes: {
    "beds that touch": gardenOf(salads, bed("squash", { x: 1200, w: 900, h: 1800 })),
    "beds that share less than half a millimetre": gardenOf(
      salads,
      bed("squash", { x: 1199.6, w: 900, h: 1800 }),
    ),
    "a bed under a crown, beside the trunk": gardenOf(
      salads,
      tree("tree", { at: [1400, 700], trunk: 300, canopy: 5000 }),
    ),
    "a bed on a path, which has a rule of its own": gardenOf(
      salads,
      path("way", { from: [0, 900], to: [4000, 900] }),
    ),
    "a shed that leans on a house": gardenOf(
      house("house", { w: 8000, h: 3000 }),
      shed("shed", { x: 8000, y: 0 }),
    ),
    "a fence that runs up to a house": gardenOf(
      house("house", { w: 8000, h: 3000 }),
      fence("fence", { from: [7900, 1000], to: [12_000, 1000] }),
    ),
  },
  flags: {
    "two beds, either of which may give way": {
      garden: gardenOf(salads, bed("squash", { name: "Squash", x: 1123.8, y: 300, w: 900, h: 1800 })),
      measured: [76.2],
      title: "Salads overlaps Squash by 3 in",
      waysOut: ["Shift Salads 3 in west", "Shift Squash 3 in east"],
    },
    "two beds by one tolerance more": {
      garden: gardenOf(salads, bed("squash", { x: 1199.4, w: 900, h: 1800 })),
      measured: [0.6],
      waysOut: 2,
    },
    "a bed in a house": { garden: gardenOf(salads, house("house", { x: 1150, h: 3000 })), measured: [50] },
    "a bed on ground kept clear": {
      garden: gardenOf(salads, keepClear("manhole", { x: 1110, y: 500, w: 700, h: 600 })),
      measured: [90],
      title: "Salads overlaps ground kept clear by 3 9/16 in",
    },
    "a metric bed through a fence, to the nearer side": {
      garden: gardenWith(
        { units: "metric" },
        salads,
        fence("fence", { from: [-500, 2300], to: [3000, 2300], thickness: 60 }),
      ),
      measured: [230],
      waysOut: ["Shift 23 cm north"],
    },
    "a turned bed in another": {
      // The corner that points at the other bed reaches 1000·√2/2 = 707.107 from its middle, 107.107 too far.
      garden: gardenOf(
        salads,
        bed("squash", {
          at: [1800, 1250],
          turn: 45,
          shape: { type: "rectangle", width: 1000, length: 1000 },
        }),
      ),
      measured: [107.107],
      waysOut: 2,
    },
    "three beds on one another, each pair once": {
      garden: gardenOf(
        bed("a", { x: 0, w: 1000, h: 2000 }),
        bed("b", { x: 940, w: 1100, h: 2100 }),
        bed("c", { x: 1950, w: 1200, h: 2200 }),
      ),
      measured: [60, 90],
      // The one in the middle has nowhere to go near by.
      waysOut: 1,
    },
  },
});
