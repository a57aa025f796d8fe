import { describe, expect, it } from "vitest";
import { applyOps, costAYear, EXAMPLES, type ItemOf } from "../../src/index.ts";
import { woodSinking } from "../../src/upkeep/settling.ts";
import { YEAR_PARTS, yearsAhead } from "../../src/upkeep/years-ahead.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { fourByEight, mixedGarden, RIVERSIDE } from "./tasks.ts";

const total = (amounts: readonly number[]) => amounts.reduce((sum, amount) => sum + amount, 0);

describe("the years ahead", () => {
  it.each([...EXAMPLES.map(({ garden }) => garden), mixedGarden(RIVERSIDE)])(
    "$name: renewals, mulch and compost come to what the year-cost says they do",
    (garden) => {
      const { first, renewals } = costAYear(garden);
      const { sums, years } = yearsAhead(garden);
      expect(years).toHaveLength(garden.prices.horizon);
      expect(sums.built).toBe(first);
      expect(sums.topUp + sums.mulch + sums.renewals).toBeCloseTo(renewals, 1);
      expect(renewals).toBeGreaterThan(0);
    },
  );

  it("add up, year by year and part by part", () => {
    const { sums, years } = yearsAhead(mixedGarden(RIVERSIDE), 12);
    for (const year of years) expect(year.total).toBeCloseTo(total(YEAR_PARTS.map((part) => year[part])), 2);
    for (const part of YEAR_PARTS) expect(sums[part]).toBeCloseTo(total(years.map((year) => year[part])), 2);
    expect(sums.total).toBeCloseTo(total(years.map((year) => year.total)), 1);
  });

  it("put each renewal in the year in which the middle of its life is over", () => {
    // Douglas-fir, five to seven years: in year 6, 12, and not again at the very end of 18.
    const { years } = yearsAhead(gardenWith({ site: RIVERSIDE }, fourByEight("a")), 18);
    expect(years.flatMap(({ year, renewed }) => (renewed.length > 0 ? [[year, renewed]] : []))).toEqual([
      [6, ["Walls of Douglas-fir"]],
      [12, ["Walls of Douglas-fir"]],
    ]);
    expect(years[0]?.topUp).toBe(0);
    expect(years[1]?.topUp).toBeGreaterThan(0);
  });

  it("price water by the gardener's own price", () => {
    const garden = gardenWith({ site: RIVERSIDE }, fourByEight("a", { crops: ["tomato"] }));
    const example = yearsAhead(garden);
    expect(example.prices[0]).toMatchObject({ own: false, good: { key: "water:kgal" } });
    expect(example.waterBy).toBe("rule-of-thumb");
    // 1000 gal at $40.
    const own = yearsAhead(applyOps(garden, [{ op: "set-price", key: "water:kgal", value: 40 }]));
    expect(own.prices[0]?.own).toBe(true);
    expect(own.years[3]?.water).toBeCloseTo((own.waterL / 3785.411784) * 40, 2);
    expect(own.years[3]?.water).toBeGreaterThan(example.years[3]?.water ?? 0);
  });

  it("ask no water and no seed of beds in which nothing grows and nothing is sown", () => {
    const { sums, waterL } = yearsAhead(
      gardenWith({ site: RIVERSIDE }, fourByEight("a", { winter: "mulch" })),
    );
    expect([sums.water, sums.seed, waterL]).toEqual([0, 0, 0]);
  });

  it("weigh seed at the middle of its rate", () => {
    const { years, prices } = yearsAhead(
      gardenWith({ site: RIVERSIDE }, fourByEight("a", { winter: "cover-crop" })),
    );
    // 29.0625 ft² at 125 lb an acre of rye: 0.0834 lb at the example's $4.
    expect(prices[1]?.good.key).toBe("seed:rye:lb");
    expect(years[0]?.seed).toBeCloseTo((29.0625 / 43_560) * 125 * 4, 2);
  });

  it("tell of every other make of wall what the drawn ones save against it", () => {
    const { walls, wallsDrawn } = yearsAhead(gardenWith({ site: RIVERSIDE }, fourByEight("a")));
    expect(wallsDrawn).toBeGreaterThan(0);
    expect(walls.length).toBeGreaterThan(5);
    for (const { overYears, saved } of walls) expect(saved).toBeCloseTo(overYears - wallsDrawn, 2);
    expect(walls.some(({ id }) => id === "douglas-fir")).toBe(false);
  });

  it("refuse no years at all", () => {
    expect(() => yearsAhead(mixedGarden(RIVERSIDE), 0)).toThrow(RangeError);
    expect(yearsAhead(mixedGarden(RIVERSIDE), 1).years).toHaveLength(1);
  });
});

describe("layered beds", () => {
  const tall = (fill: Partial<ItemOf<"bed">["fill"]>) =>
    gardenWith(
      { site: RIVERSIDE },
      bed("a", { w: 1219.2, h: 2438.4, wall: { made: "metal", height: 800, thickness: 1.5 }, fill }),
    );

  it("lose half of their wood in ten years, the most in the first", () => {
    const sinking = woodSinking(1000, 11);
    expect(total(sinking.map(({ litres }) => litres))).toBeCloseTo(500, 6);
    expect(sinking.map(({ year }) => year)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    const litres = sinking.map((one) => one.litres);
    expect(litres).toEqual(litres.toSorted((a, b) => b - a));
  });

  it("are filled up year by year with their own mix, which costs, and saved more than that on mix", () => {
    const { years, sums, fills } = yearsAhead(tall({ way: "layered", mixDepth: 304.8 }));
    expect(years[0]?.refill).toBe(0);
    expect(years[1]?.refillL).toBeGreaterThan(years[9]?.refillL ?? 0);
    expect(sums.refill).toBeGreaterThan(0);
    expect(fills[0]).toMatchObject({ bedId: "a", now: true });
    expect(yearsAhead(tall({ way: "mix" })).sums.refill).toBe(0);
  });
});
