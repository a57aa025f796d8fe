import { INCH } from "../../src/index.ts";
import { wheelchairNarrowWay } from "../../src/rules/wheelchair-narrow-way.ts";
import { bed, fence, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** A court whose only mouth is `wide`, between the end of a fence and one `thick` at right angles to the way through. */
const court = (wide: number, thick: number, wheelchair = true) =>
  gardenWith(
    { gardener: { wheelchair } },
    gate("gate", { at: [0, 20_000], width: 1000 }),
    fence("left", { from: [-6000, -6000], to: [-6000, 8000], thickness: 40 }),
    fence("above", { from: [-6020, -6000], to: [6020, -6000], thickness: 40 }),
    fence("right", { from: [6000, -6000], to: [6000, 8000], thickness: 40 }),
    fence("below", { from: [-5980 + wide, 6000], to: [6020, 6000], thickness: thick }),
    bed("far", { x: -600, y: -3000, w: 1200, h: 2500, name: "Far" }),
  );

/**
 * The same court with two mouths: one of 35 in, too long for a pinch, and one of 33 in beside it, short enough. The widest
 * way is the one that fails.
 */
const twoMouths = (shortOne: number) =>
  gardenWith(
    { gardener: { wheelchair: true } },
    gate("gate", { at: [0, 20_000], width: 1000 }),
    fence("left", { from: [-6000, -6000], to: [-6000, 8000], thickness: 40 }),
    fence("above", { from: [-6020, -6000], to: [6020, -6000], thickness: 40 }),
    fence("right", { from: [6000, -6000], to: [6000, 8000], thickness: 40 }),
    fence("long", { from: [-5980 + 35 * INCH, 6000], to: [0, 6000], thickness: 1500 }),
    fence("short", { from: [33 * INCH, 6000], to: [6020, 6000], thickness: shortOne }),
    bed("far", { x: -600, y: -3000, w: 1200, h: 2500, name: "Far" }),
  );

// 2010 ADA Standards 403.5.1 and its exception: 36 in, or 32 in over at most 24 in.
testRule(wheelchairNarrowWay, {
  passes: {
    "a way of 36 in, however long": court(36 * INCH, 1500),
    "a pinch of 32 in over 24 in": court(32 * INCH, 24 * INCH),
    "a pinch of 32 in over 24 in, each by half a tolerance": court(32 * INCH - 0.4, 24 * INCH + 0.4),
    "a short pinch of 33 in beside a wider way that is narrow for too long": twoMouths(20 * INCH),
    "a narrow way where no wheelchair is used": court(700, 40, false),
  },
  flags: {
    "two ways, neither of which keeps the rule": {
      garden: twoMouths(30 * INCH),
      measured: [35 * INCH],
      waysOut: 0,
    },
    "a pinch of 32 in over 30 in": {
      garden: court(32 * INCH, 30 * INCH),
      measured: [812.8],
      title: "Way to Far: 4 in too narrow for a wheelchair",
      waysOut: 0,
    },
    "a pinch one tolerance too long": {
      garden: court(33 * INCH, 24 * INCH + 0.7),
      measured: [838.2],
      waysOut: 0,
    },
    "a pinch one tolerance too narrow": { garden: court(32 * INCH - 0.7, 40), measured: [812.1], waysOut: 0 },
  },
});
