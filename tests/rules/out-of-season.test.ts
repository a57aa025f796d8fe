import { expect } from "vitest";
import { newPlanting, type Planting } from "../../src/index.ts";
import { outOfSeasonPlanting } from "../../src/rules/out-of-season.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const frosts = { latitude: 41, lastFrost: "04-28", firstFrost: "10-14" };
const sown = (planting: Planting, site: Parameters<typeof gardenWith>[0]["site"] = frosts) =>
  gardenWith(
    { site },
    bed("warm", { name: "Warm bed", wall: { made: "fabric", height: 500 }, plantings: [planting] }),
  );
const put = (crop: Planting["crop"], from: string | null = null): Planting => ({
  ...newPlanting(crop),
  from,
});

testRule(outOfSeasonPlanting, {
  passes: {
    "whatever follows the frosts by itself": sown(put("tomato")),
    "beans on the day of the last frost": sown(put("bean-bush", "04-28")),
    "peas in the cold before it": sown(put("pea", "03-20")),
    // 50 days to the first pick; 14 October is 50 days after 25 August.
    "beans that are ready on the day of the first frost": sown(put("bean-bush", "08-25")),
    "garlic in autumn, and herbs that stay": sown(put("garlic", "10-20")),
    "spinach sown in autumn to stand over winter": sown(put("spinach", "10-20")),
    "tomatoes in November, south of the equator": sown(put("tomato", "11-10"), {
      latitude: -35,
      lastFrost: "10-20",
      firstFrost: "05-01",
    }),
  },
  flags: {
    "beans a day before the last frost": {
      garden: sown(put("bean-bush", "04-27")),
      measured: [1],
      title: "Warm bed: snap bush bean set before the last frost",
      waysOut: [
        "Set snap bush bean at the usual time",
        expect.stringMatching(/^Grow .* instead of snap bush bean$/),
        "Leave out snap bush bean",
      ],
    },
    "beans a day too late to be ready": {
      garden: sown(put("bean-bush", "08-26")),
      measured: [1],
      title: "Warm bed: snap bush bean ripe after the first frost",
      waysOut: 3,
    },
    "winter squash where summer is too short for it": {
      garden: sown(put("squash-winter"), { latitude: 61, lastFrost: "06-10", firstFrost: "08-25" }),
      // Set two weeks after the frost, ready 80 days later: 94 days into a season of 76.
      measured: [18],
      waysOut: [expect.stringMatching(/^Grow .* instead of winter squash$/), "Leave out winter squash"],
    },
    "tomatoes in June, south of the equator": {
      garden: sown(put("tomato", "06-10"), { latitude: -35, lastFrost: "10-20", firstFrost: "05-01" }),
      measured: [132],
      waysOut: 3,
    },
    "tomatoes in March where nobody has typed the frosts": {
      garden: sown(put("tomato", "03-10"), { latitude: 41 }),
      // The usual last frost of the hemisphere where winters freeze is 1 May.
      measured: [52],
      grade: "note",
      waysOut: 3,
    },
  },
});
