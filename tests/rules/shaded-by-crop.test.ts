import { type CropId, type Garden, newPlanting, type Planting } from "../../src/index.ts";
import { shadedByCrop } from "../../src/rules/shaded-by-crop.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const site = { latitude: 45, north: 0, lastFrost: "04-28", firstFrost: "10-14" };
/** Upright along north and south: the first crop has the northern part, the second the southern. */
const of = (crops: readonly CropId[], changes: Partial<Garden["site"]> = {}, turn = 0) =>
  gardenWith(
    { site: { ...site, ...changes } },
    bed("rows", { name: "Rows", w: 1200, h: 2400, turn, wall: { made: "fabric", height: 500 }, crops }),
  );
const put = (crop: CropId, changes: Partial<Planting>): Planting => ({ ...newPlanting(crop), ...changes });
const north = { at: [0, -600] as const, width: 1200, length: 1200 };
const south = { at: [0, 600] as const, width: 1200, length: 1200 };

testRule(shadedByCrop, {
  passes: {
    "corn on the pole side of peppers": of(["corn-sweet", "pepper"]),
    "corn on the sunny side of lettuce, which is glad of it": of(["lettuce-leaf", "corn-sweet"]),
    "crops of about one height": of(["pepper", "eggplant"]),
    "corn on the north side where the sun stands in the north, and the bed is turned about": of(
      ["pepper", "corn-sweet"],
      { latitude: -45, lastFrost: "10-28", firstFrost: "04-14" },
    ),
    "rows that run north and south side by side": of(["pepper", "corn-sweet"], {}, 90),
    "the equator, where the sun stands overhead": of(["pepper", "corn-sweet"], { latitude: 0 }),
    "a low crop that has gone before the tall one is set": gardenWith(
      { site },
      bed("rows", {
        plantings: [
          put("onion-bulb", { patch: north, from: "03-10", until: "04-20" }),
          put("corn-sweet", { patch: south, from: "05-10" }),
        ],
      }),
    ),
  },
  flags: {
    "corn on the sunny side of peppers: they change places": {
      garden: of(["pepper", "corn-sweet"]),
      // Corn 78 in on average, peppers 27 in: at 45° the shadow is as long as the difference, 51 in of 47 in.
      measured: [1],
      title: "Rows: pepper in the shade of the sweet corn",
      waysOut: ["Let sweet corn and pepper change places", "Grow green onion instead of pepper"],
    },
    "corn on the north side, south of the equator": {
      garden: of(["corn-sweet", "pepper"], { latitude: -45, lastFrost: "10-28", firstFrost: "04-14" }),
      measured: [1],
      waysOut: 2,
    },
    "patches of their own": {
      garden: gardenWith(
        { site },
        bed("rows", {
          shape: { type: "rectangle", width: 1200, length: 2400 },
          wall: { made: "fabric", height: 500 },
          plantings: [put("pepper", { patch: north }), put("corn-sweet", { patch: south })],
        }),
      ),
      measured: [1],
      waysOut: ["Let sweet corn and pepper change places", "Grow green onion instead of pepper"],
    },
    "corn in the next bed to the south": {
      garden: gardenWith(
        { site },
        bed("low", {
          name: "Low bed",
          w: 2400,
          h: 1200,
          crops: ["pepper"],
          wall: { made: "fabric", height: 500 },
        }),
        bed("tall", {
          name: "Corn",
          w: 2400,
          h: 1200,
          y: 1700,
          crops: ["corn-sweet"],
          wall: { made: "fabric", height: 500 },
        }),
      ),
      measured: [0.66],
      within: 0.02,
      title: "Low bed: pepper in the shade of the sweet corn of Corn",
      waysOut: ["Grow green onion instead of pepper", "Grow pepper in Corn, and sweet corn here"],
    },
  },
});
