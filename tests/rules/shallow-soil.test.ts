import { INCH } from "../../src/index.ts";
import { shallowSoil } from "../../src/rules/shallow-soil.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const fabric = (depth: number) => ({ wall: { made: "fabric", height: depth } as const });
const paving = ground("terrace", { x: -500, y: -500, w: 3000, h: 4000, cover: "paving" });
const boards = (courses: number) =>
  bed("salads").wall.made === "boards" && { ...bed("salads").wall, courses };
const twoBySix = (courses: number) => {
  const wall = boards(courses);
  if (!wall) throw new RangeError("beds come out of the barrow with boards");
  return wall;
};

testRule(shallowSoil, {
  passes: {
    "6 in over open ground": gardenOf(bed("salads", fabric(6 * INCH))),
    "6 in less half a tolerance": gardenOf(bed("salads", fabric(6 * INCH - 0.4))),
    "12 in over paving": gardenOf(paving, bed("salads", fabric(12 * INCH))),
    "12 in over paving, less half a tolerance": gardenOf(paving, bed("salads", fabric(12 * INCH - 0.4))),
    "a metric bed 305 mm deep over paving": gardenWith(
      { units: "metric" },
      paving,
      bed("salads", fabric(305)),
    ),
    "tomatoes with 12 in over open ground": gardenOf(
      bed("salads", { ...fabric(12 * INCH), crops: ["tomato"] }),
    ),
    "tomatoes with 24 in over paving": gardenOf(
      paving,
      bed("salads", { ...fabric(24 * INCH), crops: ["tomato"] }),
    ),
    "lettuce with 6 in of soil in a table bed": gardenOf(
      paving,
      bed("salads", { ...fabric(6 * INCH), legs: 700, crops: ["lettuce-leaf"] }),
    ),
    "mesh, which roots pass": gardenOf(
      bed("salads", { ...fabric(8 * INCH), bottom: { mesh: { opening: 12.7 } } }),
    ),
    "8 in over paving where the gardener has set 8 in": gardenWith(
      { limits: { hardDepth: 8 * INCH } },
      paving,
      bed("salads", fabric(8 * INCH)),
    ),
  },
  flags: {
    "10 in over paving in a metal frame": {
      garden: gardenOf(
        paving,
        bed("salads", { name: "Salads", wall: { made: "metal", height: 10 * INCH, thickness: 1 } }),
      ),
      measured: [254],
      title: "Salads: soil 2 in too shallow over paving",
      waysOut: ["Make the wall 12 in high"],
    },
    "two courses of 2x6 over paving, which stand 11 in": {
      garden: gardenOf(paving, bed("salads", { name: "Salads", wall: twoBySix(2) })),
      measured: [11 * INCH],
      title: "Salads: soil 1 in too shallow over paving",
      waysOut: ["One course higher"],
    },
    "one tolerance too little over paving": {
      garden: gardenOf(paving, bed("salads", fabric(12 * INCH - 0.6))),
      measured: [304.2],
    },
    "one tolerance too little over open ground": {
      garden: gardenOf(bed("salads", fabric(6 * INCH - 0.6))),
      measured: [151.8],
    },
    "tomatoes over paving, which may be left out": {
      garden: gardenOf(
        paving,
        bed("salads", { name: "Squash", wall: twoBySix(3), crops: ["tomato", "lettuce-leaf"] }),
      ),
      measured: [16.5 * INCH],
      title: "Squash: soil 7½ in too shallow for tomato",
      waysOut: ["Two courses higher", "Grow basil instead of tomato", "Leave out tomato"],
    },
    "tomatoes over paving, with room for them in a bed on open ground": {
      garden: gardenOf(
        paving,
        bed("salads", { name: "Squash", wall: twoBySix(3), crops: ["tomato"] }),
        bed("open", { name: "Open bed", x: 5000, ...fabric(13 * INCH) }),
      ),
      measured: [16.5 * INCH],
      waysOut: [
        "Two courses higher",
        "Grow basil instead of tomato",
        "Grow tomato in Open bed",
        "Leave out tomato",
      ],
    },
    "a bed that is not filled high enough": {
      garden: gardenOf(paving, bed("salads", { wall: twoBySix(3), fill: { belowRim: 6 * INCH } })),
      measured: [10.5 * INCH],
      waysOut: ["Fill to 4½ in below the rim"],
    },
    "asparagus over open ground, in masonry": {
      garden: gardenWith(
        { units: "metric" },
        bed("salads", {
          wall: { made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: 2 },
          crops: ["asparagus"],
        }),
      ),
      measured: [400],
      waysOut: ["One course higher", "Grow strawberry instead of asparagus", "Leave out asparagus"],
    },
    "a mound on ground that roots must not enter": {
      garden: gardenWith(
        { ground: { contaminated: true } },
        bed("salads", { wall: { made: "mound", height: 200 } }),
      ),
      measured: [200],
      waysOut: ["Make the mound 12 in high"],
    },
    "a sheet below the bed": {
      garden: gardenOf(bed("salads", { ...fabric(250), bottom: { liner: "sheet" } })),
      measured: [250],
    },
    "a deck under a corner of the bed": {
      garden: gardenOf(ground("deck", { w: 300, h: 300, cover: "deck" }), bed("salads", fabric(240))),
      measured: [240],
    },
    "five crops at once, in a table bed": {
      garden: gardenOf(
        bed("salads", {
          ...fabric(120),
          legs: 700,
          crops: ["radish", "spinach", "basil", "thyme", "chives"],
        }),
      ),
      measured: [120],
      title: "Bed: soil 1¼ in too shallow for five crops",
      waysOut: ["Make the wall 6 in high", "Leave out five crops"],
    },
    "more courses than can be stacked, with no way out": {
      garden: gardenOf(
        paving,
        bed("salads", {
          wall: { made: "masonry", unitLength: 200, unitHeight: 20, thickness: 90, courses: 5 },
        }),
      ),
      measured: [100],
      waysOut: 0,
    },
  },
});
