import { INCH } from "../../src/index.ts";
import { narrowPath } from "../../src/rules/narrow-path.ts";
import { bed, fence, gardenOf, gardenWith, house, shed, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { name: "Salads", w: 1200, h: 2500 });
const squash = (gap: number) => bed("squash", { name: "Squash", x: 1200 + gap, w: 900, h: 1800 });

testRule(narrowPath, {
  passes: {
    "a bed alone": gardenOf(salads),
    "a gap of 24 in, and of 61 cm": gardenWith(
      { units: "metric" },
      salads,
      squash(24 * INCH),
      bed("roots", { x: -1510, w: 900 }),
    ),
    "a gap short by less than half a millimetre": gardenOf(salads, squash(24 * INCH - 0.4)),
    "beds built together, up to a joint of 2 in": gardenOf(
      salads,
      squash(0),
      bed("roots", { x: -900 - 2 * INCH, w: 900 }),
    ),
    "a gap of 18 in where nobody kneels": gardenWith(
      { gardener: { kneeling: false } },
      salads,
      squash(18 * INCH),
    ),
    "a narrow gap that a limit of the gardener's own allows": gardenWith(
      { limits: { kneelingWay: 500 } },
      salads,
      squash(505),
    ),
    "a fence close to a house, with no bed beside it": gardenOf(
      house("house", { w: 8000, h: 3000 }),
      fence("fence", { from: [0, 3300], to: [8000, 3300] }),
    ),
    "overlapping beds, which have a rule of their own": gardenOf(salads, squash(-200)),
  },
  flags: {
    "narrow beds close together, which may be built as one": {
      garden: gardenOf(
        bed("salads", { name: "Salads", w: 500, h: 2500 }),
        bed("squash", { name: "Squash", x: 700, w: 600, h: 2500 }),
      ),
      measured: [200],
      waysOut: ["Shift Salads 16⅛ in west", "Shift Squash 16⅛ in east", "Close up against Squash"],
    },
    "a gap of 23 1/2 in": {
      garden: gardenOf(salads, squash(23.5 * INCH)),
      measured: [23.5 * INCH],
      title: "Salads to Squash: path ½ in too narrow",
      waysOut: [
        "Shift Salads ½ in west",
        "Shift Squash ½ in east",
        "Narrow Salads to 46¾ in",
        "Narrow Squash to 34 15/16 in",
      ],
    },
    "a metric gap of 60 cm, short by 1 cm": {
      garden: gardenWith({ units: "metric" }, salads, squash(600)),
      measured: [600],
      waysOut: 4,
    },
    "beds near only at their corners": {
      garden: gardenOf(salads, bed("squash", { x: 1500, y: 2900, w: 900, h: 700 })),
      measured: [500],
      waysOut: [
        "Shift Salads 4 5/16 in north-west",
        "Shift Bed 4 5/16 in south-east",
        "Close up against Bed",
      ],
    },
    "a gap to a fence, once, and not again to the edge of the yard behind it": {
      garden: gardenWith(
        {
          yard: [
            [-450, -9000],
            [9000, -9000],
            [9000, 9000],
            [-450, 9000],
          ],
        },
        salads,
        fence("fence", { name: "Fence", from: [-425, -9000], to: [-425, 9000], thickness: 50 }),
      ),
      measured: [400],
      title: "Salads to Fence: path 8¼ in too narrow",
      waysOut: ["Shift 8¼ in east", "Narrow to 39 in"],
    },
    "a gap to the edge of the yard": {
      garden: gardenWith(
        {
          yard: [
            [-450, -9000],
            [9000, -9000],
            [9000, 9000],
            [-450, 9000],
          ],
        },
        salads,
      ),
      measured: [450],
      title: "Salads to the edge of the yard: path 6 5/16 in too narrow",
      waysOut: ["Shift 6 5/16 in east", "Narrow to 40 15/16 in"],
    },
    "a gap to a corner between house and shed, told once": {
      garden: gardenOf(
        salads,
        house("house", { x: -5000, y: -3400, w: 12_000, h: 3000 }),
        shed("shed", { x: -2400, y: 4000, w: 1000, h: 900 }),
      ),
      measured: [400],
      waysOut: 3,
    },
    "a gap to a tree's trunk, which nothing is closed up against": {
      garden: gardenOf(salads, tree("tree", { at: [1700, 1000], trunk: 300 })),
      measured: [350],
      waysOut: ["Shift 10¼ in west", "Narrow to 37 in"],
    },
    "a gap that has room on neither side: narrowing is all that is left": {
      garden: gardenOf(
        salads,
        squash(500),
        fence("left", { from: [-650, -4000], to: [-650, 9000], thickness: 50 }),
        fence("right", { from: [2100 + 500 + 650, -4000], to: [2100 + 500 + 650, 9000], thickness: 50 }),
      ),
      measured: [500],
      waysOut: ["Narrow Salads to 42 15/16 in", "Narrow Squash to 31 1/8 in"].length,
    },
    "a gap of 35 in where a wheelchair is used": {
      garden: gardenWith({ gardener: { wheelchair: true } }, salads, squash(35 * INCH)),
      measured: [35 * INCH],
      title: "Salads to Squash: path 1 in too narrow",
      waysOut: 4,
    },
  },
});
