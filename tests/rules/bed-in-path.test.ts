import { bedInPath } from "../../src/rules/bed-in-path.ts";
import { bed, gardenOf, path, shed } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
const way = (x: number) => path("way", { name: "Main way", from: [x, -4000], to: [x, 4000], width: 914.4 });

testRule(bedInPath, {
  passes: {
    "a path along the bed": gardenOf(salads, way(1200 + 457.2)),
    "a path that takes less than half a millimetre": gardenOf(salads, way(1200 + 456.8)),
    "a path beside it that bends away": gardenOf(
      salads,
      path("way", {
        from: [0, 0],
        to: [1, 1],
        points: [
          [1700, -900],
          [1700, 3000],
          [-900, 3000],
        ],
        width: 800,
      }),
    ),
  },
  flags: {
    "a bed 2 in into a path": {
      garden: gardenOf(salads, way(1200 + 457.2 - 50.8)),
      measured: [50.8],
      title: "Salads stands 2 in into Main way",
      waysOut: ["Shift 2 in west"],
    },
    "a bed one tolerance more into it": { garden: gardenOf(salads, way(1200 + 456.6)), measured: [0.6] },
    "a bed in the inner corner of a bent path": {
      garden: gardenOf(
        salads,
        path("way", {
          from: [0, 0],
          to: [1, 1],
          points: [
            [1570, -900],
            [1570, 2860],
            [-900, 2860],
          ],
          width: 800,
        }),
      ),
      // Both arms: 30 to the left and 40 up.
      measured: [50],
    },
    "a shed on a path": {
      garden: gardenOf(shed("shed", { w: 2400, h: 1800 }), way(2400 + 400)),
      measured: [57.2],
      waysOut: 1,
    },
  },
});
