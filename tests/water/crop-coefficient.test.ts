import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CROP_IDS } from "../../src/garden/crop-ids.ts";
import { dayOfYear, daysIn, monthOfDay, wrapDay } from "../../src/water/calendar.ts";
import { kcCurve, kcInAir, kcOn, seasonDaysOf, stagesOver } from "../../src/water/crop-coefficient.ts";
import { cropWater } from "../../src/water/crop-water.ts";
import { kcUnderMulch } from "../../src/water/mulched-soil.ts";
import { kcOfWetting } from "../../src/water/wetted-soil.ts";

const TABLE_AIR = { windMs: 2, lowestHumidityPercent: 45 };
const crops = fc.constantFrom(...CROP_IDS);

describe("the coefficient through a season", () => {
  it("starts at the first, stays at the middle and ends at the last figure of the table, in the table's air", () =>
    fc.assert(
      fc.property(crops, fc.integer({ min: 10, max: 365 }), (id, days) => {
        const crop = cropWater(id);
        const curve = kcCurve(
          crop,
          { days, onSupports: false, initial: crop.kcInitial },
          { mid: TABLE_AIR, late: TABLE_AIR },
        );
        expect(seasonDaysOf(curve.stages)).toBeCloseTo(days, 9);
        const [initial, development, mid] = curve.stages;
        expect(kcOn(curve, 0)).toBe(crop.kcInitial);
        expect(kcOn(curve, initial + development + mid / 2)).toBe(crop.kcMid);
        expect(kcOn(curve, seasonDaysOf(curve.stages))).toBeCloseTo(crop.kcEnd, 9);
        expect([kcOn(curve, -0.1), kcOn(curve, days + 0.1)]).toEqual([0, 0]);
      }),
    ));

  it("never jumps", () =>
    fc.assert(
      fc.property(crops, fc.double({ min: 0, max: 99.9, noNaN: true }), (id, day) => {
        const curve = kcCurve(
          cropWater(id),
          { days: 100, onSupports: true, initial: 0.6 },
          { mid: TABLE_AIR, late: TABLE_AIR },
        );
        expect(Math.abs(kcOn(curve, day + 0.1) - kcOn(curve, day))).toBeLessThan(0.05);
      }),
    ));

  it("keeps the proportion of the stages", () => {
    expect(stagesOver([20, 30, 40, 10], 50)).toEqual([10, 15, 20, 5]);
    expect(() => stagesOver([20, 30, 40, 10], 0)).toThrow(RangeError);
    expect(() => stagesOver([0, 0, 0, 0], 50)).toThrow(RangeError);
  });
});

describe("carried over to other air", () => {
  it("is that of the table in the table's air, more in wind, less in damp", () => {
    expect(kcInAir(1.15, 600, TABLE_AIR)).toBe(1.15);
    expect(kcInAir(1.15, 600, { ...TABLE_AIR, windMs: 4 })).toBeCloseTo(1.15 + 0.08 * 0.2 ** 0.3, 10);
    expect(kcInAir(1.15, 600, { ...TABLE_AIR, lowestHumidityPercent: 70 })).toBeCloseTo(
      1.15 - 0.1 * 0.2 ** 0.3,
      10,
    );
  });

  it("is kept at the ends of the range it was found in", () => {
    const at = (windMs: number, lowestHumidityPercent: number) =>
      kcInAir(1.05, 400, { windMs, lowestHumidityPercent });
    expect([at(9, 45), at(0.2, 45), at(2, 95), at(2, 5)]).toEqual([
      at(6, 45),
      at(1, 45),
      at(2, 80),
      at(2, 20),
    ]);
  });

  it("leaves crops that are let dry out alone", () =>
    expect(kcInAir(0.3, 500, { windMs: 5, lowestHumidityPercent: 25 })).toBe(0.3));

  it.each([
    [0, 500, 2, 45],
    [1, 0, 2, 45],
    [1, 500, -1, 45],
    [1, 500, 2, 101],
  ])("refuses %d, %d mm, %d m/s, %d %%", (kc, height, windMs, lowestHumidityPercent) =>
    expect(() => kcInAir(kc, height, { windMs, lowestHumidityPercent })).toThrow(RangeError),
  );
});

describe("the coefficient of wetted soil", () => {
  const wetting = fc.record({
    everyDays: fc.double({ min: 0.5, max: 20, noNaN: true }),
    depth: fc.double({ min: 1, max: 60, noNaN: true }),
    wettedShare: fc.double({ min: 0.1, max: 1, noNaN: true }),
    grain: fc.constantFrom("coarse" as const, "fine" as const),
  });

  it("is 1.15 of the wetted share at the most, and less the longer the soil dries", () =>
    fc.assert(
      fc.property(wetting, fc.double({ min: 1, max: 10, noNaN: true }), (each, et0) => {
        const kc = kcOfWetting(each, et0);
        expect(kc).toBeGreaterThan(0);
        expect(kc).toBeLessThanOrEqual(1.15 * each.wettedShare + 1e-9);
        expect(kcOfWetting({ ...each, everyDays: each.everyDays * 1.5 }, et0)).toBeLessThanOrEqual(kc + 1e-9);
      }),
    ));

  it("cannot give off more between two wettings than the soil's surface holds", () =>
    fc.assert(
      fc.property(wetting, fc.double({ min: 1, max: 10, noNaN: true }), (each, et0) => {
        const lost = kcOfWetting(each, et0) * et0 * each.everyDays;
        expect(lost).toBeLessThanOrEqual(28 * each.wettedShare + 1e-9);
      }),
    ));

  it.each([
    { everyDays: 0, depth: 5, wettedShare: 1 },
    { everyDays: 2, depth: 0, wettedShare: 1 },
    { everyDays: 2, depth: 5, wettedShare: 0 },
    { everyDays: 2, depth: 5, wettedShare: 1.1 },
  ])("refuses %o", (each) => expect(() => kcOfWetting({ ...each, grain: "fine" }, 4)).toThrow(RangeError));
});

describe("under mulch", () => {
  it("the young crop loses half as much from soil that is all covered, a quarter less where half is", () => {
    expect([0, 0.5, 1].map((share) => kcUnderMulch(0.8, share))).toEqual(
      [0.8, 0.6, 0.4].map((kc) => expect.closeTo(kc, 12)),
    );
    expect(() => kcUnderMulch(0.8, 1.2)).toThrow("mulch");
  });
});

describe("the calendar", () => {
  it("knows the days that FAO-56 table 2.5 gives: 1 March is day 60, 31 December 365", () =>
    expect([dayOfYear(2, 1), dayOfYear(11, 31), daysIn(1)]).toEqual([60, 365, 28]));

  it("runs on over new year", () => {
    expect([wrapDay(366), wrapDay(730), wrapDay(0)]).toEqual([1, 365, 365]);
    expect([monthOfDay(31), monthOfDay(32), monthOfDay(365 + 60)]).toEqual([0, 1, 2]);
  });

  it("has no 29 February and no 13th month", () => {
    expect(() => dayOfYear(1, 29)).toThrow("day of the month");
    expect(() => dayOfYear(12, 1)).toThrow("month");
  });
});
