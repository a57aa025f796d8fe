import { unfedDripLines } from "../../src/rules/unfed-drip-lines.ts";
import { bed, fence, gardenOf, tap } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";
import { dripBed, dripGarden } from "../irrigation/drip-scene.ts";

const shut = [
  fence("n", { from: [-3000, -3000], to: [3000, -3000], thickness: 60 }),
  fence("e", { from: [3000, -3030], to: [3000, 3000], thickness: 60 }),
  fence("s", { from: [3030, 3000], to: [-3000, 3000], thickness: 60 }),
  fence("w", { from: [-3000, 3030], to: [-3000, -3030], thickness: 60 }),
];

testRule(unfedDripLines, {
  passes: {
    "a bed the main gets to": dripGarden([0, 0], dripBed("a", { x: 900, y: 900 })),
    "a bed behind a fence that is watered by hand": gardenOf(
      ...shut,
      tap("tap", { at: [9000, 0] }),
      bed("a", { x: -600, y: -1200 }),
    ),
  },
  flags: {
    "a bed shut in by a fence": {
      garden: gardenOf(
        ...shut,
        tap("tap", { at: [9000, 0] }),
        dripBed("bed-1", { x: -600, y: -1200 }),
        dripBed("b", { x: 5000, y: 0 }),
      ),
      measured: [0],
      title: "Bed 1: no main gets to its drip lines",
      waysOut: ["Water it by hand"],
    },
    "every bed with lines in a garden without a tap": {
      garden: gardenOf(dripBed("a"), dripBed("b", { x: 5000, y: 0 }), bed("c", { x: 9000, y: 0 })),
      measured: [0, 0],
    },
  },
});
