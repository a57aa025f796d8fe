import { untestedFill } from "../../src/rules/untested-fill.ts";
import { bed, gardenOf, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const straw = { material: "straw", depth: 75 } as const;
const bark = { material: "bark", depth: 50 } as const;

testRule(untestedFill, {
  passes: {
    "a garden without beds": gardenOf(tree("tree")),
    "compost that came out clean": gardenOf(bed("a", { fill: { tested: true } })),
    "mix without compost": gardenOf(
      bed("a", { fill: { recipe: { compost: 0, topsoil: 100, soilless: 0 } } }),
    ),
    "the yard's own soil under bark": gardenOf(bed("a", { fill: { way: "native" }, mulch: bark })),
  },
  flags: {
    "all untested beds at once": {
      garden: gardenOf(bed("a"), bed("b", { x: 3000, fill: { tested: true } }), bed("c", { x: 6000 })),
      measured: [2],
      title: "Test the compost for two beds before it is delivered",
      waysOut: ["Mark as tested"],
    },
    "straw on the yard's own soil": {
      garden: gardenOf(bed("a", { fill: { way: "native" }, mulch: straw })),
      measured: [1],
    },
  },
});
