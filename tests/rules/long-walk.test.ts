import { FOOT } from "../../src/index.ts";
import { longWalk } from "../../src/rules/long-walk.ts";
import { bed, door, gardenWith, house, wall } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const LONG = [
  [-3000, -6000],
  [3000, -6000],
  [3000, 60_000],
  [-3000, 60_000],
] as const;
const home = [
  house("house", { x: -2500, y: -5000, w: 5000, h: 5000 }),
  door("kitchen", { at: [0, 0], width: 900, kitchen: true, swing: "in" }),
];
const bedAt = (y: number) => bed("salads", { x: -600, y, w: 1200, h: 2500, name: "Salads" });
const yard = (...items: Parameters<typeof gardenWith>[1][]) => gardenWith({ yard: LONG }, ...home, ...items);

testRule(longWalk, {
  passes: {
    "a bed 100 ft straight out of the door, less the half pace of whoever stands at it": yard(
      bedAt(100 * FOOT + 228.3),
    ),
    "a near bed": yard(bedAt(5000)),
    "a garden without a door": gardenWith({ yard: LONG }, bedAt(50_000)),
  },
  flags: {
    "a bed 10 ft too far": {
      garden: yard(bedAt(110 * FOOT + 228.35)),
      measured: [110 * FOOT],
      title: "Salads: 110 ft walk from the kitchen",
    },
    "a bed that is near as the crow flies, behind a wall with its end far off": {
      garden: gardenWith(
        {
          yard: [
            [-3000, -6000],
            [25_000, -6000],
            [25_000, 9000],
            [-3000, 9000],
          ],
        },
        ...home,
        wall("wall", { from: [-3000, 2500], to: [18_000, 2500], thickness: 100 }),
        bed("salads", { x: -2300, y: 4000, w: 1200, h: 2500, name: "Salads" }),
      ),
      // Out to the end of the wall 18 m off, round it and back: no shorter than twice the way to its end.
      measured: [38_063.401],
    },
  },
});
