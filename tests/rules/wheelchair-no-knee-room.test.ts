import { INCH } from "../../src/index.ts";
import { wheelchairNoKneeRoom } from "../../src/rules/wheelchair-no-knee-room.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const metal = (height: number) => ({ made: "metal" as const, height, thickness: 2 });
const one = (changes: Parameters<typeof bed>[1], wheelchair = true) =>
  gardenWith({ gardener: { wheelchair } }, bed("beans", { w: 800, h: 2000, name: "Beans", ...changes }));

// 2010 ADA Standards 306.3 and 902.3: knee room to 27 in under a rim at 28 to 34 in, 30 in wide.
testRule(wheelchairNoKneeRoom, {
  passes: {
    "a box 7 in deep on legs of 27 in": one({ wall: metal(7 * INCH), legs: 27 * INCH }),
    "a bed on the ground": one({ wall: metal(500) }),
    "a low table where no wheelchair is used": one({ wall: metal(200), legs: 400 }, false),
  },
  flags: {
    "a box 8 in deep under a rim at 34 in": {
      garden: one({ wall: metal(8 * INCH), legs: 26 * INCH }),
      measured: [660.4],
      waysOut: 0,
    },
    "legs one tolerance too short": {
      garden: one({ wall: metal(6 * INCH), legs: 27 * INCH - 0.6 }),
      measured: [685.2],
    },
  },
});
