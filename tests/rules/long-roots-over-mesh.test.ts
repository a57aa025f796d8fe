import { INCH } from "../../src/index.ts";
import { longRootsOverMesh } from "../../src/rules/long-roots-over-mesh.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const of = (
  depth: number,
  crops: ("carrot" | "parsnip" | "tomato")[],
  mesh: { opening: number } | null = { opening: 12.7 },
) =>
  gardenOf(bed("roots", { name: "Roots", crops, wall: { made: "fabric", height: depth }, bottom: { mesh } }));

testRule(longRootsOverMesh, {
  passes: {
    "carrots without mesh": of(250, ["carrot"], null),
    "carrots with 18 in above the mesh": of(18 * INCH, ["carrot"]),
    "carrots with 18 in less half a tolerance": of(18 * INCH - 0.4, ["carrot"]),
    "tomatoes, whose roots pass the mesh": of(300, ["tomato"]),
    "a table bed": gardenOf(
      bed("roots", { crops: ["carrot"], legs: 700, bottom: { mesh: { opening: 12.7 } } }),
    ),
  },
  flags: {
    "carrots with 12 in above the mesh": {
      garden: of(12 * INCH, ["carrot", "tomato"]),
      measured: [304.8],
      title: "Roots: mesh stops the roots of carrot",
      waysOut: ["Make the wall 18 in high", "Grow beet instead of carrot", "Leave out carrot"],
    },
    "one tolerance too little": { garden: of(18 * INCH - 0.6, ["carrot"]), measured: [456.6], waysOut: 3 },
    "parsnips as well, by the longer of the two": {
      garden: of(500, ["carrot", "parsnip"]),
      measured: [500],
      waysOut: ["Make the wall 24 in high", "Grow beet instead of parsnip", "Leave out parsnip"],
    },
    "carrots that may change places with beets in a bed without mesh": {
      garden: gardenOf(
        ...of(12 * INCH, ["carrot"]).items,
        bed("open", { name: "Open bed", x: 3000, crops: ["beet"] }),
      ),
      measured: [304.8],
      waysOut: [
        "Make the wall 18 in high",
        "Grow beet instead of carrot",
        "Grow carrot in Open bed, and beet here",
        "Leave out carrot",
      ],
    },
    "carrots that have room in an empty bed without mesh": {
      garden: gardenOf(...of(12 * INCH, ["carrot"]).items, bed("open", { name: "Open bed", x: 3000 })),
      measured: [304.8],
      waysOut: [
        "Make the wall 18 in high",
        "Grow beet instead of carrot",
        "Grow carrot in Open bed",
        "Leave out carrot",
      ],
    },
    "carrots that no other bed suits: one has mesh too, one is no deeper than lettuce asks": {
      garden: gardenOf(
        ...of(12 * INCH, ["carrot"]).items,
        bed("mesh", { x: 3000, bottom: { mesh: { opening: 12.7 } } }),
        bed("low", { x: 6000, wall: { made: "fabric", height: 7 * INCH } }),
      ),
      measured: [304.8],
      waysOut: ["Make the wall 18 in high", "Grow beet instead of carrot", "Leave out carrot"],
    },
  },
});
