import { INCH } from "../../src/index.ts";
import { thinMixOnTop } from "../../src/rules/thin-mix-on-top.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const layered = (mixDepth: number, depth = 30 * INCH, way: "mix" | "layered" = "layered") =>
  bed("squash", {
    name: "Squash",
    wall: { made: "metal", height: depth, thickness: 1 },
    fill: { way, mixDepth },
  });

testRule(thinMixOnTop, {
  passes: {
    "12 in of mix on top": gardenOf(layered(12 * INCH)),
    "12 in less half a tolerance": gardenOf(layered(12 * INCH - 0.4)),
    "a bed that is not layered": gardenOf(layered(100, 30 * INCH, "mix")),
    "a bed too shallow to be layered at all": gardenOf(layered(100, 18 * INCH)),
  },
  flags: {
    "8 in of mix on top": {
      garden: gardenOf(layered(8 * INCH)),
      measured: [203.2],
      title: "Squash: only 8 in of mix over the wood",
      waysOut: ["Put 12 in of mix on top"],
    },
    "one tolerance too little": { garden: gardenOf(layered(12 * INCH - 0.6)), measured: [304.2] },
    "20 cm of mix": { garden: gardenWith({ units: "metric" }, layered(200)), measured: [200] },
  },
});
