import { type Garden, INCH, type Point } from "../../src/index.ts";
import { wheelchairGateRoom } from "../../src/rules/wheelchair-gate-room.ts";
import { bed, fence, gardenWith, gate } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

type Swing = "in" | "out" | "sliding";
type Edition = Garden["gardener"]["edition"];

interface Court {
  readonly swing: Swing;
  /** Ground left clear past the hinges, past the latch and before the gate, mm. */
  readonly hinge: number;
  readonly latch: number;
  readonly front: number;
  readonly wheelchair?: boolean;
  readonly edition?: Edition;
}

/**
 * A gate in the upper side of the yard, its hinges at the left. Beyond the clear ground at either side stands a fence, and
 * before it lies a bed. Beside 4000 mm one can come along the wall from there; less, and one cannot.
 */
function court({ swing, hinge, latch, front, wheelchair = true, edition = "ada-2010" }: Court) {
  const yard: Point[] = [
    [-9000, 0],
    [9000, 0],
    [9000, 9000],
    [-9000, 9000],
  ];
  const [left, right] = [-500 - hinge - 20, 500 + latch + 20];
  return gardenWith(
    { yard, gardener: { wheelchair, edition } },
    gate("gate", { at: [0, 0], width: 1000, swing, hinge: "left", name: "Gate" }),
    fence("left", { from: [left, 0], to: [left, 9000], thickness: 40 }),
    fence("right", { from: [right, 0], to: [right, 9000], thickness: 40 }),
    bed("salads", { x: -450, y: front, w: 900, h: 2500, name: "Salads" }),
  );
}
const FAR = 4000;

// 2010 ADA Standards, Table 404.2.4.1 as the Access Board prints it; what slides by Table 404.2.4.2, from memory.
testRule(wheelchairGateRoom, {
  passes: {
    "pulled, from the front: 60 in deep, 18 in past the latch": court({
      swing: "out",
      hinge: 750,
      latch: 18 * INCH,
      front: 60 * INCH,
    }),
    "60 in less half a tolerance": court({ swing: "out", hinge: 750, latch: 470, front: 60 * INCH - 0.4 }),
    "pushed, from the front: 48 in deep": court({ swing: "in", hinge: 900, latch: 0, front: 48 * INCH }),
    "pulled, from the hinges: 54 in deep, 42 in past the latch": court({
      swing: "out",
      hinge: FAR,
      latch: 42 * INCH,
      front: 54 * INCH,
    }),
    "pulled, from the latch: 48 in deep": court({ swing: "out", hinge: 0, latch: FAR, front: 48 * INCH }),
    "pushed, from the hinges: 42 in deep": court({ swing: "in", hinge: FAR, latch: 0, front: 42 * INCH }),
    "pushed, from the latch: 42 in deep": court({ swing: "in", hinge: 0, latch: FAR, front: 42 * INCH }),
    "slid, from beside the stop: 42 in deep": court({
      swing: "sliding",
      hinge: 0,
      latch: FAR,
      front: 42 * INCH,
    }),
    "pulled, from the latch, to the printed 1220 mm": court({
      swing: "out",
      hinge: 0,
      latch: FAR,
      front: 1220,
      edition: "ada-2010-mm",
    }),
    "no room where no wheelchair is used": court({
      swing: "out",
      hinge: 0,
      latch: 0,
      front: 400,
      wheelchair: false,
    }),
  },
  flags: {
    "pulled, 50 in deep, where one can come only from the front": {
      garden: court({ swing: "out", hinge: 750, latch: 600, front: 50 * INCH }),
      measured: [50 * INCH],
      title: "Gate: 10 in short of room for a wheelchair",
      waysOut: ["Shift Salads 10 in south"],
    },
    "pushed, one tolerance short of 48 in, from the front": {
      garden: court({ swing: "in", hinge: 900, latch: 0, front: 48 * INCH - 0.6 }),
      measured: [48 * INCH - 0.6],
      waysOut: 1,
    },
    "pulled, 16 in of the 18 in past the latch": {
      garden: court({ swing: "out", hinge: 750, latch: 16 * INCH, front: 70 * INCH }),
      measured: [16 * INCH],
      title: "Gate: 2 in short of room for a wheelchair",
      waysOut: 0,
    },
    "pulled, from the latch, an inch short of 48": {
      garden: court({ swing: "out", hinge: 0, latch: FAR, front: 47 * INCH }),
      measured: [47 * INCH],
      title: "Gate: 1 in short of room for a wheelchair",
      waysOut: 1,
    },
    "pulled, 48 in deep held to the printed millimetres": {
      garden: court({ swing: "out", hinge: 0, latch: FAR, front: 48 * INCH, edition: "ada-2010-mm" }),
      measured: [48 * INCH],
      waysOut: 1,
    },
    "slid, from beside the pocket, 20 of 22 in past it": {
      garden: court({ swing: "sliding", hinge: 20 * INCH, latch: 0, front: 43 * INCH }),
      measured: [43 * INCH],
      waysOut: 1,
    },
  },
});
