import { FOOT } from "../../src/index.ts";
import { nearOldPaint } from "../../src/rules/near-old-paint.ts";
import { bed, gardenOf, gardenWith, house, wall } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
const painted = (far: number) => house("house", { name: "House", x: 1200 + far, h: 3000, oldPaint: true });

testRule(nearOldPaint, {
  passes: {
    "10 ft from an old painted house": gardenOf(salads, painted(10 * FOOT)),
    "10 ft less half a tolerance": gardenOf(salads, painted(10 * FOOT - 0.4)),
    "a house without old paint": gardenOf(salads, house("house", { x: 1500 })),
    "a table bed": gardenOf({ ...salads, legs: 700 }, painted(300)),
    "less where the gardener has set less": gardenWith({ limits: { oldPaint: 900 } }, salads, painted(900)),
  },
  flags: {
    "8 ft from an old painted house": {
      garden: gardenOf(salads, painted(8 * FOOT)),
      measured: [8 * FOOT],
      title: "Salads: 96 in from old paint",
      waysOut: ["Shift 24 in west"],
    },
    "one tolerance too near": {
      garden: gardenOf(salads, painted(10 * FOOT - 0.6)),
      measured: [10 * FOOT - 0.6],
    },
    "a garden wall, from its face and not from its middle": {
      garden: gardenOf(
        salads,
        wall("wall", { from: [3000, -500], to: [3000, 3000], thickness: 200, oldPaint: true }),
      ),
      measured: [1700],
    },
  },
});
