import { INCH } from "../../src/index.ts";
import { wheelchairHighRim } from "../../src/rules/wheelchair-high-rim.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const metal = (height: number) => ({ made: "metal" as const, height, thickness: 2 });
const one = (changes: Parameters<typeof bed>[1], wheelchair = true) =>
  gardenWith({ gardener: { wheelchair } }, bed("beans", { w: 800, h: 2000, name: "Beans", ...changes }));

// 2010 ADA Standards 308.3.2: at most 34 in to reach over.
testRule(wheelchairHighRim, {
  passes: {
    "a rim at 34 in": one({ wall: metal(34 * INCH) }),
    "a rim at 34 in and half a tolerance": one({ wall: metal(34 * INCH + 0.4) }),
    "a high rim where no wheelchair is used": one({ wall: metal(1000) }, false),
  },
  flags: {
    "a rim at 36 in": {
      garden: one({ wall: metal(36 * INCH) }),
      measured: [914.4],
      title: "Beans: rim 2 in too high for a seated gardener",
    },
    "one tolerance too high": { garden: one({ wall: metal(34 * INCH + 0.6) }), measured: [864.2] },
  },
});
