import { describe, expect, it } from "vitest";
import { boardSize } from "../../src/garden/timber-sizes.ts";
import {
  activePressureCoefficient,
  boardBow,
  depthForLoad,
  midStakes,
  screwsPerEnd,
  soilLoad,
  wallPressure,
} from "../../src/takeoff/structure.ts";
import { FOOT, INCH } from "../../src/units/length.ts";
import { expected, given } from "./cases.ts";

// Customary units into the engine's: 1 lbf = 4.4482216 N, 1 ft = 0.3048 m, exact or to eight figures.
const LBF = 4.4482216152605;
const kNm3 = (lbPerCubicFoot: number) => (lbPerCubicFoot * LBF) / 1000 / 0.3048 ** 3;
const psf = (kPa: number) => (kPa * 1000 * 0.3048 ** 2) / LBF;
const psi = (MPa: number) => (MPa * INCH ** 2) / LBF;
const lbPerFt = (kNPerM: number) => (kNPerM * 1000 * 0.3048) / LBF;
const MPa = (poundsPerSquareInch: number) => (poundsPerSquareInch * LBF) / INCH ** 2;

describe("Rankine's active earth pressure", () => {
  // tan²(45 - φ/2): standard soil mechanics. Rounded to four places in the cases.
  it("has a coefficient of a third at 30 degrees, RK-01, and 0.361 at 28, RK-02", () => {
    expect(activePressureCoefficient(given("RK-01", "phi_deg"))).toBeCloseTo(expected("RK-01", "Ka"), 4);
    expect(activePressureCoefficient(given("RK-02", "phi_deg"))).toBeCloseTo(expected("RK-02", "Ka"), 3);
  });

  it("gives the published worked example of a 10 ft wall, RK-03", () => {
    const wall = wallPressure(given("RK-03", "H_ft") * FOOT, {
      unitWeight: kNm3(given("RK-03", "gamma_lb_ft3")),
      friction: given("RK-03", "phi"),
    });
    expect(Math.abs(psf(wall.atFoot) - expected("RK-03", "p_base_psf"))).toBeLessThan(0.5);
    expect(Math.abs(lbPerFt(wall.force) - expected("RK-03", "P_lb_ft"))).toBeLessThan(0.5);
  });

  const twoFeet = (id: string, gamma: string, drained: boolean) =>
    wallPressure(given(id, "H_ft") * FOOT, { unitWeight: kNm3(given(id, gamma)), friction: 30, drained });

  it("pushes on a 2 ft bed as reckoned by hand, RK-04", () => {
    const wall = twoFeet("RK-04", "gamma_lb_ft3", true);
    expect(psf(wall.atFoot)).toBeCloseTo(expected("RK-04", "p_base_psf"), 1);
    expect(lbPerFt(wall.force)).toBeCloseTo(expected("RK-04", "P_lb_per_ft"), 1);
    expect(wall.actsAt / FOOT).toBeCloseTo(expected("RK-04", "acts_above_base_ft"), 3);
    expect(lbPerFt(wall.moment) / 0.3048).toBeCloseTo(expected("RK-04", "moment_ft_lb_per_ft"), 1);
  });

  it("pushes 2.35 times harder on an undrained bed, RK-05", () => {
    const wet = twoFeet("RK-05", "gamma_sat_lb_ft3", false);
    const dry = twoFeet("RK-04", "gamma_lb_ft3", true);
    // The case rounds water to 62.4 lb/ft³; the engine's figure is 62.398.
    expect(Math.abs(psf(wet.atFoot) - expected("RK-05", "p_base_psf"))).toBeLessThan(0.05);
    expect(Math.abs(lbPerFt(wet.force) - expected("RK-05", "P_lb_per_ft"))).toBeLessThan(0.05);
    expect(wet.force / dry.force).toBeCloseTo(expected("RK-05", "ratio_to_RK-04"), 2);
  });

  it("refuses an angle that no soil has", () => {
    expect(() => activePressureCoefficient(90)).toThrow(RangeError);
    expect(() => activePressureCoefficient(Number.NaN)).toThrow(RangeError);
  });
});

describe("the bow of a board", () => {
  // Uniform load at mid depth on a simply supported beam, E = 1,000,000 psi; within 1 % as the cases say.
  const depths: Readonly<Record<string, readonly [board: string, depthInches: number]>> = {
    "BR-01": ["2x6", 24],
    "BR-02": ["2x6", 24],
    "BR-03": ["1x6", 11],
    "BR-04": ["2x12", 11.25],
  };

  it.each(Object.entries(depths))("%s", (id, [board, depth]) => {
    const size = boardSize(board);
    const bow = boardBow({
      thickness: size?.thickness ?? 0,
      height: size?.height ?? 0,
      depth: depth * INCH,
      span: given(id, "span_ft") * FOOT,
      unitWeight: kNm3(given(id, "gamma")),
      friction: given(id, "phi"),
      stiffness: MPa(given(id, "E_psi")),
    });
    const within = (value: number, of: number) => expect(Math.abs(value / of - 1)).toBeLessThan(0.01);
    within(psf(bow.pressure), expected(id, "mid_pressure_psf"));
    within(lbPerFt(bow.lineLoad), expected(id, "line_load_lb_ft"));
    within(psi(bow.bending), expected(id, "bending_psi"));
    within(bow.deflection / INCH, expected(id, "deflection_in"));
  });

  it("falls sixteenfold and its stress fourfold where a stake halves the span, BR-05", () => {
    const board = { thickness: 38, height: 140, depth: 610 };
    const whole = boardBow({ ...board, span: 2400 });
    const half = boardBow({ ...board, span: 2400 * given("BR-05", "span_factor") });
    expect(half.deflection / whole.deflection).toBeCloseTo(expected("BR-05", "deflection_factor"), 10);
    expect(half.bending / whole.bending).toBeCloseTo(expected("BR-05", "bending_factor"), 10);
  });

  it("is nothing above the soil's surface", () => {
    expect(boardBow({ thickness: 38, height: 140, depth: 50, span: 2400 }).deflection).toBe(0);
  });
});

describe("stakes, loads and screws", () => {
  it.each(["ST-01", "ST-02", "ST-03"])("sets mid stakes by ceil(length / spacing) - 1: %s", (id) => {
    const stakes = midStakes(given(id, "side_ft") * FOOT, given(id, "stake_max_spacing_ft") * FOOT);
    expect(stakes.count).toBe(expected(id, "intermediate_stakes_per_side"));
  });

  it("spaces them evenly, ST-03", () => {
    const { spacing } = midStakes(10 * FOOT, 4 * FOOT);
    expect(spacing / FOOT).toBeCloseTo(expected("ST-03", "spacing_ft"), 3);
  });

  it("needs none on a side as long as the spacing in other units, and refuses no spacing", () => {
    expect(midStakes(1219.2000001, 4 * FOOT).count).toBe(0);
    expect(() => midStakes(2400, 0)).toThrow(RangeError);
  });

  it("weighs 12 in of soil at 100 lb/ft² and 3200 lb on a 4 x 8 ft bed, LD-01", () => {
    const load = soilLoad(12 * INCH, kNm3(given("LD-01", "gamma")));
    expect(psf(load)).toBeCloseTo(expected("LD-01", "pressure_psf"), 6);
    expect(psf(load) * 4 * 8).toBeCloseTo(expected("LD-01", "weight_lb"), 4);
  });

  it("uses up a deck's 40 lb/ft² with 4.8 in of soil, LD-02", () => {
    const load = (given("LD-02", "live_load_psf") * LBF) / 1000 / 0.3048 ** 2;
    const depth = depthForLoad(load, kNm3(given("LD-02", "gamma")));
    expect(depth / INCH).toBeCloseTo(expected("LD-02", "depth_that_uses_all_of_it_in"), 6);
  });

  // Common practice: two screws to a 2x6, three to a 2x10, four to a 2x12.
  it.each([
    ["2x4", 2],
    ["2x6", 2],
    ["2x8", 3],
    ["2x10", 3],
    ["2x12", 4],
  ])("drives screws by board height: %s takes %i", (board, screws) => {
    expect(screwsPerEnd(boardSize(board)?.height ?? 0)).toBe(screws);
  });

  it("comes to 32 screws for two courses of four 2x6 boards, SC-01", () => {
    const ends = given("SC-01", "boards_per_course") * given("SC-01", "courses") * 2;
    expect(ends).toBe(expected("SC-01", "board_ends"));
    expect(ends * screwsPerEnd(boardSize("2x6")?.height ?? 0)).toBe(expected("SC-01", "screws"));
  });
});
