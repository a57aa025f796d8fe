import { FOOT, INCH } from "../../src/index.ts";
import { unreachableSoil } from "../../src/rules/unreachable-soil.ts";
import { bed, fence, gardenOf, gardenWith, house, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const squash = (width: number, length = 96 * INCH) => bed("squash", { name: "Squash", w: width, h: length });
const besideFence = fence("fence", { from: [-25, -4000], to: [-25, 9000], thickness: 50 });
const standing = { gardener: { kneeling: false } };

testRule(unreachableSoil, {
  passes: {
    "a 4 ft bed between two paths": gardenOf(squash(48 * INCH)),
    "a 1219.2 mm bed, and one of 122 cm, which is the same within the tolerance": gardenWith(
      { units: "metric" },
      squash(1219.2),
      bed("roots", { x: 3000, w: 1220, h: 2600 }),
    ),
    "a bed of 4 ft that ends at a fence": gardenOf(
      squash(48 * INCH),
      fence("fence", { from: [-4000, -25], to: [4000, -25], thickness: 50 }),
    ),
    "a bed of 24 in against a fence": gardenOf(squash(24 * INCH), besideFence),
    "a bed of 24 in against a fence, turned": gardenOf(
      { ...squash(24 * INCH), at: [12 * INCH, 0], turn: 180 },
      besideFence,
    ),
    "a bed under a tree's crown, clear of its trunk": gardenOf(
      squash(48 * INCH),
      tree("tree", { at: [2200, 900], trunk: 300, canopy: 5000 }),
    ),
    "an L of arms 36 in wide": gardenOf(
      bed("squash", {
        shape: { type: "l", width: 2600, length: 2500, armWidth: 36 * INCH, armLength: 36 * INCH },
      }),
    ),
    "a round bed 4 ft across, and an oval": gardenOf(
      bed("squash", { shape: { type: "oval", width: 48 * INCH, length: 48 * INCH } }),
      bed("roots", { shape: { type: "oval", width: 48 * INCH, length: 84 * INCH }, at: [3000, 0] }),
    ),
    "a keyhole bed with a way in of 24 in and 4 ft of soil round its middle": gardenOf(
      bed("squash", {
        shape: { type: "keyhole", diameter: 120 * INCH, slotWidth: 24 * INCH, middleDiameter: 24 * INCH },
      }),
    ),
    "a bed 23 1/2 in from the next where nobody kneels": gardenWith(
      standing,
      squash(48 * INCH),
      bed("roots", { x: 48 * INCH + 23.5 * INCH, w: 1000 }),
    ),
  },
  flags: {
    "a bed of 4 ft 1 in between two paths": {
      garden: gardenOf(squash(49 * INCH)),
      measured: [24.5 * INCH],
      title: "Squash: soil ½ in out of reach",
      waysOut: ["Narrow to 48 in"],
    },
    "a metric bed of 124 cm": {
      garden: gardenWith({ units: "metric" }, squash(1240, 2500)),
      measured: [620],
      waysOut: ["Narrow to 121 cm"],
    },
    "a bed of 26 in against a fence: away from it, or narrower where it stands": {
      garden: gardenOf(squash(26 * INCH, 2000), besideFence),
      // Soil ends 1 1/2 in before the fence, behind the board.
      measured: [24.5 * INCH],
      waysOut: ["Shift 24 in east", "Narrow to 24 in"],
    },
    "a bed of 50 in built against its neighbour": {
      garden: gardenOf(squash(30 * INCH, 2400), bed("roots", { x: 30 * INCH, w: 30 * INCH, h: 2400 })),
      measured: [28.5 * INCH, 28.5 * INCH],
      waysOut: 2,
    },
    "a bed between a house and a fence, where one fits on neither side": {
      garden: gardenOf(
        squash(1000, 2000),
        besideFence,
        house("house", { x: 1000, y: -5000, w: 6000, h: 12_000 }),
      ),
      // It can be reached from its two ends alone, half its length away.
      measured: [1000],
      waysOut: ["Shorten to 48 in"],
    },
    "an L of arms 4 ft wide, which cannot be reached where they meet": {
      garden: gardenOf(
        bed("squash", {
          shape: { type: "l", width: 3000, length: 2900, armWidth: 48 * INCH, armLength: 48 * INCH },
        }),
      ),
      // On the diagonal of the square the arms share, as far from its two outer sides as from the inner corner.
      measured: [714.2],
      waysOut: ["Narrow the arms to 40 in"],
    },
    "a U whose sides are 5 ft wide": {
      garden: gardenOf(
        bed("squash", {
          shape: { type: "u", width: 12 * FOOT, length: 6 * FOOT, bayWidth: 30 * INCH, bayLength: 3 * FOOT },
        }),
      ),
      measured: [735],
      waysOut: 1,
    },
    "an oval 5 ft across": {
      garden: gardenOf(bed("squash", { shape: { type: "oval", width: 60 * INCH, length: 84 * INCH } })),
      measured: [761.5],
      waysOut: ["Narrow to 48 in"],
    },
    "a keyhole bed whose way in is too narrow": {
      garden: gardenOf(
        bed("squash", {
          shape: { type: "keyhole", diameter: 84 * INCH, slotWidth: 18 * INCH, middleDiameter: 24 * INCH },
        }),
      ),
      measured: [723.4],
      waysOut: 1,
    },
    "a free bed 5 ft deep": {
      garden: gardenOf(
        bed("squash", {
          shape: {
            type: "polygon",
            points: [
              [0, 0],
              [2600, 100],
              [2500, 1600],
              [100, 1500],
            ],
          },
        }),
      ),
      measured: [750.2],
      waysOut: 1,
    },
    "a bed of 4 ft where a child gardens": {
      garden: gardenWith({ gardener: { child: true } }, squash(48 * INCH)),
      measured: [24 * INCH],
      waysOut: ["Narrow to 36 in"],
    },
    "a bed walled in by others: there is no edge to garden from": {
      garden: gardenOf(
        squash(900, 900),
        bed("above", { x: -100, y: -500, w: 1100, h: 500 }),
        bed("below", { x: -100, y: 900, w: 1100, h: 500 }),
        bed("left", { x: -500, y: 0, w: 500, h: 900 }),
        bed("right", { x: 900, y: 0, w: 500, h: 900 }),
      ),
      measured: [0],
      title: "Squash: no edge to garden from",
      waysOut: [],
    },
  },
});
