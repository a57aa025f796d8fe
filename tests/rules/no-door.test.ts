import { noDoor } from "../../src/rules/no-door.ts";
import { bed, door, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

testRule(noDoor, {
  passes: {
    "a garden with a door": gardenOf(door("some"), bed("salads", { x: 900, y: 1500 })),
    "a yard with nothing to be reached yet": gardenOf(),
  },
  flags: {
    "beds and no door": { garden: gardenOf(bed("salads")), measured: [0], waysOut: 0 },
  },
});
