import { INCH } from "../../src/index.ts";
import { wheelchairGateRoom } from "../../src/rules/wheelchair-gate-room.ts";
import { bed, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const YARD = [
  [-6000, 0],
  [6000, 0],
  [6000, 9000],
  [-6000, 9000],
] as const;
const opening = (swing: "in" | "out" | "sliding") =>
  gate("gate", { at: [0, 0], width: 1000, swing, hinge: "left", name: "Gate" });
const garden = (swing: "in" | "out" | "sliding", x: number, y: number, wheelchair = true) =>
  gardenWith(
    { yard: YARD, gardener: { wheelchair } },
    opening(swing),
    bed("salads", { x, y, w: 1200, h: 2500, name: "Salads" }),
  );

// 2010 ADA Standards, Table 404.2.4.1, front approach: pull 60 in and 18 in beyond the latch, push 48 in.
testRule(wheelchairGateRoom, {
  passes: {
    "60 in before a gate that is pulled": garden("out", -600, 60 * INCH),
    "60 in less half a tolerance": garden("out", -600, 60 * INCH - 0.4),
    "48 in before a gate that is pushed": garden("in", -600, 48 * INCH),
    "a bed beyond the 18 in at the latch side": garden("out", 500 + 18 * INCH, 200),
    "a bed at the hinge side": garden("out", -500 - 1200, 200),
    "a bed in the way where no wheelchair is used": garden("out", -600, 400, false),
  },
  flags: {
    "50 in before a gate that is pulled": {
      garden: garden("out", -600, 50 * INCH),
      measured: [1270],
      title: "Gate: 10 in short of room for a wheelchair",
      waysOut: ["Shift Salads 10 in south"],
    },
    "one tolerance short": { garden: garden("in", -600, 48 * INCH - 0.6), measured: [1218.6] },
    "a bed 2 in into the 18 in beyond the latch": {
      garden: garden("out", 500 + 16 * INCH, 200),
      measured: [200],
    },
  },
});
