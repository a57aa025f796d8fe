import { noLiner } from "../../src/rules/no-liner.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
const bad = { ground: { contaminated: true } };

testRule(noLiner, {
  passes: {
    "clean ground": gardenOf(salads),
    "contaminated ground with fabric": gardenWith(bad, bed("salads", { bottom: { liner: "fabric" } })),
    "contaminated ground under paving": gardenOf(
      ground("yard", { w: 3000, h: 4000, cover: "paving", contaminated: true }),
      salads,
    ),
    "a table bed": gardenWith(bad, { ...salads, legs: 700 }),
    "contaminated ground beside the bed": gardenOf(
      ground("tip", { x: 1200, cover: "weeds", contaminated: true }),
      salads,
    ),
  },
  flags: {
    "contaminated ground": {
      garden: gardenWith(bad, salads),
      measured: [1],
      title: "Salads: no liner over contaminated ground",
      waysOut: ["Lay a fabric liner"],
    },
    "a patch of it under a tenth of the bed": {
      garden: gardenOf(
        ground("tip", { x: 900, y: 1500, w: 700, h: 1000, cover: "weeds", contaminated: true }),
        salads,
      ),
      measured: [0.1],
    },
  },
});
