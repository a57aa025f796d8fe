import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { effectiveRain } from "../../src/water/effective-rain.ts";
import { easyShareAt, rootDepthOn, totalAvailable } from "../../src/water/root-store.ts";
import { soilOfMix, soilOfTexture, usableShare } from "../../src/water/soil-water.ts";
import { type BalanceDay, waterBalance } from "../../src/water/water-balance.ts";
import { litresByRule, WEEKLY_RULE } from "../../src/water/weekly-rule.ts";

const amount = (most: number) => fc.double({ min: 0, max: most, noNaN: true });

describe("the soil of a bed", () => {
  it("is its parts: one of compost to two of topsoil lies a third of the way", () => {
    const [loam, compost] = [soilOfTexture("loam"), soilOfMix({ compost: 1, topsoil: 0, soilless: 0 })];
    const mix = soilOfMix({ compost: 1, topsoil: 2, soilless: 0 });
    expect(mix.drained).toBeCloseTo((2 * loam.drained + compost.drained) / 3, 12);
    expect(soilOfMix({ compost: 2, topsoil: 4, soilless: 0 })).toEqual(mix);
    expect(soilOfMix({ compost: 0, topsoil: 3, soilless: 0 })).toEqual(loam);
  });

  it("is refused without a part of anything, and where it wilts before it has drained", () => {
    expect(() => soilOfMix({ compost: 0, topsoil: 0, soilless: 0 })).toThrow(RangeError);
    expect(() => usableShare({ drained: 0.1, wilting: 0.2 })).toThrow(RangeError);
  });

  it("holds by its real depth: half the soil, half the store, over a hard floor", () => {
    const soil = soilOfTexture("sandy-loam");
    const store = (depth: number) => totalAvailable({ depth, soil, ground: null }, 700);
    expect(store(300)).toBeCloseTo(2 * store(150), 10);
    expect(store(900)).toBe(store(700));
    const [bed, ground] = [soilOfTexture("loam"), soilOfTexture("sand")];
    expect(totalAvailable({ depth: 300, soil: bed, ground }, 700)).toBeCloseTo(
      usableShare(bed) * 300 + usableShare(ground) * 400,
      10,
    );
  });

  it("is reached by roots that grow evenly until the crop is grown", () => {
    const depthOn = (day: number) => rootDepthOn(day, [30, 50, 40, 20], { least: 700, most: 1500 });
    expect([depthOn(0), depthOn(40), depthOn(80), depthOn(139)]).toEqual([150, 425, 700, 700]);
    // A strawberry's roots never go as deep as others start.
    expect(rootDepthOn(0, [30, 50, 40, 20], { least: 100, most: 200 })).toBe(100);
  });

  it("gives its water less easily on a thirsty day", () => {
    expect(easyShareAt(0.4, 9)).toBeLessThan(easyShareAt(0.4, 5));
    expect([easyShareAt(0.7, 0), easyShareAt(0.2, 9)]).toEqual([0.8, 0.1]);
    expect(() => easyShareAt(1.4, 5)).toThrow(RangeError);
  });
});

const day = (over: Partial<BalanceDay> = {}): BalanceDay => ({
  rain: 0,
  cropEt: 4,
  total: 40,
  easyShare: 0.4,
  irrigation: 0,
  ...over,
});

describe("the store from day to day", () => {
  it("empties by what the crop gives off, then slower, and never past wilting", () => {
    const results = waterBalance(
      Array.from({ length: 60 }, () => day()),
      0,
    );
    // 16 mm come with ease: four days of 4 mm, and on the fifth the crop starts from there.
    expect(results.slice(0, 5).map(({ depletion }) => depletion)).toEqual([4, 8, 12, 16, 20]);
    expect(results[5]!.ease).toBeCloseTo((40 - 20) / (0.6 * 40), 10);
    expect(results.at(-1)!.depletion).toBeGreaterThan(39.9);
    expect(results.every(({ depletion, ease }) => depletion <= 40 && ease >= 0 && ease <= 1)).toBe(true);
  });

  it("lets what it cannot hold run through, and takes rain before that", () => {
    const [first, second] = waterBalance([day({ rain: 30 }), day({ irrigation: 10 })], 12);
    expect(first).toMatchObject({ depletion: 0, drained: 14 });
    expect(second).toMatchObject({ depletion: 0, drained: 6, cropEt: 4 });
  });

  it("does not count a rain that hardly wets the leaves", () => {
    const [light, real] = [0.7, 0.9].map((rain) => waterBalance([day({ rain })], 10)[0]!.depletion);
    expect(light).toBe(14);
    expect(real).toBeCloseTo(13.1, 10);
  });

  it("is filled as soon as the easy part is used up, and the crop never wants", () => {
    const results = waterBalance(
      Array.from({ length: 30 }, () => day({ irrigation: "fill" })),
      0,
    );
    expect(results.every(({ ease, depletion }) => ease === 1 && depletion <= 16)).toBe(true);
    expect(results.filter(({ irrigation }) => irrigation > 0).map(({ irrigation }) => irrigation)).toEqual(
      Array(7).fill(16),
    );
  });

  it("loses nothing: in, out and left over add up", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            rain: amount(40),
            cropEt: amount(10),
            total: fc.constant(45),
            easyShare: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
            irrigation: fc.oneof(amount(30), fc.constant("fill" as const)),
          }),
          { minLength: 1, maxLength: 40 },
        ),
        amount(45),
        (days, start) => {
          const results = waterBalance(days, start);
          let missing = start;
          results.forEach((result, i) => {
            const { rain, cropEt: wanted } = days[i]!;
            const counted = rain < 0.2 * wanted ? 0 : rain;
            const left = missing - counted - result.irrigation + result.cropEt + result.drained;
            expect(result.depletion).toBeCloseTo(left, 8);
            expect(result.depletion).toBeGreaterThanOrEqual(0);
            expect(result.depletion).toBeLessThanOrEqual(45);
            expect(result.cropEt).toBeLessThanOrEqual(wanted);
            missing = result.depletion;
          });
        },
      ),
    ));

  it("refuses more missing than it holds, and water below nothing", () => {
    expect(() => waterBalance([day()], 41)).toThrow("missing");
    expect(() => waterBalance([day({ rain: -1 })], 0)).toThrow("rain");
    expect(() => waterBalance([day({ irrigation: -1 })], 0)).toThrow("watering");
    expect(waterBalance([], 0)).toEqual([]);
  });

  it("misses no more than it holds after a planting with shorter roots", () => {
    const [, second] = waterBalance([day({ total: 80 }), day({ total: 30, irrigation: 10, cropEt: 0 })], 60);
    expect(second!.depletion).toBe(20);
  });

  it("of a bed without soil wilts a crop at once", () =>
    expect(waterBalance([day({ total: 0 })], 0)[0]).toMatchObject({ ease: 0, cropEt: 0, depletion: 0 }));
});

describe("rain that serves", () => {
  it("is never more than fell nor than the crop gives off, and more in a larger store", () =>
    fc.assert(
      fc.property(amount(400), amount(300), amount(150), (rain, cropEt, store) => {
        const served = effectiveRain(rain, cropEt, store);
        expect(served).toBeGreaterThanOrEqual(0);
        expect(served).toBeLessThanOrEqual(Math.min(rain, cropEt));
        expect(effectiveRain(rain, cropEt, store + 20)).toBeGreaterThanOrEqual(served - 1e-9);
        expect(effectiveRain(rain + 10, cropEt, store)).toBeGreaterThanOrEqual(served - 1e-9);
      }),
    ));

  it("is none of none, and a store past the range is taken at its end", () => {
    expect(effectiveRain(0, 100, 50)).toBe(0);
    expect(effectiveRain(80, 150, 500)).toBe(effectiveRain(80, 150, 190.5));
    expect(() => effectiveRain(-1, 100, 50)).toThrow(RangeError);
  });
});

describe("the rule of thumb", () => {
  it("is an inch a week less what it rained, and says that it is no more than about that", () => {
    expect(litresByRule(3e6)).toBeCloseTo(76.2, 10);
    expect(litresByRule(3e6, 10)).toBeCloseTo(46.2, 10);
    expect(litresByRule(3e6, 40)).toBe(0);
    expect(WEEKLY_RULE.amount).toBe("about an inch a week, rain counted");
    expect(() => litresByRule(3e6, -1)).toThrow(RangeError);
  });
});
