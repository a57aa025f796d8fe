import { INCH } from "../../src/index.ts";
import { bedInTreeRoots } from "../../src/rules/bed-in-tree-roots.ts";
import { bed, gardenOf, gardenWith, tree } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });
// A crown 60 in wide: its roots are taken to reach twice its radius, 60 in.
const plum = (x: number) => tree("plum", { name: "Plum", at: [x, 900], trunk: 100, canopy: 60 * INCH });

testRule(bedInTreeRoots, {
  passes: {
    "60 in from the trunk": gardenOf(salads, plum(1200 + 60 * INCH)),
    "60 in less half a tolerance": gardenOf(salads, plum(1200 + 60 * INCH - 0.4)),
    "a table bed, which stands clear of roots": gardenOf({ ...salads, legs: 700 }, plum(1400)),
    "less where the gardener has set less": gardenWith(
      { limits: { rootZone: 1 } },
      salads,
      plum(1200 + 30 * INCH),
    ),
  },
  flags: {
    "50 in from the trunk": {
      garden: gardenOf(salads, plum(1200 + 50 * INCH)),
      measured: [1270],
      title: "Salads: in the roots of Plum",
    },
    "one tolerance too near": { garden: gardenOf(salads, plum(1200 + 60 * INCH - 0.6)), measured: [1523.4] },
    "a bed too deep among roots to be shifted": {
      garden: gardenOf(salads, tree("oak", { at: [1500, 900], canopy: 12_000 })),
      measured: [300],
      waysOut: 0,
    },
  },
});
