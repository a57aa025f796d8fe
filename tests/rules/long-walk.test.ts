import { FOOT, INCH } from "../../src/index.ts";
import { longWalk } from "../../src/rules/long-walk.ts";
import { bed, door, gardenWith, gate, house, wall } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const LONG = [
  [-3000, -6000],
  [3000, -6000],
  [3000, 60_000],
  [-3000, 60_000],
] as const;
const home = [
  house("house", { x: -2500, y: -5000, w: 5000, h: 5000 }),
  door("kitchen", { at: [0, 0], width: 900, kitchen: true, swing: "in" }),
];
const bedAt = (y: number) => bed("salads", { x: -600, y, w: 1200, h: 2500, name: "Salads" });
const yard = (...items: Parameters<typeof gardenWith>[1][]) => gardenWith({ yard: LONG }, ...home, ...items);

/** A wall right across the yard: whoever comes by the gate is on one side of it, and the kitchen on the other. */
const divided = (open: number, ...items: Parameters<typeof gardenWith>[1][]) =>
  yard(
    gate("gate", { at: [0, 60_000], width: 1100 }),
    wall("left", { from: [-3100, 3000], to: [-2000, 3000], thickness: 100 }),
    wall("right", { from: [-2000 + open, 3000], to: [3100, 3000], thickness: 100 }),
    ...items,
  );

testRule(longWalk, {
  passes: {
    "a bed beyond a wall with a gap of exactly 18 in": divided(18 * INCH, bedAt(6000)),
    "a bed that nobody can get to at all, which is another rule's to say": divided(
      0,
      bed("salads", { x: -600, y: 300, w: 1200, h: 2500, name: "Salads" }),
      wall("upper", { from: [-3100, 150], to: [3100, 150], thickness: 100 }),
    ),
    "a bed 100 ft straight out of the door, less the half pace of whoever stands at it": yard(
      bedAt(100 * FOOT + 228.3),
    ),
    "a near bed": yard(bedAt(5000)),
    "a garden without a door": gardenWith({ yard: LONG }, bedAt(50_000)),
  },
  flags: {
    "a bed that can be walked to from the gate and not from the kitchen": {
      garden: divided(17 * INCH, bedAt(6000)),
      measured: [17 * INCH],
      waysOut: 0,
      title: "Salads: no way there from Door",
    },
    "beds behind one that stands too near the way through, with the shift that opens the way from the kitchen":
      {
        garden: divided(
          2000,
          bed("plug", { x: -2600, y: 3450, w: 3200, h: 1000, name: "Plug" }),
          bedAt(6000),
        ),
        measured: [400],
        waysOut: ["Shift Plug 2¼ in south"],
      },
    "a bed 10 ft too far": {
      garden: yard(bedAt(110 * FOOT + 228.35)),
      measured: [110 * FOOT],
      title: "Salads: 110 ft walk from the kitchen",
    },
    "a bed that is near as the crow flies, behind a wall with its end far off": {
      garden: gardenWith(
        {
          yard: [
            [-3000, -6000],
            [25_000, -6000],
            [25_000, 9000],
            [-3000, 9000],
          ],
        },
        ...home,
        wall("wall", { from: [-3000, 2500], to: [18_000, 2500], thickness: 100 }),
        bed("salads", { x: -2300, y: 4000, w: 1200, h: 2500, name: "Salads" }),
      ),
      // Out to the end of the wall 18 m off, round it and back: no shorter than twice the way to its end.
      measured: [38_063.401],
    },
  },
});
