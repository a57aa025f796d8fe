import { INCH, type ItemOf } from "../../src/index.ts";
import { weakFrame } from "../../src/rules/weak-frame.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

type Wall = Extract<ItemOf<"bed">["wall"], { made: "boards" }>;
const framed = (changes: Partial<Wall>, length = 96 * INCH, belowRim = 0) =>
  bed("salads", {
    name: "Salads",
    w: 48 * INCH,
    h: length,
    wall: {
      made: "boards",
      board: "2x6",
      timber: "douglas-fir",
      courses: 2,
      corner: "ends-between-sides",
      cornerPosts: true,
      capRail: null,
      bracing: "none",
      ...changes,
    },
    fill: { belowRim },
  });

testRule(weakFrame, {
  passes: {
    // Published facts' case BR-04: 0.427 in, "borderline without a stake".
    "one 2x12 of 8 ft": gardenOf(framed({ board: "2x12", courses: 1 })),
    // BR-03: 0.313 in over 4 ft.
    "two courses of 1x6 with a stake every 4 ft": gardenOf(framed({ board: "1x6", bracing: "stakes" })),
    "a frame of metal": gardenOf(bed("salads", { wall: { made: "metal", height: 700, thickness: 1 } })),
    "a short side": gardenOf(framed({ courses: 3 }, 40 * INCH)),
    "a bed that is hardly filled": gardenOf(framed({ courses: 4 }, 96 * INCH, 18 * INCH)),
  },
  flags: {
    // The published 1.612 in of BR-01 (to 1 %) is for a 2x6 with its lower edge 24 in deep. Bow goes with the depth of
    // the board's middle, so 22 in deep it is 1.612·(22 - 2.75)/(24 - 2.75) in, 11 in deep 1.612·(11 - 2.75)/(24 - 2.75)
    // in; and with the cube of its thickness, so half as thick eight times as much.
    "four courses of 2x6 over 8 ft": {
      garden: gardenOf(framed({ courses: 4 })),
      measured: [37.09],
      within: 0.37,
      grade: "must",
      title: "Salads: its side bows 1 7/16 in",
      waysOut: ["Stake the long sides"],
    },
    "two courses of 2x6 over 8 ft": {
      garden: gardenOf(framed({})),
      measured: [15.9],
      within: 0.16,
      waysOut: ["Stake the long sides"],
    },
    "tall thin boards, for which stakes alone are too few": {
      garden: gardenOf(framed({ board: "1x6", courses: 4 })),
      measured: [296.7],
      within: 3,
      grade: "must",
      waysOut: ["Use 5/4x6 boards and stakes"],
    },
    "the same, standing already: its boards are not changed for others": {
      garden: gardenOf({ ...framed({ board: "1x6", courses: 4 }), already: { courses: 4, soilDepth: 300 } }),
      measured: [296.7],
      within: 3,
      grade: "must",
      waysOut: 0,
    },
    "stakes set too far apart by the gardener": {
      garden: gardenWith({ limits: { stakeEvery: 96 * INCH } }, framed({ courses: 4, bracing: "stakes" })),
      measured: [37.09],
      within: 0.37,
      grade: "must",
      waysOut: 0,
    },
  },
});
