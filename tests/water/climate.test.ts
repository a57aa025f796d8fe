import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationKPa, windAt2m } from "../../src/water/air.ts";
import { referenceMonths } from "../../src/water/climate.ts";
import { lowestHumidityPercent, vapourKPa } from "../../src/water/humidity.ts";
import { clearSkyMJ, radiationFromHours, radiationFromRange } from "../../src/water/radiation.ts";
import { hargreaves } from "../../src/water/reference.ts";
import { skyOf } from "../../src/water/sky.ts";
import { INLAND, INLAND_PLACE, turned } from "./year.ts";

const latitudes = fc.double({ min: -90, max: 90, noNaN: true });
const days = fc.integer({ min: 1, max: 365 });

describe("the sky", () => {
  it("is dark all day in the polar night and light all day in the polar day", () => {
    expect(skyOf(80, 355)).toMatchObject({ daylightHours: 0, radiationMJ: 0 });
    expect(skyOf(80, 172).daylightHours).toBe(24);
    expect(skyOf(-80, 172).radiationMJ).toBe(0);
    expect(skyOf(-90, 355).daylightHours).toBe(24);
  });

  // Half a year is 182.5 days in a year of 365: the declination then is the same on the other side.
  it("of the south is that of the north half a year later, but for the distance of the sun", () =>
    fc.assert(
      fc.property(latitudes, fc.double({ min: 1, max: 183, noNaN: true }), (latitude, day) => {
        const [north, south] = [skyOf(latitude, day), skyOf(-latitude, day + 182.5)];
        expect(south.daylightHours).toBeCloseTo(north.daylightHours, 6);
        expect(south.radiationMJ / south.relativeDistance).toBeCloseTo(
          north.radiationMJ / north.relativeDistance,
          6,
        );
      }),
    ));

  it("never gives less than nothing nor more than the south pole's midsummer", () =>
    fc.assert(
      fc.property(latitudes, days, (latitude, day) => {
        const { radiationMJ, daylightHours } = skyOf(latitude, day);
        expect(radiationMJ).toBeGreaterThanOrEqual(0);
        expect(radiationMJ).toBeLessThanOrEqual(skyOf(-90, 355).radiationMJ + 0.1);
        expect(daylightHours).toBeLessThanOrEqual(24);
      }),
    ));
});

describe("the air", () => {
  it("tells the same vapour by dew point as by pressure", () => {
    expect(vapourKPa({ measured: "dew-point", celsius: 11 }, 24, 9)).toBe(saturationKPa(11));
    expect(vapourKPa({ measured: "vapour", kPa: saturationKPa(11) }, 24, 9)).toBe(saturationKPa(11));
  });

  it("takes the night's lowest temperature for the dew point where nothing was measured", () =>
    expect(vapourKPa(null, 24, 9)).toBe(saturationKPa(9)));

  it("is dampest at night: full humidity at the lowest temperature is that vapour", () => {
    expect(vapourKPa({ measured: "max", maxPercent: 100 }, 24, 9)).toBe(saturationKPa(9));
    expect(lowestHumidityPercent(saturationKPa(9), 24)).toBeCloseTo(38.5, 1);
  });

  it("leaves a wind measured at 2 m nearly as it is", () => expect(windAt2m(3.7, 2000)).toBeCloseTo(3.7, 2));
});

describe("radiation", () => {
  const sky = skyOf(40, 196);

  it("is what a clear sky lets through on a day without cloud at sea level", () =>
    expect(radiationFromHours(sky.daylightHours, sky)).toBeCloseTo(clearSkyMJ(sky, 0), 10));

  it("guessed from temperatures is more inland than at the coast's factor would lose, and never more than clear", () => {
    const inland = radiationFromRange(30, 18, sky, 0, "interior");
    expect(radiationFromRange(30, 18, sky, 0, "coast") / inland).toBeCloseTo(0.19 / 0.16, 10);
    expect(radiationFromRange(40, 2, sky, 0, "coast")).toBe(clearSkyMJ(sky, 0));
  });
});

describe("reference evapotranspiration by month", () => {
  it("is Hargreaves where temperatures are all there is", () => {
    const july = referenceMonths(INLAND, INLAND_PLACE)[6]!;
    expect(july).toMatchObject({ method: "hargreaves", guessed: ["humidity", "sunshine", "wind"] });
    expect(july.et0).toBe(hargreaves(32, 15, skyOf(40, 196)));
  });

  it("is Penman-Monteith as soon as anything else was measured, and says what it guessed", () => {
    const windy = INLAND.map((each) => ({ ...each, wind: { ms: 3, height: 10_000 } }));
    const july = referenceMonths(windy, INLAND_PLACE)[6]!;
    expect(july).toMatchObject({ method: "penman-monteith", guessed: ["humidity", "sunshine"] });
    expect(july.windMs).toBeCloseTo(3 * 0.748, 2);
    const still = INLAND.map((each) => ({ ...each, wind: { ms: 0.5, height: 10_000 } }));
    expect(referenceMonths(still, INLAND_PLACE)[6]!.et0).toBeLessThan(july.et0);
  });

  it("takes measured radiation and hours of sunshine alike", () => {
    const sky = skyOf(40, 196);
    const hours = INLAND.map((each) => ({ ...each, sunshine: { measured: "hours", hours: 9 } as const }));
    const radiationMJ = radiationFromHours(9, sky);
    const measured = INLAND.map((each, i) =>
      i === 6 ? { ...each, sunshine: { measured: "radiation", radiationMJ } as const } : each,
    );
    expect(referenceMonths(measured, INLAND_PLACE)[6]!.et0).toBe(
      referenceMonths(hours, INLAND_PLACE)[6]!.et0,
    );
  });

  it("follows the hemisphere: the same weather half a year later differs by the sun's distance alone", () => {
    const north = referenceMonths(INLAND, INLAND_PLACE);
    const south = turned(referenceMonths(turned(INLAND, 6), { ...INLAND_PLACE, latitude: -40 }), 6);
    north.forEach(({ et0 }, at) => {
      const [day, later] = [15 + at * 30.4, 15 + ((at + 6) % 12) * 30.4];
      const distance = skyOf(0, later).relativeDistance / skyOf(0, day).relativeDistance;
      // The 15ths of two months half a year apart are not quite 182.5 days apart: up to 2 days, 2.5 % of radiation.
      expect(Math.abs(south[at]!.et0 / et0 / distance - 1)).toBeLessThanOrEqual(0.03);
    });
  });

  it("is a finite amount in every climate there is, the poles included", () =>
    fc.assert(
      fc.property(
        latitudes,
        fc.array(
          fc.record({
            minC: fc.double({ min: -60, max: 30, noNaN: true }),
            range: fc.double({ min: 0, max: 25, noNaN: true }),
            windy: fc.option(fc.double({ min: 0, max: 20, noNaN: true })),
            damp: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
          }),
          { minLength: 12, maxLength: 12 },
        ),
        (latitude, months) => {
          const climate = months.map(({ minC, range, windy, damp }) => ({
            minC,
            maxC: minC + range,
            rain: 20,
            humidity: damp === null ? null : ({ measured: "mean", meanPercent: damp } as const),
            sunshine: null,
            wind: windy === null ? null : { ms: windy, height: 2000 },
          }));
          for (const { et0 } of referenceMonths(climate, { ...INLAND_PLACE, latitude })) {
            expect(et0).toBeGreaterThanOrEqual(0);
            expect(et0).toBeLessThan(60);
          }
        },
      ),
      { numRuns: 200 },
    ));
});

describe("what cannot be", () => {
  const with6 = (over: object) => INLAND.map((each, i) => (i === 6 ? { ...each, ...over } : each));
  it.each([
    ["a day that is colder than its night", with6({ maxC: 10, minC: 12 })],
    ["a year of eleven months", INLAND.slice(1)],
    ["rain below nothing", with6({ rain: -1 })],
    ["more sunshine than daylight", with6({ sunshine: { measured: "hours", hours: 17 } })],
    ["more radiation than the sun sends", with6({ sunshine: { measured: "radiation", radiationMJ: 55 } })],
    ["air damper than full", with6({ humidity: { measured: "mean", meanPercent: 120 } })],
    [
      "a highest humidity under the lowest",
      with6({ humidity: { measured: "range", maxPercent: 30, minPercent: 60 } }),
    ],
    ["a dew point above the day's heat", with6({ humidity: { measured: "dew-point", celsius: 33 } })],
    ["wind that blows backwards", with6({ wind: { ms: -1, height: 2000 } })],
    ["a gauge in the grass", with6({ wind: { ms: 2, height: 50 } })],
    ["no temperature at all", with6({ maxC: Number.NaN })],
  ])("is refused: %s", (_, climate) => {
    expect(() => referenceMonths(climate, INLAND_PLACE)).toThrow(RangeError);
  });

  it("is refused: a latitude past the pole, a 400th day, a mountain in space", () => {
    expect(() => skyOf(91, 1)).toThrow("latitude");
    expect(() => skyOf(0, 400)).toThrow("day of the year");
    const windy = INLAND.map((each) => ({ ...each, wind: { ms: 3, height: 10_000 } }));
    expect(() => referenceMonths(windy, { ...INLAND_PLACE, altitudeM: 20_000 })).toThrow("altitude");
  });
});
