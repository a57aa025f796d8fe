import { type ItemOf, newPlanting, type Planting, type Point } from "../../src/index.ts";
import { plantingOutsideBed } from "../../src/rules/planting-outside-bed.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

type Shape = ItemOf<"bed">["shape"];

const soil = (patch: Planting["patch"], shape?: Shape) =>
  gardenOf(
    bed("greens", {
      name: "Greens",
      shape: shape ?? { type: "rectangle", width: 1200, length: 2400 },
      turn: 30,
      plantings: [{ ...newPlanting("kale"), patch }],
    }),
  );
const patch = (at: Point, width: number, length: number) => ({ at, width, length });

testRule(plantingOutsideBed, {
  passes: {
    "a patch in the middle": soil(patch([0, 0], 600, 900)),
    "a patch as large as the bed outside its walls": soil(patch([0, 0], 1200, 2400)),
    "a patch that sticks out by less than half a millimetre": soil(patch([0, 0.4], 1200, 2400)),
    "a planting without a patch": soil(null),
  },
  flags: {
    "a patch of which a quarter lies beyond the end": {
      garden: soil(patch([0, 900], 1000, 800)),
      measured: [100 / 800],
      title: "Greens: kale drawn beyond the bed",
      waysOut: [
        "Move kale into the bed",
        "Cut kale back to the bed",
        "Set kale in what is left of the bed",
        "Leave out kale",
      ],
    },
    "a patch beside the bed, which cannot be cut back to it": {
      garden: soil(patch([2000, 0], 500, 500)),
      measured: [1],
      waysOut: ["Move kale into the bed", "Set kale in what is left of the bed", "Leave out kale"],
    },
    "a patch wider than the bed, which can only be cut back": {
      garden: soil(patch([0, 0], 2400, 800)),
      measured: [0.5],
      waysOut: ["Cut kale back to the bed", "Set kale in what is left of the bed", "Leave out kale"],
    },
    "a patch over the corner of a round bed": {
      garden: soil(patch([500, 500], 600, 600), { type: "oval", width: 1400, length: 1400 }),
      // By the quarter circle of 700 mm less its strips of 200 mm along both axes, in chords: 148,316 of 360,000 mm² inside.
      measured: [0.588],
      waysOut: ["Set kale in what is left of the bed", "Leave out kale"],
    },
  },
});
