import type { Ring } from "../../src/index.ts";
import { outsideYard } from "../../src/rules/outside-yard.ts";
import { bed, gardenWith, house, shed } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const yard: Ring = [
  [0, 0],
  [9000, 0],
  [9000, 7000],
  [0, 7000],
];
const at = (x: number, y: number) =>
  gardenWith({ yard }, bed("salads", { x, y, w: 1200, h: 2500, name: "Salads" }));

testRule(outsideYard, {
  passes: {
    "a bed in the middle": at(3000, 2000),
    "a bed against the outline": at(0, 4500),
    "a bed over it by less than half a millimetre": at(-0.4, 100),
    "a house that stands on the outline": gardenWith({ yard }, house("house", { x: -500, y: 300 })),
  },
  flags: {
    "a bed 3 in over the left side": {
      garden: at(-76.2, 100),
      measured: [76.2],
      title: "Salads: 3 in outside the yard",
      waysOut: ["Shift 3 in east"],
    },
    "a bed over it by one tolerance more": { garden: at(-0.6, 100), measured: [0.6] },
    "a bed beyond a corner, by the diagonal": { garden: at(-30, -40), measured: [50] },
    "a metric bed wholly outside": {
      garden: gardenWith({ yard, units: "metric" }, bed("salads", { x: 9100, y: 900, w: 1000, h: 2000 })),
      measured: [1100],
      waysOut: ["Shift 110 cm west"],
    },
    "a shed that is too large for the yard, with no way out": {
      garden: gardenWith({ yard }, shed("shed", { x: 0, y: 0, w: 9300, h: 1000 })),
      measured: [300],
      waysOut: 0,
    },
    "a bed with no free place inside": {
      garden: gardenWith(
        { yard },
        bed("salads", { x: -70, y: 0, w: 1200, h: 2500 }),
        shed("shed", { x: 50, y: 0, w: 8950, h: 7000 }),
      ),
      measured: [70],
      waysOut: 0,
    },
  },
});
