import { INCH } from "../../src/index.ts";
import { wheelchairTightHalfTurn } from "../../src/rules/wheelchair-tight-half-turn.ts";
import { bed, fence, gardenWith, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const W = 36 * INCH;
/** A bed 36 in wide and 120 in long, `side` from the fences at its long sides and `end` from those at both ends. */
const alley = (
  side: number,
  end: number,
  changes: { width?: number; wheelchair?: boolean; below?: number } = {},
) => {
  const { width = W, wheelchair = true, below = end } = changes;
  const [right, top, bottom] = [width + side + 20, -end - 20, 3048 + below + 20];
  return gardenWith(
    { gardener: { wheelchair } },
    fence("left", { from: [-side - 20, top], to: [-side - 20, bottom], thickness: 40 }),
    fence("right", { from: [right, top], to: [right, bottom], thickness: 40 }),
    fence("above", { from: [-side - 40, top], to: [right + 20, top], thickness: 40 }),
    fence("below", { from: [-side - 40, bottom], to: [right + 20, bottom], thickness: 40 }),
    bed("beans", { x: 0, y: 0, w: width, h: 3048, name: "Beans" }),
  );
};

const withTrunk = (garden: ReturnType<typeof alley>) => ({
  ...garden,
  items: [...garden.items, tree("pear", { at: [-40 * INCH - 60, 1524], trunk: 120 })],
});

// 2010 ADA Standards 403.5.2 and its exception: 42-48-42, or 60 between ways of 36 in, round less than 48 in.
testRule(wheelchairTightHalfTurn, {
  passes: {
    "42 in ways and 48 in at the end": alley(42 * INCH, 48 * INCH),
    "each short by half a tolerance": alley(42 * INCH - 0.4, 48 * INCH - 0.4),
    "a trunk 40 in off the middle of a side, far from both turns": withTrunk(alley(60 * INCH, 48 * INCH)),
    "36 in ways and 60 in at the end": alley(36 * INCH, 60 * INCH),
    "a bed 48 in wide, to which the rule does not apply": alley(37 * INCH, 38 * INCH, { width: 48 * INCH }),
    "a tight end where the other is wide": alley(37 * INCH, 38 * INCH, { below: 61 * INCH }),
    "a bed worked from one side, 24 in wide": alley(37 * INCH, 38 * INCH, { width: 24 * INCH }),
    "a tight turn where no wheelchair is used": alley(37 * INCH, 38 * INCH, { wheelchair: false }),
  },
  flags: {
    "36 in ways and 54 in at the end, with the shift from one end towards the other": {
      garden: alley(36 * INCH, 54 * INCH),
      measured: [54 * INCH],
      title: "Beans: too tight for a wheelchair to get round",
      waysOut: 1,
    },
    "42 in ways and one tolerance less than 48 in": {
      garden: alley(43 * INCH, 48 * INCH - 0.7, { below: 40 * INCH }),
      measured: [48 * INCH - 0.7],
      waysOut: 1,
    },
  },
});
