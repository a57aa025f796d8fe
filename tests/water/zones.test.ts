import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MonthNeed } from "../../src/water/bed-need.ts";
import { MONTHS } from "../../src/water/calendar.ts";
import { pipeLossKPa } from "../../src/water/pipe.ts";
import { dripRate, minutesFor, rainRate, runsOf, zoneMinutes, zoneYear } from "../../src/water/run-time.ts";
import {
  bucketFlowLh,
  pressureAtLines,
  tapPressureKPa,
  USABLE_SHARE,
  zoneLimitLh,
} from "../../src/water/tap-flow.ts";
import { type BedLines, planZones } from "../../src/water/zones.ts";

const beds = (flows: readonly number[]): BedLines[] =>
  flows.map((lineLh, i) => ({ id: `bed ${i}`, lines: 1, lineLh }));

/** The fewest zones there are, by trying every set of beds. */
function fewestBy(flows: readonly number[], limit: number): number {
  const whole = 2 ** flows.length;
  const sumOf = (set: number) => flows.reduce((sum, flow, i) => sum + (set & (1 << i) ? flow : 0), 0);
  const fits = Array.from({ length: whole }, (_, set) => sumOf(set) <= limit);
  const fewest = new Array<number>(whole).fill(Infinity);
  fewest[0] = 0;
  for (let set = 1; set < whole; set++) {
    for (let part = set; part > 0; part = (part - 1) & set) {
      if (fits[part]) fewest[set] = Math.min(fewest[set]!, 1 + fewest[set ^ part]!);
    }
  }
  return fewest[whole - 1]!;
}

describe("zones", () => {
  it("are as few as there can be", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 5, max: 100 }), { minLength: 1, maxLength: 9 }), (flows) => {
        const plan = planZones(beds(flows), 100);
        expect(plan.fewest).toBe(true);
        expect(plan.zones).toHaveLength(fewestBy(flows, 100));
      }),
      { numRuns: 80 },
    ));

  it("are fewer than the largest bed first into the first zone with room would make them", () => {
    // That takes three: 52 + 42, 31 + 27 + 26, 21. Two do: 52 + 27 + 21 and 42 + 31 + 26.
    expect(
      planZones(beds([31, 27, 26, 42, 52, 21]), 100)
        .zones.map(({ flowLh }) => flowLh)
        .sort(),
    ).toEqual([100, 99]);
  });

  it("are known to be the fewest where no three beds fit into one", () => {
    const flows = Array.from({ length: 31 }, (_, i) => 335 + ((i * 37) % 60));
    expect(planZones(beds(flows), 1000)).toMatchObject({ fewest: true, zones: { length: 16 } });
  });

  it("hold every line once and never more than the limit", () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            lines: fc.integer({ min: 1, max: 8 }),
            lineLh: fc.double({ min: 5, max: 130, noNaN: true }),
          }),
          { maxLength: 12 },
        ),
        (rows) => {
          const laid = rows.map((row, i) => ({ ...row, id: `${i}` }));
          const { zones, tooThirsty } = planZones(laid, 120);
          for (const { flowLh } of zones) expect(flowLh).toBeLessThanOrEqual(120 * (1 + 1e-6));
          for (const { id, lines, lineLh } of laid) {
            const placed = zones.flatMap(({ parts }) => parts.filter((part) => part.id === id));
            const sum = placed.reduce((all, part) => all + part.lines, 0);
            expect(sum).toBe(lineLh <= 120 ? lines : 0);
            expect(tooThirsty.includes(id)).toBe(lineLh > 120);
          }
        },
      ),
    ));

  it("keep a bed whole where it fits, and split it evenly where it does not", () => {
    expect(planZones([{ id: "a", lines: 4, lineLh: 25 }], 100).zones).toHaveLength(1);
    const { zones } = planZones([{ id: "a", lines: 5, lineLh: 30 }], 100);
    expect(zones.flatMap(({ parts }) => parts.map(({ lines }) => lines)).sort()).toEqual([2, 3]);
  });

  it("are none without beds, and without flow every bed asks too much", () => {
    expect(planZones([], 100)).toEqual({ zones: [], tooThirsty: [], fewest: true });
    expect(planZones(beds([10, 20]), 0).tooThirsty).toEqual(["bed 0", "bed 1"]);
  });

  it("are refused for half a line or a flow of nothing", () => {
    expect(() => planZones([{ id: "a", lines: 1.5, lineLh: 20 }], 100)).toThrow("lines");
    expect(() => planZones([{ id: "a", lines: 1, lineLh: 0 }], 100)).toThrow("flow");
    expect(() => planZones([], -1)).toThrow("limit");
  });
});

describe("the tap", () => {
  const supply = { stillKPa: 350, openLh: 1800 };

  it("is measured with a bucket: 10 L in 20 s are 1800 L an hour", () =>
    expect(bucketFlowLh(10, 20)).toBe(1800));

  it("has all its pressure at rest and none wide open", () => {
    expect(tapPressureKPa(supply, 0)).toBe(350);
    expect(tapPressureKPa(supply, 1800)).toBe(0);
    expect(tapPressureKPa(supply, 900)).toBeCloseTo(350 * (1 - 0.5 ** 1.852), 10);
  });

  it("leaves each zone the pressure its lines need", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 250, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        (needed, lost) => {
          const most = zoneLimitLh(supply, { lostKPa: lost, main: null }, needed);
          expect(most).toBeLessThanOrEqual(USABLE_SHARE * 1800);
          expect(tapPressureKPa(supply, most)).toBeGreaterThanOrEqual(needed + lost - 1e-6);
        },
      ),
    ));

  it("gives as much as that pressure allows, where pressure and not flow is short", () => {
    const most = zoneLimitLh(supply, { lostKPa: 60, main: null }, 200);
    expect(most).toBeLessThan(USABLE_SHARE * 1800);
    expect(tapPressureKPa(supply, most)).toBeCloseTo(260, 6);
    expect(zoneLimitLh(supply, { lostKPa: 10, main: null }, 40)).toBe(USABLE_SHARE * 1800);
  });

  it("gives less at the end of a long thin main, and just what arrives there", () => {
    const way = { lostKPa: 60, main: { bore: 15.2, length: 40_000 } };
    const most = zoneLimitLh(supply, way, 100);
    expect(most).toBeLessThan(0.8 * zoneLimitLh(supply, { ...way, main: null }, 100));
    expect(pressureAtLines(supply, way, most)).toBeCloseTo(100, 6);
    const lost = pipeLossKPa({ ...way.main, flowLh: most });
    expect(tapPressureKPa(supply, most) - 60 - lost).toBeCloseTo(100, 6);
  });

  it("gives no zone at all where even at rest it has too little", () =>
    expect(zoneLimitLh(supply, { lostKPa: 60, main: null }, 300)).toBe(0));

  it("is refused without flow, time or pressure", () => {
    expect(() => bucketFlowLh(10, 0)).toThrow(RangeError);
    expect(() => zoneLimitLh({ stillKPa: 0, openLh: 1800 }, { lostKPa: 20, main: null }, 100)).toThrow(
      "pressure",
    );
    expect(() => tapPressureKPa(supply, 2000)).toThrow("flow");
  });
});

const nothing: MonthNeed = {
  et0: 1,
  kc: 0,
  cropEt: 0,
  effectiveRain: 0,
  need: 0,
  litresAWeek: 0,
  everyDays: null,
};

describe("minutes", () => {
  it("bring what is needed: the rate over the time is the water", () => {
    const flowLh = 36;
    const minutes = minutesFor(54, flowLh);
    expect(minutes).toBe(90);
    expect((rainRate(flowLh, 3e6) * minutes) / 60).toBeCloseTo(54 / 3, 10);
  });

  it("of emitters on a grid are those of the whole bed", () => {
    // A bed of 1.2 by 2.4 m with lines 0.3 m and emitters 0.4 m apart has four lines of six.
    expect(dripRate(1.6, 400, 300)).toBeCloseTo(rainRate(24 * 1.6, 1200 * 2400), 10);
  });

  it("are shared out over as many runs as the store asks for", () => {
    expect(runsOf(120, 3)).toEqual({ aWeek: 3, minutesEach: 40 });
    expect(runsOf(120, 30)).toEqual({ aWeek: 1, minutesEach: 120 });
    expect(runsOf(120, 0.01).aWeek).toBe(21);
    expect([runsOf(0, 3), runsOf(0, null)]).toEqual(Array(2).fill({ aWeek: 0, minutesEach: 0 }));
  });

  it("of a zone are those of its neediest bed", () => {
    const zone = [
      { litresAWeek: 60, flowLh: 40 },
      { litresAWeek: 50, flowLh: 25 },
    ];
    expect(zoneMinutes(zone)).toBe(120);
    expect(zoneMinutes([])).toBe(0);
  });

  it("of a zone follow the year: the driest month longest, none in winter", () => {
    const needs = (litres: number, everyDays: number) =>
      MONTHS.map((month) =>
        month < 4 || month > 8 ? nothing : { ...nothing, litresAWeek: litres * (month - 3), everyDays },
      );
    const year = zoneYear([
      { months: needs(10, 3), flowLh: 40 },
      { months: needs(20, 2), flowLh: 60 },
    ]);
    expect(year[0]).toEqual({ aWeek: 0, minutesEach: 0 });
    // In September, 100 L at 60 L/h: 100 minutes, in four runs as the second bed's store lasts two days.
    expect(year[8]).toEqual({ aWeek: 4, minutesEach: 25 });
    expect(zoneYear([])).toEqual(Array(12).fill({ aWeek: 0, minutesEach: 0 }));
    expect(() => zoneYear([{ months: needs(1, 1).slice(1), flowLh: 40 }])).toThrow("twelve");
  });

  it("are refused without a flow or a bed", () => {
    expect(() => minutesFor(10, 0)).toThrow("flow");
    expect(() => rainRate(10, 0)).toThrow("area");
    expect(() => dripRate(2, 0, 300)).toThrow("spacing");
  });
});
