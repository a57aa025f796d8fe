import { unsafeTap } from "../../src/rules/unsafe-tap.ts";
import { gardenOf, tap } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

testRule(unsafeTap, {
  passes: { "a tap with a vacuum breaker": gardenOf(tap("tap", { backflow: true })) },
  flags: {
    "each tap without one": {
      garden: gardenOf(tap("tap-1"), tap("tap-2", { backflow: true }), tap("tap-3", { at: [500, 700] })),
      measured: [0, 0],
      title: "Tap 1: no vacuum breaker",
      waysOut: ["Fit a vacuum breaker"],
    },
  },
});
