import { longHose } from "../../src/rules/long-hose.ts";
import { bed, gardenWith, house, tap } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const LONG = [
  [-3000, -6000],
  [3000, -6000],
  [3000, 40_000],
  [-3000, 40_000],
] as const;
const water = tap("tap", { at: [0, 0] });
const bedFrom = (x: number, y: number) => bed("salads", { x, y, w: 1200, h: 2500, name: "Salads" });

testRule(longHose, {
  passes: {
    "a near bed": gardenWith({ yard: LONG }, water, bedFrom(-600, 3000)),
    "a far corner round the near one: 12,727 mm to that, 2,500 on, and the thickness of the hose": gardenWith(
      { yard: LONG },
      water,
      bedFrom(0, 12_670),
    ),
    "a garden without a tap": gardenWith({ yard: LONG }, bedFrom(0, 30_000)),
  },
  flags: {
    "a far corner beyond 50 ft, where another tap at the house or a nearer place does it": {
      garden: gardenWith(
        { yard: LONG },
        water,
        house("shop", { x: -2900, y: 20_000, w: 1800, h: 4000 }),
        bedFrom(600, 21_000),
      ),
      // 21,077 to the corner (1800, 21000), 2,500 on, and the thickness of the hose round it.
      measured: [23_587.05],
      waysOut: ["Add a tap at the nearest house wall", "Move to within 50 ft of the tap"],
    },
  },
});
