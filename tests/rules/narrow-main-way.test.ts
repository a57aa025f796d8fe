import { INCH } from "../../src/index.ts";
import { narrowMainWay } from "../../src/rules/narrow-main-way.ts";
import { bed, fence, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** A court whose only opening is `wide`, to the left of a bed that stands before its mouth. */
const court = (wide: number, barrow = true) =>
  gardenWith(
    { gardener: { barrow } },
    gate("gate", { at: [0, 20_000], width: 1000 }),
    fence("left", { from: [-4000, -5000], to: [-4000, 3000], thickness: 40 }),
    fence("above", { from: [-4020, -5000], to: [4020, -5000], thickness: 40 }),
    fence("right", { from: [4000, -5000], to: [4000, 3000], thickness: 40 }),
    fence("below", { from: [-3980 + wide, 2980], to: [4020, 2980], thickness: 40 }),
    bed("far", { x: -600, y: -3000, w: 1200, h: 2500, name: "Far" }),
  );

testRule(narrowMainWay, {
  passes: {
    "a mouth of exactly 36 in": court(36 * INCH),
    "a mouth short by less than half a millimetre": court(36 * INCH - 0.4),
    "a narrow mouth where no barrow is used": court(700, false),
    "a mouth too narrow even on foot, which has its own snag": court(400),
  },
  flags: {
    "a mouth of 28 in": {
      garden: court(28 * INCH),
      measured: [711.2],
      waysOut: 0,
      title: "Way to Far: 8 in too narrow for a barrow",
    },
    "a mouth one tolerance too narrow": { garden: court(36 * INCH - 0.6), measured: [913.8], waysOut: 0 },
    "a bed that stands in the mouth, with its shift": {
      garden: gardenWith(
        { gardener: { barrow: true } },
        gate("gate", { at: [0, 20_000], width: 1000 }),
        fence("left", { from: [-4000, -5000], to: [-4000, 3000], thickness: 40 }),
        fence("above", { from: [-4020, -5000], to: [4020, -5000], thickness: 40 }),
        fence("right", { from: [4000, -5000], to: [4000, 3000], thickness: 40 }),
        // 800 mm are left of it and 32 in right of it: the wider one is the way.
        bed("plug", { x: -3180, y: 1500, w: 6347.2, h: 1100, name: "Plug" }),
        bed("far", { x: -600, y: -3000, w: 1200, h: 2500, name: "Far" }),
      ),
      measured: [32 * INCH],
      waysOut: ["Shift Plug 4 in west"],
    },
  },
});
