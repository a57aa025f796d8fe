import { noTap } from "../../src/rules/no-tap.ts";
import { bed, gardenOf, tap } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

testRule(noTap, {
  passes: {
    "a garden with a tap": gardenOf(tap("some"), bed("salads", { x: 900, y: 1500 })),
    "a yard with nothing to be reached yet": gardenOf(),
  },
  flags: {
    "beds and no tap": { garden: gardenOf(bed("salads")), measured: [0], waysOut: 0 },
  },
});
