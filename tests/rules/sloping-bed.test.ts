import { slopingBed } from "../../src/rules/sloping-bed.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });

testRule(slopingBed, {
  passes: {
    "level ground": gardenOf(salads),
    "a slope of 1:20": gardenWith({ ground: { slope: 1 / 20 } }, salads),
    "a slope beside the bed": gardenOf(ground("bank", { x: 1200, slope: 0.2 }), salads),
    "a table bed, whose legs are cut to fit": gardenWith(
      { ground: { slope: 0.1 } },
      { ...salads, legs: 700 },
    ),
  },
  flags: {
    "a slope of 1:10": {
      garden: gardenWith({ ground: { slope: 0.1 } }, salads),
      measured: [0.1],
      title: "Salads: on a slope of 1:10",
      waysOut: 0,
    },
    "a bank under half the bed": {
      garden: gardenOf(ground("bank", { w: 1200, h: 1000, slope: 0.07 }), salads),
      measured: [0.07],
      waysOut: 0,
    },
  },
});
