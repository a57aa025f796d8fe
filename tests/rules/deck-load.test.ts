import { INCH } from "../../src/index.ts";
import { deckLoad } from "../../src/rules/deck-load.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const deep = (depth: number, x = 0) =>
  bed("salads", { name: "Salads", x, w: 1200, h: 2500, wall: { made: "fabric", height: depth } });
const deck = ground("deck", { x: 1100, y: -500, w: 3000, h: 4000, cover: "deck" });

testRule(deckLoad, {
  passes: {
    "a bed beside a deck": gardenOf(deck, deep(300, -100)),
    "a bed on paving": gardenWith({ ground: { cover: "paving" } }, deep(300)),
    "paving laid over part of a deck": gardenOf(
      deck,
      ground("slab", { w: 2000, h: 3000, cover: "paving" }),
      deep(300),
    ),
  },
  flags: {
    "a bed half a foot on a deck": {
      garden: gardenOf(deck, deep(12 * INCH)),
      measured: [304.8],
      title: "Salads: on a deck, ask an engineer",
      waysOut: ["Shift 3 15/16 in west"],
    },
    "even a shallow one": { garden: gardenOf(deck, deep(4 * INCH)), measured: [101.6] },
    "a roof, from which there is no way but down": {
      garden: gardenWith({ ground: { cover: "roof" } }, deep(250)),
      measured: [250],
      title: "Salads: on a roof, ask an engineer",
      waysOut: 0,
    },
    "a table bed too": {
      garden: gardenWith({ ground: { cover: "deck" } }, { ...deep(180), legs: 700 }),
      measured: [180],
      waysOut: 0,
    },
  },
});
