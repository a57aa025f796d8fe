import { emptyGarden, INCH } from "../../src/index.ts";
import { boardWastingSize } from "../../src/rules/board-wasting-size.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const wall = (corner: "ends-between-sides" | "ends-over-sides", courses = 1) =>
  ({
    made: "boards",
    board: "2x12",
    timber: "douglas-fir",
    courses,
    corner,
    bracing: "none",
    cornerPosts: true,
    capRail: null,
  }) as const;
const overSides = { w: 48 * INCH, h: 99 * INCH, wall: wall("ends-over-sides") };
const eightFeet = { ...emptyGarden("us").cutting, kerf: INCH / 8, stockLengths: [96 * INCH] };

// Published cases CS-01 to CS-03: sides of 96 in and ends of 48 in take four 8 ft boards with a kerf, three without,
// and three again with ends of 47 15/16 in. The sides lie between the ends here, so the bed is 99 in long outside.
testRule(boardWastingSize, {
  passes: {
    "a bed whose ends lie between its sides: 45 in, two to a board": gardenWith(
      { cutting: eightFeet },
      bed("salads", { w: 48 * INCH, h: 96 * INCH, wall: wall("ends-between-sides") }),
    ),
    "ends of 48 in where the saw takes nothing": gardenWith(
      { cutting: { ...eightFeet, kerf: 0 } },
      bed("salads", overSides),
    ),
    "ends of 47 15/16 in": gardenWith(
      { cutting: eightFeet },
      bed("salads", { ...overSides, w: 47.9375 * INCH }),
    ),
    "a box whose ends are stumps, as a hand may draw it on the way to a bed": gardenWith(
      { cutting: eightFeet },
      bed("salads", { ...overSides, w: 3 * INCH, h: 24 * INCH }),
    ),
    "a bed that is not of boards": gardenOf(
      bed("hill", { w: 48 * INCH, h: 99 * INCH, wall: { made: "mound", height: 200 } }),
    ),
    "a round bed": gardenOf(bed("ring", { shape: { type: "oval", width: 1219.2, length: 1219.2 } })),
  },
  flags: {
    "ends of 48 in that no longer share a board": {
      garden: gardenWith({ cutting: eightFeet }, bed("salads", overSides)),
      measured: [48 * INCH],
      waysOut: ["Make it 47 15/16 in × 99 in"],
    },
    "beds alike together, as one snag": {
      garden: gardenWith({ cutting: eightFeet }, bed("a", overSides), bed("b", { ...overSides, x: 3000 })),
      measured: [48 * INCH],
      waysOut: ["Make them 47 15/16 in × 99 in"],
    },
    "the same in metric, with a 3 mm cut": {
      garden: gardenWith(
        { units: "metric", cutting: { ...emptyGarden("metric").cutting, stockLengths: [2400] } },
        bed("beans", {
          units: "metric",
          w: 1200,
          h: 2494,
          wall: { ...wall("ends-over-sides"), board: "47x200", timber: "larch" },
        }),
      ),
      measured: [1200],
      waysOut: ["Make it 119.8 cm × 249.4 cm"],
    },
  },
});
