import { INCH } from "../../src/index.ts";
import { wheelchairNoTurningSpace } from "../../src/rules/wheelchair-no-turning-space.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** A yard with nothing round the bed but ways so wide. */
const ringOf = (way: number, wheelchair = true) =>
  gardenWith(
    {
      gardener: { wheelchair },
      yard: [
        [-way, -way],
        [1200 + way, -way],
        [1200 + way, 6000 + way],
        [-way, 6000 + way],
      ],
    },
    bed("beans", { x: 0, y: 0, w: 1200, h: 6000, name: "Beans" }),
  );
const W = 36 * INCH;
/** Ways of 36 in that meet as a T at the end of the bed, with `base` of the third running off between the beds. */
const tee = (base: number) =>
  gardenWith(
    {
      gardener: { wheelchair: true },
      yard: [
        [0, 0],
        [2 * 1500 + W, 0],
        [2 * 1500 + W, W + base],
        [0, W + base],
      ],
    },
    bed("left", { x: 0, y: W, w: 1500, h: base, name: "Left" }),
    bed("right", { x: 1500 + W, y: W, w: 1500, h: base, name: "Right" }),
  );

// 2010 ADA Standards 304.3: a circle of 60 in, or a T in a square of 60 in with arms and base of 36 in.
testRule(wheelchairNoTurningSpace, {
  passes: {
    "ways of 60 in all round": ringOf(60 * INCH),
    "ways of 60 in less half a tolerance": ringOf(60 * INCH - 0.4),
    "ways of 36 in that meet as a T, its base 24 in": tee(24 * INCH),
    "narrow ways where no wheelchair is used": ringOf(40 * INCH, false),
  },
  flags: {
    "ways of 36 in with corners only": {
      garden: ringOf(W),
      measured: [0],
      title: "Beans: no room near it for a wheelchair to turn",
      waysOut: 0,
    },
    "a T whose base is 20 in": { garden: tee(20 * INCH), measured: [0, 0], waysOut: 0 },
  },
});
