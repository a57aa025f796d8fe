import { describe, expect, it } from "vitest";
import { poundsPerAcre, seedFor } from "../../src/crops/seed-rate.ts";
import { dripRate, minutesFor, rainRate } from "../../src/water/run-time.ts";
import { have, printed, WATER, waterCase } from "./water-cases.ts";

// By definition.
const INCH = 25.4;
const FOOT = 12 * INCH;
const GALLON = 3.785411784;
const OUNCE_G = 453.59237 / 16;

const asPrinted = (value: number, of: number) =>
  expect(Math.abs(value - of)).toBeLessThanOrEqual(printed(of));

describe("how fast drip lines rain", () => {
  it.each(["DR-D1", "DR-D2", "DR-D3"])("%s: 231 gph / (emitter x line spacing), inches an hour", (id) => {
    const row = waterCase("drip_rate", id);
    const rate = dripRate(
      row.gph * GALLON,
      have(row.emitter_in, "emitter spacing") * INCH,
      have(row.line_in, "line spacing") * INCH,
    );
    asPrinted(rate / INCH, have(row.in_per_h, "rate"));
  });

  it("DR-D4: hours for an inch on a bed of 4 by 8 ft with three lines of eight", () => {
    const row = waterCase("drip_rate", "DR-D4");
    const [width, length] = row.bed_ft ?? [0, 0];
    const area = width * FOOT * length * FOOT;
    const flowLh = have(row.lines, "lines") * have(row.emitters_per_line, "emitters") * row.gph * GALLON;
    const depth = have(row.depth_in, "depth") * INCH;
    asPrinted(depth / rainRate(flowLh, area), have(row.hours, "hours"));
    asPrinted(minutesFor((depth * area) / 1e6, flowLh) / 60, have(row.hours, "hours"));
  });

  it("has no other case", () => expect(WATER.drip_rate.cases).toHaveLength(4));
});

// 43 560 square feet to the acre.
describe("seed of a rate in pounds an acre", () => {
  it("RC-D1: pounds on 1000 square feet, ounces on 100", () => {
    const row = waterCase("rate_conversion", "RC-D1");
    const rate = poundsPerAcre(row.lb_acre);
    asPrinted(seedFor(rate, 1000 * FOOT ** 2) / OUNCE_G / 16, have(row.lb_1000sqft, "pounds"));
    asPrinted(seedFor(rate, 100 * FOOT ** 2) / OUNCE_G, have(row.oz_100sqft, "ounces"));
  });

  it("RC-D2: ounces for one bed", () => {
    const row = waterCase("rate_conversion", "RC-D2");
    const seed = seedFor(poundsPerAcre(row.lb_acre), have(row.area_sqft, "area") * FOOT ** 2);
    asPrinted(seed / OUNCE_G, have(row.oz, "ounces"));
  });
});
