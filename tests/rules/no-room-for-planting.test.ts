import { type CropId, newPlanting } from "../../src/index.ts";
import { noRoomForPlanting } from "../../src/rules/no-room-for-planting.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const site = { latitude: 41, lastFrost: "04-28", firstFrost: "10-14" };
const narrow = (crops: readonly CropId[], w = 500) =>
  bed("narrow", { name: "Narrow bed", w, h: 2400, wall: { made: "fabric", height: 400 }, crops });
const patch = { at: [0, 0] as const, width: 500, length: 500 };

testRule(noRoomForPlanting, {
  passes: {
    "tomatoes where one fits": gardenWith({ site }, narrow(["tomato"], 24 * 25.4)),
    "nothing planted": gardenWith({ site }, narrow([])),
    "a patch that another has taken, of which another rule speaks": gardenWith(
      { site },
      bed("narrow", {
        plantings: [
          { ...newPlanting("kale"), from: "05-01", patch },
          { ...newPlanting("chard"), from: "05-01", patch },
        ],
      }),
    ),
  },
  flags: {
    "a tomato in a bed narrower than its spacing": {
      garden: gardenWith({ site }, narrow(["tomato"])),
      measured: [0],
      title: "Narrow bed: no room for tomato",
      waysOut: ["Grow pepper instead of tomato", "Leave out tomato"],
    },
    "too many in one bed: one has a bed of its own to go to": {
      garden: gardenWith(
        { site },
        narrow(["carrot", "beet", "leek", "radish", "spinach", "squash-summer"]),
        bed("wide", { name: "Wide bed", x: 3000, wall: { made: "fabric", height: 400 } }),
      ),
      measured: [0],
      waysOut: 3,
    },
  },
});
