import { describe, expect, it } from "vitest";
import { type Approach, gateClearances, type Opens } from "../../src/access/wheelchair-gates.ts";
import {
  alcovePasses,
  circlePasses,
  halfTurnPasses,
  kneeDepthAt,
  needsHandrail,
  openingPasses,
  passingPasses,
  pinchPasses,
  RAMP,
  rampRun,
  sideReachPasses,
  slopePasses,
  soilHeightPasses,
  tablePasses,
  tPasses,
} from "../../src/access/wheelchair-standards.ts";
import { LIMITS, limitsOf } from "../../src/index.ts";
import { FOOT, INCH } from "../../src/units/length.ts";
import facts from "./access-timber-fill.json";
import { fact } from "./cases.ts";

/**
 * The check cases of the 2010 ADA Standards for Accessible Design (U.S. Access Board, published text), each held to the
 * answer kept beside the facts, and each limit again one tolerance below and above it.
 */

const limits = limitsOf({ limits: {} });
const IN = (inches: number) => inches * INCH;

type Answer = () => boolean;

/** Case by case: what the product answers to what the case gives. */
const answers: Readonly<Record<string, Answer>> = {
  "AC-01": () => circlePasses(IN(60), limits),
  "AC-02": () => circlePasses(IN(59.75), limits),
  "AC-03": () => tPasses({ width: IN(36), left: IN(12), right: IN(12), base: IN(24) }),
  "AC-04": () => tPasses({ width: IN(36), left: IN(12), right: IN(12), base: IN(20) }),
  "AC-05": () => tPasses({ width: IN(36), left: IN(12), right: 0, base: IN(24) }),
  "AC-06": () => halfTurnPasses({ element: IN(36), approach: IN(42), turn: IN(48), leave: IN(42) }, limits),
  "AC-07": () => halfTurnPasses({ element: IN(36), approach: IN(36), turn: IN(60), leave: IN(36) }, limits),
  "AC-08": () => halfTurnPasses({ element: IN(36), approach: IN(36), turn: IN(54), leave: IN(36) }, limits),
  "AC-09": () => halfTurnPasses({ element: IN(48), approach: IN(36), turn: IN(36), leave: IN(36) }, limits),
  "AC-10": () => pinchPasses({ width: IN(32), run: IN(24), toNext: null }, limits),
  "AC-11": () => pinchPasses({ width: IN(32), run: IN(30), toNext: null }, limits),
  "AC-12": () => pinchPasses({ width: IN(32), run: IN(24), toNext: IN(40) }, limits),
  "AC-13": () => passingPasses({ width: IN(36), length: 190 * FOOT }, limits),
  "AC-14": () => passingPasses({ width: IN(36), length: 250 * FOOT }, limits),
  "AC-15": () => passingPasses({ width: IN(60), length: 400 * FOOT }, limits),
  "AC-16": () => slopePasses(6 / 120, limits.runningSlope),
  "AC-20": () => sideReachPasses({ rim: IN(34), depth: IN(24) }, limits),
  "AC-21": () => sideReachPasses({ rim: IN(36), depth: IN(24) }, limits),
  "AC-22": () => sideReachPasses({ rim: IN(24), depth: IN(48) / 2 }, limits),
  "AC-23": () => sideReachPasses({ rim: IN(24), depth: IN(50) / 2 }, limits),
  "AC-24": () => tablePasses({ rim: IN(34), kneeHeight: IN(27), kneeDepth: IN(19), width: IN(30) }, limits),
  "AC-25": () => tablePasses({ rim: IN(36), kneeHeight: IN(27), kneeDepth: IN(19), width: IN(30) }, limits),
  "AC-26": () =>
    tablePasses({ rim: IN(34), kneeHeight: IN(34 - 8), kneeDepth: IN(19), width: IN(30) }, limits),
  "AC-27": () => alcovePasses({ approach: "forward", depth: IN(30), width: IN(34) }),
  "AC-28": () => alcovePasses({ approach: "parallel", depth: IN(16), width: IN(48) }),
  "AC-29": () => openingPasses(IN(31.5), limits),
  // The case says "flag for wheelchair users": the height does not pass.
  "AC-32": () => soilHeightPasses(IN(12), limits),
  "AC-31": () => halfTurnPasses(PRINTED_TURN, PRINTED_LIMITS) && !halfTurnPasses(PRINTED_TURN, limits),
};

/**
 * 403.5.2 as printed in metric: 1065 mm is 1.8 mm short of 42 in. A garden held to the edition in millimetres is let
 * through; one in inches is not.
 */
const PRINTED_LIMITS = limitsOf({ limits: {}, gardener: { edition: "ada-2010-mm" } });
const PRINTED_TURN = { element: 900, approach: 1065, turn: 1220, leave: 1065 };

/** Cases that are no yes or no, each checked by itself below. */
const byThemselves = ["AC-17", "AC-18", "AC-19", "AC-30"];
/** Left to the reach tests: a child's reach is no wheelchair matter. */
const elsewhere = ["AC-33"];

/** Cases whose answer is told in words instead of `pass`. */
const inWords: Readonly<Record<string, boolean>> = {
  "AC-09": true,
  "AC-16": true,
  "AC-26": false,
  "AC-32": false,
};

describe("cases of the 2010 ADA Standards", () => {
  const cases = facts.cases.filter(({ id }) => id.startsWith("AC-"));

  it("leaves no case out", () => {
    const told = [...Object.keys(answers), ...byThemselves, ...elsewhere].sort();
    expect(told).toEqual(cases.map(({ id }) => id).sort());
  });

  it.each(cases.filter(({ id }) => id in answers))("$id, $basis", (row) => {
    const expected = "pass" in row ? row.pass : inWords[row.id];
    expect(expected).toBeTypeOf("boolean");
    expect(answers[row.id]?.()).toBe(expected);
  });

  it("AC-17: 7 in over 120 in is 5.833 %, too steep for a walk, fit for a ramp with a handrail (403.3, 405.2, 405.8)", () => {
    const slope = 7 / 120;
    expect(100 * slope).toBeCloseTo(5.833, 2);
    expect(slopePasses(slope, limits.runningSlope)).toBe(false);
    expect(slopePasses(slope, RAMP.slope)).toBe(true);
    expect(needsHandrail(IN(7))).toBe(true);
    expect(needsHandrail(IN(6))).toBe(false);
  });

  it("AC-18: 1:20, 1:12 and 1:48 are 5, 8.333 and 2.083 %; 2.862, 4.764 and 1.193 degrees", () => {
    const slopes = [limits.runningSlope, RAMP.slope, limits.crossSlope];
    const degrees = slopes.map((slope) => (Math.atan(slope) * 180) / Math.PI);
    slopes.map((slope) => 100 * slope).forEach(closeTo([5, 8.333, 2.083]));
    degrees.forEach(closeTo([2.862, 4.764, 1.193]));
  });

  it("AC-19: a rise of 30 in takes a ramp 360 in long (405.2, 405.6)", () => {
    expect(rampRun(IN(30))).toBeCloseTo(IN(360), 9);
    expect(RAMP.mostRise).toBe(IN(30));
  });

  it("AC-30: knee room 9.5 in deep at 18 in, 11 in at 9 in, 8 in at 27 in (306.3)", () => {
    expect(kneeDepthAt(IN(18))).toBeCloseTo(IN(9.5), 6);
    expect(kneeDepthAt(IN(9))).toBeCloseTo(IN(11), 6);
    expect(kneeDepthAt(IN(27))).toBeCloseTo(IN(8), 6);
    expect(() => kneeDepthAt(IN(30))).toThrow(RangeError);
  });
});

function closeTo(expected: readonly number[]) {
  return (value: number, i: number): void => {
    expect(value).toBeCloseTo(expected[i]!, 3);
  };
}

describe("one tolerance below and above each limit", () => {
  const table = { rim: IN(30), kneeHeight: IN(27), kneeDepth: IN(19), width: IN(32) };
  const edges: readonly [string, number, (value: number) => boolean, "least" | "most"][] = [
    ["turning circle, 304.3.1", IN(60), (v) => circlePasses(v, limits), "least"],
    [
      "T arm, 304.3.2",
      IN(12),
      (v) => tPasses({ width: IN(36), left: v, right: IN(13), base: IN(24) }),
      "least",
    ],
    [
      "T base, 304.3.2",
      IN(24),
      (v) => tPasses({ width: IN(36), left: IN(13), right: IN(14), base: v }),
      "least",
    ],
    [
      "half turn approach, 403.5.2",
      IN(42),
      (v) => halfTurnPasses({ element: IN(30), approach: v, turn: IN(50), leave: IN(44) }, limits),
      "least",
    ],
    [
      "half turn, 403.5.2",
      IN(48),
      (v) => halfTurnPasses({ element: IN(30), approach: IN(43), turn: v, leave: IN(44) }, limits),
      "least",
    ],
    [
      "half turn by exception",
      IN(60),
      (v) => halfTurnPasses({ element: IN(30), approach: IN(37), turn: v, leave: IN(38) }, limits),
      "least",
    ],
    [
      "element turned around",
      IN(48),
      (v) => halfTurnPasses({ element: v, approach: IN(36), turn: IN(37), leave: IN(38) }, limits),
      "least",
    ],
    [
      "pinch width, 403.5.1",
      IN(32),
      (v) => pinchPasses({ width: v, run: IN(20), toNext: null }, limits),
      "least",
    ],
    [
      "pinch run, 403.5.1",
      IN(24),
      (v) => pinchPasses({ width: IN(33), run: v, toNext: null }, limits),
      "most",
    ],
    [
      "between pinches, 403.5.1",
      IN(48),
      (v) => pinchPasses({ width: IN(33), run: IN(20), toNext: v }, limits),
      "least",
    ],
    [
      "run without passing, 403.5.3",
      200 * FOOT,
      (v) => passingPasses({ width: IN(40), length: v }, limits),
      "most",
    ],
    ["clear opening, 404.2.3", IN(32), (v) => openingPasses(v, limits), "least"],
    ["rim, 308.3.2", IN(34), (v) => sideReachPasses({ rim: v, depth: IN(20) }, limits), "most"],
    ["reach, 308.3.2", IN(24), (v) => sideReachPasses({ rim: IN(30), depth: v }, limits), "most"],
    ["low reach, 308.3.1", IN(15), (v) => soilHeightPasses(v, limits), "least"],
    ["knee height, 306.3", IN(27), (v) => tablePasses({ ...table, kneeHeight: v }, limits), "least"],
    ["knee width, 306.3.5", IN(30), (v) => tablePasses({ ...table, width: v }, limits), "least"],
    ["toe depth, 306.2.3", IN(17), (v) => tablePasses({ ...table, kneeDepth: v }, limits), "least"],
    ["lowest table, 902.3", IN(28), (v) => tablePasses({ ...table, rim: v }, limits), "least"],
    [
      "deep alcove, 305.7.1",
      IN(36),
      (v) => alcovePasses({ approach: "forward", depth: IN(30), width: v }),
      "least",
    ],
    [
      "deep alcove, 305.7.2",
      IN(60),
      (v) => alcovePasses({ approach: "parallel", depth: IN(20), width: v }),
      "least",
    ],
  ];

  it.each(edges)("%s", (_what, limit, passes, sense) => {
    const worse = sense === "least" ? -1 : 1;
    expect(passes(limit)).toBe(true);
    expect(passes(limit + worse * 0.45)).toBe(true);
    expect(passes(limit + worse * 0.55)).toBe(false);
    expect(passes(limit - worse * 25)).toBe(true);
  });

  it("says where each default comes from", () => {
    for (const id of [
      "wheelchairWay",
      "turnApproach",
      "turningCircle",
      "passingEvery",
      "wheelchairGate",
    ] as const) {
      expect(LIMITS[id].source.text).toMatch(/ADA/);
    }
  });
});

describe("manoeuvring clearance at gates, Table 404.2.4.1", () => {
  const rows: readonly [string, Opens, Approach, number, "latch" | "hinge"][] = [
    ["front pull", "pull", "front", 0, "latch"],
    ["front push", "push", "front", 0, "latch"],
    ["hinge pull (a)", "pull", "hinge side", 0, "latch"],
    ["hinge pull (b)", "pull", "hinge side", 1, "latch"],
    ["hinge push (beyond hinge side)", "push", "hinge side", 0, "hinge"],
    ["latch pull", "pull", "latch side", 0, "latch"],
    ["latch push", "push", "latch side", 0, "latch"],
  ];
  // The pairs printed with the table: inches and millimetres.
  const printed: Readonly<Record<number, number>> = {
    0: 0,
    18: 455,
    22: 560,
    24: 610,
    36: 915,
    42: 1065,
    48: 1220,
    54: 1370,
    60: 1525,
  };

  it.each(rows)("%s, in inches and in the millimetres printed", (name, opens, approach, nth, end) => {
    const [depth, beyond] = [fact("ADA-404.2.4.1", name, 0), fact("ADA-404.2.4.1", name, 1)];
    const held = (edition: "ada-2010" | "ada-2010-mm") => {
      const row = gateClearances(opens, edition).filter((one) => one.approach === approach)[nth];
      const [past, other] = [row?.beyondLatch, row?.beyondHinge];
      return {
        depth: row?.depth,
        beyond: end === "latch" ? past : other,
        rest: end === "latch" ? other : past,
      };
    };
    expect(held("ada-2010")).toEqual({ depth: IN(depth), beyond: IN(beyond), rest: 0 });
    expect(held("ada-2010-mm")).toEqual({ depth: printed[depth], beyond: printed[beyond], rest: 0 });
  });

  it("has no other rows for leaves that swing", () => {
    const count = (["pull", "push"] as const).flatMap((opens) => gateClearances(opens, "ada-2010")).length;
    expect(count).toBe(rows.length);
  });
});
