import { undrainedBed } from "../../src/rules/undrained-bed.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const paving = ground("terrace", { w: 1200, h: 1000, cover: "paving" });
const block = { made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: 2 } as const;
const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });

testRule(undrainedBed, {
  passes: {
    "boards on paving, which drain at their foot": gardenOf(paving, salads),
    fabric: gardenOf({ ...salads, bottom: { mesh: null, liner: "fabric" } }),
    "masonry on soil": gardenOf({ ...salads, wall: block }),
    "masonry on paving with fabric over open joints": gardenOf(paving, {
      ...salads,
      wall: block,
      bottom: { mesh: null, liner: "fabric" },
    }),
  },
  flags: {
    "a sheet below a bed": {
      garden: gardenOf({ ...salads, bottom: { mesh: null, liner: "sheet" } }),
      measured: [1],
      title: "Salads: a sheet below it holds the water",
      waysOut: ["Use fabric instead", "Leave the liner out"],
    },
    "a sheet over contaminated ground, where a liner is needed": {
      garden: gardenWith(
        { ground: { contaminated: true } },
        { ...salads, bottom: { mesh: null, liner: "sheet" } },
      ),
      measured: [1],
      waysOut: ["Use fabric instead"],
    },
    "masonry on paving, as worth knowing": {
      garden: gardenOf(paving, { ...salads, wall: block }),
      measured: [0.4],
      grade: "note",
      waysOut: 1,
    },
  },
});
