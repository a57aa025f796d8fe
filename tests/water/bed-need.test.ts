import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bedNeed, type WateredCrop } from "../../src/water/bed-need.ts";
import { dayOfYear } from "../../src/water/calendar.ts";
import { referenceMonths } from "../../src/water/climate.ts";
import { bedOf, INLAND, INLAND_PLACE, month, planting, rainOf, turned } from "./year.ts";

const reference = referenceMonths(INLAND, INLAND_PLACE);
const rain = rainOf(INLAND);
const yearOf = (plantings: readonly WateredCrop[], over: Parameters<typeof bedOf>[1] = {}, efficiency = 1) =>
  bedNeed(bedOf(plantings, over), reference, rain, efficiency);
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe("what a bed needs", () => {
  it("is nothing for ground without a crop, bare or covered, in sun or rain", () => {
    for (const rainedOn of [true, false]) {
      for (const each of yearOf([], { rainedOn })) {
        expect(each).toMatchObject({
          kc: 0,
          cropEt: 0,
          effectiveRain: 0,
          need: 0,
          litresAWeek: 0,
          everyDays: null,
        });
      }
    }
  });

  it("is nothing in the months when nothing stands in it", () => {
    const year = yearOf([planting({ plantedOn: dayOfYear(4, 15), days: 100 })]);
    expect(year.map(({ litresAWeek }) => litresAWeek > 0)).toEqual(
      [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((at) => at >= 4 && at <= 7),
    );
  });

  it("is met from rain first, and all from the tap under a roof", () => {
    const [open, roofed] = [true, false].map((rainedOn) => yearOf([planting()], { rainedOn }));
    open!.forEach((each, at) => {
      expect(each.need).toBeCloseTo(each.cropEt - each.effectiveRain, 9);
      expect(each.effectiveRain).toBeLessThanOrEqual(rain[at]!);
      expect(roofed![at]!.need).toBeCloseTo(roofed![at]!.cropEt, 9);
      expect(roofed![at]!.cropEt).toBe(each.cropEt);
    });
    expect(total(open!.map(({ effectiveRain }) => effectiveRain))).toBeGreaterThan(50);
  });

  it("grows with the bed and with what is lost on the way, and with nothing else of the bed's size", () => {
    const july = (over: Parameters<typeof bedOf>[1], efficiency = 1) =>
      yearOf([planting()], over, efficiency)[6]!.litresAWeek;
    expect(july({ areaMm2: 6e6 }) / july({ areaMm2: 2e6 })).toBeCloseTo(3, 9);
    expect(july({}, 0.9) * 0.9).toBeCloseTo(july({}), 9);
  });

  it("adds up from the crops that share it", () => {
    const [tomato, lettuce] = [planting(), planting({ crop: "lettuce-leaf", plantedOn: 100, days: 60 })];
    const halves = yearOf([
      { ...tomato, share: 0.25 },
      { ...lettuce, share: 0.75 },
    ]);
    const [all, other] = [yearOf([tomato]), yearOf([lettuce])];
    halves.forEach((each, at) => {
      expect(each.need).toBeCloseTo(0.25 * all[at]!.need + 0.75 * other[at]!.need, 9);
    });
  });

  it("is asked for less often where the soil is deeper, in the same amount but for the rain it keeps", () => {
    const shallow = yearOf([planting()], { rainedOn: false });
    const deep = yearOf([planting()], {
      rainedOn: false,
      room: { depth: 560, soil: { drained: 0.25, wilting: 0.12 }, ground: null },
    });
    expect(deep[6]!.need).toBe(shallow[6]!.need);
    expect(deep[6]!.everyDays!).toBeCloseTo(2 * shallow[6]!.everyDays!, 9);
  });

  it("reaches into open ground below: more store than over a hard floor", () => {
    const soil = { drained: 0.25, wilting: 0.12 };
    const hard = yearOf([planting()])[6]!;
    const open = yearOf([planting()], { room: { depth: 280, soil, ground: soil } })[6]!;
    // Tomatoes root 0.7 m deep, the bed is 0.28 m: two and a half times the store.
    expect(open.everyDays! / hard.everyDays!).toBeGreaterThan(2.2);
  });

  it("is more for a crop on supports in dry air, as FAO-56 table 12 note 2 has it", () => {
    const [bush, staked] = [false, true].map((onSupports) => yearOf([planting({ onSupports })])[6]!);
    expect(staked!.cropEt).toBeGreaterThan(bush!.cropEt * 1.03);
  });

  it("follows how the young crop is wetted: drip on a third of the soil wastes little", () => {
    const wettingOf = (wettedShare: number) =>
      ({ everyDays: 2, depth: 5, wettedShare, grain: "fine" }) as const;
    const may = (wettedShare: number) => yearOf([planting()], { wetting: wettingOf(wettedShare) })[4]!.cropEt;
    expect(may(0.35)).toBeLessThan(0.6 * may(1));
  });

  it("is less for a young crop under mulch and the same for a grown one", () => {
    const [bare, mulched] = [0, 1].map((mulchedShare) => yearOf([planting()], { mulchedShare }));
    expect(mulched![4]!.cropEt / bare![4]!.cropEt).toBeCloseTo(0.5, 10);
    expect(mulched![7]!.cropEt).toBe(bare![7]!.cropEt);
  });

  it("runs over new year: garlic from October to June", () => {
    const year = yearOf([planting({ crop: "garlic", plantedOn: dayOfYear(9, 15), days: 250 })]);
    expect(year.map(({ cropEt }) => cropEt > 0)).toEqual([
      ...[true, true, true, true, true, true],
      ...[false, false, false, true, true, true],
    ]);
  });

  it("counts every day of a stand once, however it lies in the year", () => {
    const flat = Array.from({ length: 12 }, () => month({ et0: 1 }));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 365 }), fc.integer({ min: 1, max: 365 }), (plantedOn, days) => {
        const sum = (start: number) =>
          total(
            bedNeed(bedOf([planting({ plantedOn: start, days })]), flat, Array(12).fill(0), 1).map(
              ({ cropEt }) => cropEt,
            ),
          );
        expect(sum(plantedOn)).toBeCloseTo(sum(1), 9);
      }),
      { numRuns: 60 },
    );
  });

  it("is over the season the area under the curve of the coefficient", () => {
    const flat = Array.from({ length: 12 }, () => month({ et0: 1 }));
    const year = bedNeed(bedOf([planting({ crop: "broccoli", days: 135 })]), flat, Array(12).fill(0), 1);
    // Stages of 35, 45, 40 and 15 days; 0.7, to 1.05, to 0.95, in the table's air: by the rule of trapezoids.
    const area = 35 * 0.7 + 45 * ((0.7 + 1.05) / 2) + 40 * 1.05 + 15 * ((1.05 + 0.95) / 2);
    expect(total(year.map(({ cropEt }) => cropEt))).toBeCloseTo(area, 6);
  });

  // Months half a year apart differ by up to three days. So in the last of them the crop stands 27 of 30 days in the north
  // and 30 of 31 in the south, 7.5 % more; in the others only the stages fall a day or two otherwise.
  it("is in the south what it is in the north half a year later, under the same weather", () => {
    const north = yearOf([planting({ plantedOn: dayOfYear(4, 1), days: 150 })]);
    const south = turned(
      bedNeed(
        bedOf([planting({ plantedOn: dayOfYear(10, 1), days: 150 })]),
        turned(reference, 6),
        turned(rain, 6),
        1,
      ),
      6,
    );
    const ratios = [4, 5, 6, 7, 8].map((at) => south[at]!.litresAWeek / north[at]!.litresAWeek);
    for (const ratio of ratios.slice(0, 4)) expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(ratios[4]! / (30 / 31 / (27 / 30)) - 1)).toBeLessThanOrEqual(0.03);
    expect([0, 1, 2, 3, 9, 10, 11].map((at) => south[at]!.litresAWeek)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });
});

describe("a bed that cannot be", () => {
  it.each([
    ["fuller than full", [planting({ share: 0.7 }), planting({ crop: "pea", plantedOn: 200, share: 0.4 })]],
    ["planted on no day", [planting({ plantedOn: 0 })]],
    ["planted at noon", [planting({ plantedOn: 100.5 })]],
    ["for more than a year", [planting({ days: 400 })]],
    ["with less than no share", [planting({ share: -0.1 })]],
  ])("is refused: %s", (_, plantings) => expect(() => yearOf(plantings)).toThrow(RangeError));

  it("is refused: without efficiency, or a year of another length", () => {
    expect(() => yearOf([planting()], {}, 0)).toThrow("efficiency");
    expect(() => bedNeed(bedOf([]), reference.slice(1), rain, 1)).toThrow("twelve");
  });

  it("is not refused where shares add up to one but for the computer's rounding", () => {
    const shares = [
      planting({ crop: "pea", share: 0.33 }),
      planting({ crop: "kale", share: 0.56 }),
      planting({ crop: "chard", share: 0.11 }),
    ];
    expect(total(shares.map(({ share }) => share))).toBeGreaterThan(1);
    expect(() => yearOf(shares)).not.toThrow();
  });
});
