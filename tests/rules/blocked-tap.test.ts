import { INCH } from "../../src/index.ts";
import { blockedTap } from "../../src/rules/blocked-tap.ts";
import { bed, gardenOf, gardenWith, tap } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
const at = (x: number, y = 900) => gardenOf(salads, tap("tap", { name: "Tap", at: [x, y] }));

testRule(blockedTap, {
  passes: {
    "18 in from a tap": at(1200 + 18 * INCH),
    "18 in less half a tolerance": at(1200 + 18 * INCH - 0.4),
    "less where the gardener has set less": gardenWith(
      { limits: { tapClear: 200 } },
      salads,
      tap("tap", { at: [1400, 900] }),
    ),
  },
  flags: {
    "15 in from a tap": {
      garden: at(1200 + 15 * INCH),
      measured: [381],
      title: "Salads: 15 in from Tap",
      waysOut: ["Shift 3 in west"],
    },
    "one tolerance too near": { garden: at(1200 + 18 * INCH - 0.6), measured: [456.6] },
    "near a corner, measured straight to it (3-4-5)": { garden: at(1200 + 180, -240), measured: [300] },
    "a tap in the bed": { garden: at(1150), measured: [0] },
  },
});
