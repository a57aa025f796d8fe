import { INCH } from "../../src/index.ts";
import { blockedDoor } from "../../src/rules/blocked-door.ts";
import { bed, door, gardenOf, gardenWith, gate, shed } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = (y: number) => bed("salads", { x: -600, y, w: 1200, h: 2500, name: "Salads" });
const back = door("back", { name: "Back door", width: 800, swing: "in" });

testRule(blockedDoor, {
  passes: {
    "36 in before a door": gardenOf(back, salads(36 * INCH)),
    "36 in less half a tolerance": gardenOf(back, salads(36 * INCH - 0.4)),
    "a bed behind the door's wall": gardenOf(back, salads(-2600)),
    "a bed beside a door": gardenOf(back, bed("salads", { x: 400, w: 1200, h: 2500 })),
    "less where the gardener has set less": gardenWith({ limits: { gateClear: 500 } }, back, salads(500)),
    "the shed that the door is in": gardenOf(shed("shed", { x: -1200, y: -1790 }), back),
  },
  flags: {
    "33 in before a door": {
      garden: gardenOf(back, salads(33 * INCH)),
      measured: [76.2],
      title: "Salads blocks Back door by 3 in",
      waysOut: ["Shift 3 in south"],
    },
    "one tolerance too near": { garden: gardenOf(back, salads(36 * INCH - 0.6)), measured: [0.6] },
    "a bed in the swing of a wide leaf": {
      garden: gardenWith(
        { limits: { gateClear: 300 } },
        door("wide", { width: 1000, swing: "out" }),
        bed("salads", { x: -600, y: 900, w: 700, h: 800 }),
      ),
      measured: [100],
    },
    "a bed behind a gate, which is walked through both ways": {
      garden: gardenOf(
        gate("gate", { width: 1000, swing: "sliding" }),
        bed("salads", { x: -600, y: -3300, w: 1200, h: 2500 }),
      ),
      measured: [114.4],
    },
  },
});
