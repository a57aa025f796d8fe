import { wheelchairSteepWay } from "../../src/rules/wheelchair-steep-way.ts";
import { bed, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

/** The way runs straight up the plan; the ground falls `falls` degrees clockwise from that. */
const slope = (steep: number, falls: number, wheelchair = true) =>
  gardenWith(
    { gardener: { wheelchair }, ground: { slope: steep, falls } },
    gate("gate", { at: [0, 19_990], width: 1000 }),
    bed("salads", { x: -600, y: 8000, w: 1200, h: 2500, name: "Salads" }),
  );

// 2010 ADA Standards 403.3: 1:20 along, 1:48 across.
testRule(wheelchairSteepWay, {
  passes: {
    "1:20 down the way": slope(1 / 20, 180),
    "1:48 across it": slope(1 / 48, 90),
    "level ground": slope(0, 0),
    "steep ground where no wheelchair is used": slope(0.2, 0, false),
  },
  flags: {
    "7 in over 120 in": {
      garden: slope(7 / 120, 0),
      measured: [0.058],
      title: "Way to Salads slopes 1:17.1 along it",
      waysOut: 0,
    },
    "1:47 across the way": { garden: slope(1 / 47, 270), measured: [0.021], grade: "should", waysOut: 0 },
  },
});
