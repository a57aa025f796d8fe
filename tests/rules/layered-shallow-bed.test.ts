import { INCH } from "../../src/index.ts";
import { layeredShallowBed } from "../../src/rules/layered-shallow-bed.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const deep = (depth: number, way: "mix" | "layered" = "layered") =>
  bed("squash", { name: "Squash", wall: { made: "metal", height: depth, thickness: 1 }, fill: { way } });

testRule(layeredShallowBed, {
  passes: {
    "24 in, layered": gardenOf(deep(24 * INCH)),
    "24 in less half a tolerance": gardenOf(deep(24 * INCH - 0.4)),
    "11 in of mix": gardenOf(deep(11 * INCH, "mix")),
  },
  flags: {
    "one tolerance too shallow": { garden: gardenOf(deep(24 * INCH - 0.6)), measured: [609] },
    "12 in, layered": {
      garden: gardenOf(deep(12 * INCH)),
      measured: [304.8],
      title: "Squash: layered at 12 in deep",
      waysOut: ["Fill it with mix throughout"],
    },
    "45 cm, layered": { garden: gardenWith({ units: "metric" }, deep(450)), measured: [450] },
  },
});
