import { type CropId, FOOT } from "../../src/index.ts";
import { noTrellis } from "../../src/rules/no-trellis.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const of = (crops: readonly CropId[], trellis: number | null) =>
  bed("vines", { name: "Vines", crops, trellis, wall: { made: "fabric", height: 500 } });

// Crop facts: pole beans climb 6 to 8 ft, peas 3 to 6 ft (common practice).
testRule(noTrellis, {
  passes: {
    "pole beans on 6 ft": gardenOf(of(["bean-pole"], 6 * FOOT)),
    "pole beans on 6 ft less half a tolerance": gardenOf(of(["bean-pole"], 6 * FOOT - 0.4)),
    "peas on 3 ft": gardenOf(of(["pea"], 3 * FOOT)),
    "tomatoes and cucumbers, which do without": gardenOf(of(["tomato", "cucumber"], null)),
  },
  flags: {
    "pole beans with nothing to climb": {
      garden: gardenOf(of(["bean-pole"], null)),
      measured: [0],
      title: "Vines: no trellis for snap pole bean",
      waysOut: ["Put up a trellis 72 in high", "Grow snap bush bean instead of snap pole bean"],
    },
    "peas and beans on a trellis for peas": {
      garden: gardenOf(of(["pea", "bean-pole"], 4 * FOOT)),
      measured: [4 * FOOT],
      title: "Vines: trellis too low for snap pole bean",
      waysOut: ["Make the trellis 72 in high", "Grow snap bush bean instead of snap pole bean"],
    },
    "peas beside a bed with a trellis that is free": {
      garden: gardenOf(
        of(["pea"], null),
        bed("arch", { name: "Arch", x: 3000, trellis: 5 * FOOT, wall: { made: "fabric", height: 500 } }),
      ),
      measured: [0],
      waysOut: ["Put up a trellis 36 in high", "Grow carrot instead of pea", "Grow pea in Arch"],
    },
  },
});
