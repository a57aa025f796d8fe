import { INCH } from "../../src/index.ts";
import { wheelchairNarrowGate } from "../../src/rules/wheelchair-narrow-gate.ts";
import { door, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const withGate = (width: number, wheelchair = true) =>
  gardenWith({ gardener: { wheelchair } }, gate("gate", { width, name: "Side gate" }));

// 2010 ADA Standards 404.2.3: 32 in clear.
testRule(wheelchairNarrowGate, {
  passes: {
    "a clear opening of 32 in": withGate(32 * INCH),
    "32 in less half a tolerance": withGate(32 * INCH - 0.4),
    "a narrow gate where no wheelchair is used": withGate(700, false),
  },
  flags: {
    "a gate of 31 1/2 in": {
      garden: withGate(31.5 * INCH),
      measured: [800.1],
      title: "Side gate: ½ in too narrow for a wheelchair",
      waysOut: ["Widen to 32 in"],
    },
    "one tolerance too narrow": { garden: withGate(32 * INCH - 0.6), measured: [812.2] },
    "a door": {
      garden: gardenWith({ gardener: { wheelchair: true } }, door("door", { width: 650 })),
      measured: [650],
    },
  },
});
