import { FOOT, type Garden, INCH } from "../../src/index.ts";
import { wheelchairNoPassingSpace } from "../../src/rules/wheelchair-no-passing-space.ts";
import { bed, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** An alley so wide and long, a gate at its one end and a bed at the other. */
const alley = (width: number, length: number, wheelchair = true) =>
  gardenWith(
    {
      gardener: { wheelchair },
      yard: [
        [0, 0],
        [width, 0],
        [width, length],
        [0, length],
      ],
    },
    gate("gate", { at: [width / 2, length], width: 900 }),
    bed("beans", { x: 100, y: 100, w: 700, h: 1000, name: "Beans" }),
  );

/**
 * The same alley, 40 in wide and 250 ft long, with another as wide off its middle, which goes on for so long: a T takes
 * 36 in for its bar and 48 in past it.
 */
const branched = (branch: number, edition: Garden["gardener"]["edition"] = "ada-2010") => {
  const [width, length] = [40 * INCH, 250 * FOOT];
  const [from, to] = [length / 2, length / 2 + width];
  return gardenWith(
    {
      gardener: { wheelchair: true, edition },
      yard: [
        [0, 0],
        [width, 0],
        [width, from],
        [width + branch, from],
        [width + branch, to],
        [width, to],
        [width, length],
        [0, length],
      ],
    },
    gate("gate", { at: [width / 2, length], width: 900 }),
    bed("beans", { x: 100, y: 100, w: 700, h: 1000, name: "Beans" }),
  );
};

// 2010 ADA Standards 403.5.3: every 200 ft where the way is narrower than 60 in.
testRule(wheelchairNoPassingSpace, {
  passes: {
    "190 ft of 40 in": alley(40 * INCH, 190 * FOOT),
    "250 ft with a way off it in which bar and base of a T just fit": branched(44 * INCH),
    "250 ft of 60 in": alley(61 * INCH, 250 * FOOT),
    "250 ft where no wheelchair is used": alley(40 * INCH, 250 * FOOT, false),
  },
  flags: {
    "250 ft with a way off it that ends an inch before bar and base of a T fit": {
      garden: branched(43 * INCH),
      measured: [74_693.85],
      waysOut: 0,
    },
    // From the gate to half a width (32 in less a tolerance) before the bed, which ends 1100 mm from the far end.
    "250 ft of 40 in": { garden: alley(40 * INCH, 250 * FOOT), measured: [74_693.85], waysOut: 0 },
  },
});
