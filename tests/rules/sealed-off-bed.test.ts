import { INCH } from "../../src/index.ts";
import { sealedOffBed } from "../../src/rules/sealed-off-bed.ts";
import { bed, fence, gardenOf, gate, house } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const yardGate = gate("gate", { at: [0, 20_000], width: 1000 });
const salads = bed("salads", { x: -600, y: -1250, w: 1200, h: 2500, name: "Salads" });
/** A court of four fences about the bed, its two upper corners `open` apart from the fence above. */
const court = (open: number) => [
  fence("left", { from: [-2500, -2500], to: [-2500, 2500], thickness: 40 }),
  fence("right", { from: [2600, -2500], to: [2600, 2500], thickness: 40 }),
  fence("below", { from: [-2520, 2500], to: [2620, 2500], thickness: 40 }),
  fence("above", {
    from: [-2520, -2520 - open],
    to: [2620, -2520 - open],
    thickness: 40,
    name: "Back fence",
  }),
];

testRule(sealedOffBed, {
  passes: {
    "a bed on open ground": gardenOf(yardGate, salads),
    "a garden with neither gate nor door, where all ground counts": gardenOf(salads, ...court(0)),
    "a way of exactly 18 in": gardenOf(yardGate, salads, ...court(18 * INCH)),
    "a way short by less than half a millimetre": gardenOf(yardGate, salads, ...court(18 * INCH - 0.4)),
  },
  flags: {
    "a bed shut in by fences that touch": {
      garden: gardenOf(yardGate, salads, ...court(0)),
      measured: [0],
      waysOut: 0,
      title: "No way to Salads",
    },
    "a way one tolerance too narrow": {
      garden: gardenOf(yardGate, salads, ...court(18 * INCH - 0.6)),
      measured: [456.6],
      waysOut: 0,
    },
    "a bed behind another that stands too near the house, with the shift that opens the way": {
      garden: gardenOf(
        gate("gate", { at: [0, 20_000], width: 1000 }),
        house("house", { x: -6000, y: -6000, w: 2000, h: 12_000 }),
        fence("above", { from: [-5000, -5000], to: [3000, -5000], thickness: 40 }),
        fence("right", { from: [3000, -5020], to: [3000, 1000], thickness: 40 }),
        fence("below", { from: [-2400, 1000], to: [3020, 1000], thickness: 40 }),
        bed("plug", { x: -3700, y: 0, w: 1180, h: 980, name: "Plug" }),
        bed("far", { x: -1000, y: -3500, w: 1200, h: 2500, name: "Far" }),
      ),
      measured: [300],
      waysOut: ["Shift Plug 6 3/16 in east"],
      title: "No way to Far",
    },
  },
});
