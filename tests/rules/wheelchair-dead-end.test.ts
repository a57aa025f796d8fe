import { INCH } from "../../src/index.ts";
import { wheelchairDeadEnd } from "../../src/rules/wheelchair-dead-end.ts";
import { bed, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** A way so wide runs up between two beds to the edge of the yard, and ends there. */
const blind = (way: number, wheelchair = true) =>
  gardenWith(
    {
      gardener: { wheelchair },
      yard: [
        [0, 0],
        [4000 + way, 0],
        [4000 + way, 9000],
        [0, 9000],
      ],
    },
    gate("gate", { at: [1500, 9000], width: 1000 }),
    bed("left", { x: 0, y: 0, w: 2000, h: 4500 }),
    bed("right", { x: 2000 + way, y: 0, w: 2000, h: 4600 }),
  );

testRule(wheelchairDeadEnd, {
  passes: {
    "a blind way of 60 in, wide enough to turn in": blind(60 * INCH),
    "a blind way where no wheelchair is used": blind(40 * INCH, false),
    "a yard without a way to end": gardenWith(
      { gardener: { wheelchair: true } },
      gate("gate"),
      bed("one", { x: 3000 }),
    ),
  },
  flags: {
    "a blind way of 40 in, 15 ft long": { garden: blind(40 * INCH), measured: [0], waysOut: 0 },
  },
});
