import { INCH } from "../../src/index.ts";
import { wheelchairLowSoil } from "../../src/rules/wheelchair-low-soil.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const metal = (height: number) => ({ made: "metal" as const, height, thickness: 2 });
const one = (changes: Parameters<typeof bed>[1], wheelchair = true) =>
  gardenWith({ gardener: { wheelchair } }, bed("beans", { w: 800, h: 2000, name: "Beans", ...changes }));

// 2010 ADA Standards 308.3.1: the low side reach is 15 in above the ground.
testRule(wheelchairLowSoil, {
  passes: {
    "soil at 15 in": one({ wall: metal(15 * INCH) }),
    "soil at 15 in less half a tolerance": one({ wall: metal(15 * INCH - 0.4) }),
    "low soil where no wheelchair is used": one({ wall: metal(200) }, false),
  },
  flags: {
    "soil at 12 in": {
      garden: one({ wall: metal(12 * INCH) }),
      measured: [304.8],
      title: "Beans: soil 3 in too low for a seated gardener",
    },
    "one tolerance too low": { garden: one({ wall: metal(15 * INCH - 0.6) }), measured: [380.4] },
  },
});
