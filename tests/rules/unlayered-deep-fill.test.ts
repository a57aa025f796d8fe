import { INCH } from "../../src/index.ts";
import { unlayeredDeepFill } from "../../src/rules/unlayered-deep-fill.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const deep = (depth: number, way: "mix" | "layered" | "native" = "mix") =>
  bed("squash", { name: "Squash", wall: { made: "metal", height: depth, thickness: 1 }, fill: { way } });

testRule(unlayeredDeepFill, {
  passes: {
    "just short of 24 in of mix": gardenOf(deep(24 * INCH - 0.6)),
    "a tall bed that is layered": gardenOf(deep(30 * INCH, "layered")),
    "the yard's own soil, which costs nothing": gardenOf(deep(30 * INCH, "native")),
  },
  flags: {
    "24 in of mix": {
      garden: gardenOf(deep(24 * INCH)),
      measured: [609.6],
      title: "Squash: 24 in of bought mix",
      waysOut: ["Layer it, 12 in of mix on top"],
    },
    "80 cm of mix, with the gardener's own figures": {
      garden: gardenWith({ units: "metric", limits: { layeredFrom: 700, layeredMix: 350 } }, deep(800)),
      measured: [800],
      waysOut: ["Layer it, 35 cm of mix on top"],
    },
  },
});
