import { describe, expect, it } from "vitest";
import { christiansenFactor, lateralLossKPa } from "../../src/water/outlets.ts";
import {
  frictionFactor,
  hazenWilliamsKPa,
  KPA_PER_M,
  pipeLossKPa,
  reynolds,
  speedMs,
} from "../../src/water/pipe.ts";
import { WATER, waterCase, waterTolerance } from "./water-cases.ts";

// By definition.
const INCH = 25.4;
const FOOT = 12 * INCH;
const GPM = 60 * 3.785411784;
const PSI = 6.894757293;
const FOOT_OF_WATER = (KPA_PER_M * FOOT) / 1000;

const within = (value: number, of: number, share: number) =>
  expect(Math.abs(value / of - 1)).toBeLessThanOrEqual(share);

describe("Hazen-Williams", () => {
  // HW-D1 is a published worked example (200 gpm in 3.048 in, C = 140: 9 ft in 100 ft). The file uses the US form; the SI
  // form here differs from it by up to 1.4 %, which is within the tolerance given.
  it.each(WATER.hazen_williams.cases)("$id", (row) => {
    const run = { flowLh: row.q_gpm * GPM, bore: row.d_in * INCH, length: row.length_ft * FOOT };
    const kPa = hazenWilliamsKPa(run, row.C);
    const share = waterTolerance("hazen_williams_relative");
    within(kPa / FOOT_OF_WATER, row.loss_ft, share);
    within(kPa / PSI, row.loss_psi, share);
    within((100 * kPa) / FOOT_OF_WATER / row.length_ft, row.loss_ft_per_100ft, share);
    expect(Math.abs((speedMs(run.flowLh, run.bore) * 1000) / FOOT - row.velocity_ft_s)).toBeLessThanOrEqual(
      0.051,
    );
  });

  // The exponents of the bore differ, so the difference grows with it: the 1.4 % that is quoted is that of the published
  // example's 3 in pipe.
  it.each([
    [3.048, 0.014],
    [0.6, 0.006],
    [0.17, 0.0003],
  ])("gives less in SI form than in US form, in %d in by %d", (bore, share) => {
    const si = hazenWilliamsKPa({ flowLh: 2 * GPM, bore: bore * INCH, length: 100 * FOOT }, 140);
    const us = (0.2083 * (100 / 140) ** 1.852 * 2 ** 1.852) / bore ** 4.8655;
    expect(Math.abs(us / (si / FOOT_OF_WATER) - 1 - share)).toBeLessThanOrEqual(0.0007);
  });

  // Compared with Darcy-Weisbach and Blasius in 0.600 in tubing: the shares by which Hazen-Williams falls short.
  it.each([
    [1, 150, 0.21],
    [1.5, 150, 0.17],
    [1, 140, 0.1],
    [1.5, 140, 0.06],
  ])("falls short in half-inch tubing at %d gpm with C = %d by %d", (gpm, C, share) => {
    const us = (0.2083 * (100 / C) ** 1.852 * gpm ** 1.852) / 0.6 ** 4.8655;
    const darcy = pipeLossKPa({ flowLh: gpm * GPM, bore: 0.6 * INCH, length: 100 * FOOT }) / FOOT_OF_WATER;
    // The shares are printed in whole percents; water at 20 degrees in both.
    expect(Math.abs(1 - us / darcy - share)).toBeLessThanOrEqual(0.011);
  });
});

describe("Darcy-Weisbach in a smooth pipe", () => {
  // Read off any Moody chart, from memory; Blasius lies up to 2.5 % above the smooth line at its lower end.
  it.each([
    [1000, 0.064],
    [10_000, 0.0309],
    [100_000, 0.018],
    [1_000_000, 0.0116],
  ])("has the friction factor of the chart at Re %d", (re, factor) =>
    within(frictionFactor(re), factor, 0.025),
  );

  it("is Hagen and Poiseuille's law where water glides", () => {
    const run = { flowLh: 8, bore: 4.3, length: 3000 };
    expect(reynolds(run.flowLh, run.bore)).toBeLessThan(2000);
    // 128 mu L Q / (pi d^4), with 1000 kg/m3 and 1.004e-6 m2/s.
    const pascal =
      (128 * 1.004e-3 * (run.length / 1000) * (run.flowLh / 3.6e6)) / (Math.PI * (run.bore / 1000) ** 4);
    expect(pipeLossKPa(run)).toBeCloseTo(pascal / 1000, 9);
  });
});

describe("Christiansen's factor", () => {
  it.each(WATER.christiansen.cases)("$id: $N outlets", ({ N, F }) => {
    expect(Math.abs(christiansenFactor(N) - F)).toBeLessThanOrEqual(0.00006);
  });

  // The factor stands for a sum over the lengths between outlets: (1/N) sum (i/N)^m.
  it.each([1, 2, 5, 10, 20, 50, 100])("agrees with the sum it stands for: %d outlets", (N) => {
    let sum = 0;
    for (let i = 1; i <= N; i++) sum += (i / N) ** 1.852;
    expect(christiansenFactor(N)).toBeCloseTo(sum / N, 2);
  });
});

describe("a lateral by the desk method", () => {
  it.each(WATER.drip_lateral.cases)("$id", (row) => {
    const run = { flowLh: row.inlet_gpm * GPM, bore: row.tubing_in * INCH, length: row.length_ft * FOOT };
    const kPa = lateralLossKPa(run, row.emitters, row.C);
    const share = waterTolerance("hazen_williams_relative");
    within(kPa / FOOT_OF_WATER, row.loss_ft, share);
    within(kPa / PSI, row.loss_psi, share);
    // All the emitters together take what comes in.
    within((row.emitters * row.gph_each) / 60, row.inlet_gpm, 0.001);
  });

  it("has the flow of every lateral", () => expect(waterCase("drip_lateral", "DL-D1").inlet_gpm).toBe(1.5));
});
