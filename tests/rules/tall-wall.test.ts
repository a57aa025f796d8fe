import { INCH } from "../../src/index.ts";
import { tallWall } from "../../src/rules/tall-wall.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const metal = (height: number) =>
  bed("salads", { name: "Salads", wall: { made: "metal", height, thickness: 1 } });
const boards = (board: string, courses: number) =>
  bed("salads", {
    name: "Salads",
    wall: {
      made: "boards",
      board,
      timber: "larch",
      courses,
      corner: "ends-over-sides",
      cornerPosts: true,
      capRail: null,
      bracing: "stakes-and-ties",
    },
  });

testRule(tallWall, {
  passes: {
    "24 in": gardenOf(metal(24 * INCH)),
    "24 in and half a tolerance": gardenOf(metal(24 * INCH + 0.4)),
    "610 mm": gardenWith({ units: "metric" }, metal(610)),
    "four courses of 2x6, which stand 22 in": gardenOf(boards("2x6", 4)),
    "a table bed, whose box is low": gardenOf({ ...metal(180), legs: 700 }),
  },
  flags: {
    "24 in and one tolerance more": { garden: gardenOf(metal(24 * INCH + 0.6)), measured: [610.2] },
    "five courses of 2x6": {
      garden: gardenOf(boards("2x6", 5)),
      measured: [27.5 * INCH],
      title: "Salads: 27½ in high, ask a professional",
      waysOut: ["One course lower"],
    },
    "a mound, in metric": {
      garden: gardenWith({ units: "metric" }, bed("salads", { wall: { made: "mound", height: 800 } })),
      measured: [800],
      waysOut: ["Lower it to 61 cm"],
    },
    "one course too high in itself": {
      garden: gardenOf(
        bed("salads", {
          wall: { made: "masonry", unitLength: 900, unitHeight: 700, thickness: 200, courses: 1 },
        }),
      ),
      measured: [700],
      waysOut: 0,
    },
  },
});
