import { INCH } from "../../src/index.ts";
import { narrowDrawnPath } from "../../src/rules/narrow-drawn-path.ts";
import { bed, gardenOf, gardenWith, path } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const way = (width: number, use: "main" | "side", id = "way") =>
  path(id, { from: [0, 0], to: [5000, 700], width, use });

testRule(narrowDrawnPath, {
  passes: {
    "a side path of 24 in to kneel in, and of 61 cm": gardenOf(
      way(24 * INCH, "side"),
      way(610, "side", "other"),
    ),
    "a main way of 36 in for a barrow": gardenOf(way(36 * INCH, "main")),
    "a main way of 24 in where there is no barrow": gardenWith(
      { gardener: { barrow: false } },
      way(24 * INCH, "main"),
    ),
    "a side path of 18 in where nobody kneels": gardenWith(
      { gardener: { kneeling: false } },
      way(18 * INCH, "side"),
    ),
    "short by less than half a millimetre": gardenOf(way(24 * INCH - 0.4, "side")),
  },
  flags: {
    "a side path of 23 1/2 in": {
      garden: gardenOf(way(23.5 * INCH, "side")),
      measured: [23.5 * INCH],
      title: "Path: ½ in too narrow to kneel",
      waysOut: ["Widen to 24 in"],
    },
    "a metric side path of 60 cm": {
      garden: gardenWith({ units: "metric" }, way(600, "side")),
      measured: [600],
      waysOut: ["Widen to 61 cm"],
    },
    "a main way of 35 in, which only the barrow minds": {
      garden: gardenOf(way(35 * INCH, "main")),
      measured: [35 * INCH],
      grade: "should",
      waysOut: ["Widen to 36 in"],
    },
    "a main way of 20 in, where one cannot kneel either": {
      garden: gardenOf(way(20 * INCH, "main")),
      measured: [20 * INCH],
      grade: "must",
    },
    "a side path of 35 in where a wheelchair is used": {
      garden: gardenWith({ gardener: { wheelchair: true } }, way(35 * INCH, "side")),
      measured: [35 * INCH],
      title: "Path: 1 in too narrow for a wheelchair",
    },
    "a path that would run into a bed if it were wider": {
      garden: gardenOf(
        path("way", { from: [0, 0], to: [5000, 0], width: 500, use: "side" }),
        bed("salads", { x: 1000, y: 270, w: 1200, h: 2500 }),
      ),
      measured: [500],
      waysOut: [],
    },
  },
});
