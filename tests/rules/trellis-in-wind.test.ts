import { FOOT, type Garden, type Item } from "../../src/index.ts";
import { trellisInWind } from "../../src/rules/trellis-in-wind.ts";
import { bed, fence, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const vines = (trellis: number | null, crops: Parameters<typeof bed>[1] = { crops: ["tomato"] }) =>
  bed("vines", { name: "Vines", trellis, wall: { made: "fabric", height: 600 }, ...crops });
const at = (wind: Garden["site"]["wind"], ...items: readonly Item[]) =>
  gardenWith({ site: { wind } }, ...items);
/** Solid fences 6 ft tall on two sides of what stands at x, 4 ft off: half of all directions. */
const corner = (x: number, open = 0) => [
  fence(`west-${x}`, { from: [x - 1200, -12_000], to: [x - 1200, 4000], open, height: 6 * FOOT }),
  fence(`south-${x}`, { from: [x - 1200, 4000], to: [x + 12_000, 4000], open, height: 6 * FOOT }),
];

testRule(trellisInWind, {
  passes: {
    "any height where it is sheltered": at("sheltered", vines(9 * FOOT)),
    "6 ft in the open": at("open", vines(6 * FOOT)),
    "4 ft where it is windy, less half a tolerance over": at("windy", vines(4 * FOOT + 0.4)),
    "no trellis": at("windy", vines(null)),
    "6 ft in a corner of tall fences where it is windy": at("windy", vines(6 * FOOT), ...corner(0)),
  },
  flags: {
    "6 ft where it is windy": {
      garden: at("windy", vines(6 * FOOT)),
      measured: [6 * FOOT],
      title: "Vines: brace the 72 in trellis against wind",
      waysOut: ["Lower the trellis to 48 in"],
    },
    "7 ft in the open, which is worth knowing": {
      garden: at("open", vines(7 * FOOT)),
      measured: [7 * FOOT],
      grade: "note",
    },
    "pole beans, which climb higher than that": {
      garden: at("windy", vines(6 * FOOT, { crops: ["bean-pole"] })),
      measured: [6 * FOOT],
      waysOut: 0,
    },
    "a corner of fences that let the wind through": {
      garden: at("windy", vines(6 * FOOT), ...corner(0, 0.7)),
      measured: [6 * FOOT],
    },
    "pole beans that a sheltered bed would suit": {
      garden: at(
        "windy",
        vines(6 * FOOT, { crops: ["bean-pole"] }),
        bed("lee", { name: "Lee bed", x: 9000, wall: { made: "fabric", height: 600 }, crops: ["beet"] }),
        ...corner(9000).slice(0, 1),
        fence("lee-south", { from: [7800, 4000], to: [19_000, 4000], height: 6 * FOOT }),
      ),
      measured: [6 * FOOT],
      waysOut: ["Put the trellis and its crop in Lee bed, which is sheltered"],
    },
  },
});
