import { INCH, type ItemOf } from "../../src/index.ts";
import { untiedFrame } from "../../src/rules/untied-frame.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

type Bracing = Extract<ItemOf<"bed">["wall"], { made: "boards" }>["bracing"];
const deep = (depth: number, bracing: Bracing = "stakes", length = 96 * INCH) =>
  bed("salads", {
    name: "Salads",
    w: 48 * INCH,
    h: length,
    wall: {
      made: "boards",
      board: "2x6",
      timber: "larch",
      courses: 4,
      corner: "ends-over-sides",
      cornerPosts: true,
      capRail: null,
      bracing,
    },
    fill: { belowRim: 22 * INCH - depth },
  });

testRule(untiedFrame, {
  passes: {
    "less than 18 in of soil": gardenOf(deep(18 * INCH - 0.6)),
    "ties across": gardenOf(deep(20 * INCH, "stakes-and-ties")),
    "sides of 4 ft": gardenOf(deep(20 * INCH, "stakes", 48 * INCH)),
    "a metal tank": gardenOf(bed("salads", { wall: { made: "metal", height: 700, thickness: 1 } })),
  },
  flags: {
    "18 in of soil": {
      garden: gardenOf(deep(18 * INCH)),
      measured: [457.2],
      title: "Salads: 18 in of soil and no ties across",
      waysOut: ["Tie the long sides across"],
    },
    "no bracing at all": { garden: gardenOf(deep(20 * INCH, "none")), measured: [508] },
  },
});
