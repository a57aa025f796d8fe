import { newPlanting, type Planting } from "../../src/index.ts";
import { overlappingPlantings } from "../../src/rules/overlapping-plantings.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const site = { latitude: 41, lastFrost: "04-28", firstFrost: "10-14" };
const soil = (...plantings: readonly Planting[]) =>
  gardenWith(
    { site },
    bed("greens", {
      name: "Greens",
      shape: { type: "rectangle", width: 1200, length: 2400 },
      wall: { made: "mound", height: 400 },
      plantings,
    }),
  );
const put = (crop: Planting["crop"], y: number, changes: Partial<Planting> = {}): Planting => ({
  ...newPlanting(crop),
  apart: 300,
  rowsApart: 300,
  patch: { at: [0, y], width: 1200, length: 1200 },
  ...changes,
});

testRule(overlappingPlantings, {
  passes: {
    "patches side by side": soil(put("kale", -600), put("beet", 600)),
    "patches that touch within half a millimetre": soil(put("kale", -600), put("beet", 599.8)),
    "the same patch at different times": soil(
      put("spinach", -600, { from: "04-01", until: "05-20" }),
      put("kale", -600, { from: "05-21" }),
    ),
    "the same patch without days: the second waits": soil(put("spinach", -600), put("bean-bush", -600)),
    "plantings without a patch, which get out of each other's way": soil(
      newPlanting("kale"),
      newPlanting("beet"),
      put("carrot", 600),
    ),
  },
  flags: {
    "patches that stand half over each other at the same time": {
      garden: soil(put("kale", -600, { from: "04-20" }), put("chard", 0, { from: "05-01" })),
      measured: [8],
      title: "Greens: Swiss chard lies over kale",
      waysOut: ["Set Swiss chard in what is left of the bed", "Leave out Swiss chard"],
    },
    "a crop sown before the other has gone, which may wait for it": {
      garden: soil(put("spinach", -600, { from: "04-01" }), put("bean-bush", -600, { from: "05-10" })),
      measured: [16],
      waysOut: [
        "Set snap bush bean once spinach has gone",
        "Set snap bush bean in what is left of the bed",
        "Leave out snap bush bean",
      ],
    },
    "a crop in the middle of a perennial one": {
      garden: soil(put("asparagus", 0), put("tomato", 0, { patch: { at: [0, 0], width: 600, length: 600 } })),
      measured: [4],
      waysOut: ["Set tomato in what is left of the bed", "Leave out tomato"],
    },
    "two over one, told once": {
      garden: soil(
        put("kale", -600, { from: "04-20", patch: { at: [0, 0], width: 1200, length: 2400 } }),
        put("beet", -600, { from: "04-20" }),
        put("chard", 600, { from: "04-20" }),
      ),
      measured: [32],
      waysOut: ["Leave out beet and Swiss chard"],
    },
  },
});
