import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DripLine, dripLine, longestLine } from "../../src/water/drip-line.ts";
import { emitterExponent, emitterFlowLh } from "../../src/water/emitter.ts";
import { christiansenFactor } from "../../src/water/outlets.ts";
import {
  frictionFactor,
  hazenWilliamsKPa,
  KPA_PER_M,
  pipeLossKPa,
  reynolds,
  speedMs,
} from "../../src/water/pipe.ts";
import { uniformityOf } from "../../src/water/uniformity.ts";

const NOZZLE = { flowLh: 2, atKPa: 100, exponent: 0.5, keepsFromKPa: 0 } as const;
const KEEPER = { flowLh: 2, atKPa: 100, exponent: 0, keepsFromKPa: 60 } as const;

const line = (over: Partial<DripLine> = {}): DripLine => ({
  emitter: NOZZLE,
  emitters: 24,
  spacing: 300,
  lead: 500,
  bore: 13,
  fall: 0,
  inletKPa: 90,
  ...over,
});

describe("friction in a pipe", () => {
  const flows = fc.double({ min: 0.5, max: 3000, noNaN: true });
  const bores = fc.double({ min: 3, max: 40, noNaN: true });

  it("grows with flow and length and shrinks with the bore", () =>
    fc.assert(
      fc.property(flows, bores, (flowLh, bore) => {
        const lost = pipeLossKPa({ flowLh, bore, length: 2000 });
        expect(lost).toBeGreaterThan(0);
        expect(pipeLossKPa({ flowLh, bore, length: 6000 })).toBeCloseTo(3 * lost, 6);
        expect(pipeLossKPa({ flowLh: flowLh * 1.1, bore, length: 2000 })).toBeGreaterThan(lost);
        expect(pipeLossKPa({ flowLh, bore: bore * 1.1, length: 2000 })).toBeLessThan(lost);
      }),
    ));

  it("does not jump where the flow turns from gliding to whirling, nor where the formula changes", () => {
    for (const re of [2000, 4000]) {
      expect(frictionFactor(re * 1.0001) / frictionFactor(re * 0.9999)).toBeCloseTo(1, 2);
    }
    // At 100 000 two formulas meet that agree within one part in a hundred.
    expect(Math.abs(frictionFactor(100_001) / frictionFactor(100_000) - 1)).toBeLessThan(0.012);
  });

  it("is none of water that stands", () => {
    expect(pipeLossKPa({ flowLh: 0, bore: 13, length: 9000 })).toBe(0);
    expect(hazenWilliamsKPa({ flowLh: 0, bore: 13, length: 9000 }, 140)).toBe(0);
    expect(reynolds(0, 13)).toBe(0);
  });

  it("is refused for no bore, a flow backwards, a length below nothing, a smoothness no pipe has", () => {
    expect(() => speedMs(100, 0)).toThrow("bore");
    expect(() => pipeLossKPa({ flowLh: -1, bore: 13, length: 900 })).toThrow("flow");
    expect(() => pipeLossKPa({ flowLh: 100, bore: 13, length: -900 })).toThrow("length");
    expect(() => hazenWilliamsKPa({ flowLh: 100, bore: 13, length: 900 }, 14)).toThrow("smoothness");
    expect(() => christiansenFactor(2.5)).toThrow("outlets");
    expect(() => frictionFactor(0)).toThrow(RangeError);
  });
});

describe("an emitter", () => {
  it("gives its rated flow at its rated pressure, and half as much at a quarter of it", () => {
    expect(emitterFlowLh(NOZZLE, 100)).toBe(2);
    expect(emitterFlowLh(NOZZLE, 25)).toBe(1);
    expect([emitterFlowLh(NOZZLE, 0), emitterFlowLh(NOZZLE, -5)]).toEqual([0, 0]);
  });

  it("gives next to nothing under next to no pressure, without a jump", () => {
    const flat = { ...NOZZLE, exponent: 0.1 };
    expect(emitterFlowLh(flat, 0.999_999) / emitterFlowLh(flat, 1.000_001)).toBeCloseTo(1, 4);
    expect(emitterFlowLh(flat, 0.01) / emitterFlowLh(flat, 1)).toBeCloseTo(0.01, 10);
  });

  it("that keeps its flow does so from its least pressure on, and falls off evenly below", () => {
    expect([60, 100, 300].map((kPa) => emitterFlowLh(KEEPER, kPa))).toEqual([2, 2, 2]);
    expect(emitterFlowLh(KEEPER, 15)).toBe(1);
  });

  it("has the exponent its chart shows", () => {
    expect(emitterExponent({ kPa: 40, flowLh: 1.2 }, { kPa: 90, flowLh: 1.8 })).toBeCloseTo(0.5, 10);
    expect(() => emitterExponent({ kPa: 50, flowLh: 1 }, { kPa: 50, flowLh: 2 })).toThrow("two pressures");
  });
});

describe("a drip line", () => {
  const lines = fc.record({
    emitters: fc.integer({ min: 1, max: 120 }),
    spacing: fc.double({ min: 100, max: 600, noNaN: true }),
    bore: fc.double({ min: 4, max: 16, noNaN: true }),
    fall: fc.integer({ min: -50, max: 50 }).map((perMille) => perMille / 1000),
    inletKPa: fc.double({ min: 5, max: 250, noNaN: true }),
    emitter: fc.constantFrom(NOZZLE, KEEPER, { ...NOZZLE, exponent: 1 }, { ...NOZZLE, exponent: 0.2 }),
  });

  it("balances: from the inlet on, each length loses what it carries and each emitter gives what it gets", () =>
    fc.assert(
      fc.property(lines, (over) => {
        const laid = line(over);
        const { flowsLh, pressuresKPa, inletLh } = dripLine(laid);
        let carried = inletLh;
        let pressure = laid.inletKPa;
        flowsLh.forEach((flow, i) => {
          const length = i === 0 ? laid.lead : laid.spacing;
          const rise = (laid.fall * length * KPA_PER_M) / 1000;
          pressure += rise - pipeLossKPa({ flowLh: Math.max(0, carried), bore: laid.bore, length });
          expect(pressuresKPa[i]!).toBeCloseTo(pressure, 4);
          expect(flow).toBeCloseTo(emitterFlowLh(laid.emitter, pressuresKPa[i]!), 9);
          carried -= flow;
        });
        expect(carried).toBeCloseTo(0, 6);
      }),
      { numRuns: 60 },
    ));

  it("gives more with more pressure, and on the level less from the first emitter to the last", () => {
    const [low, high] = [60, 120].map((inletKPa) => dripLine(line({ inletKPa })));
    expect(high!.inletLh).toBeGreaterThan(1.3 * low!.inletLh);
    expect(low!.flowsLh).toEqual([...low!.flowsLh].sort((a, b) => b - a));
    expect(low!.pressureVariation).toBeGreaterThan(0);
  });

  it("through a wide pipe waters like single emitters", () => {
    const { flowsLh } = dripLine(line({ bore: 60, inletKPa: 100 }));
    for (const flow of flowsLh) expect(flow).toBeCloseTo(2, 3);
  });

  it("uphill stays dry where the pressure does not reach", () => {
    // 10 kPa lift water a metre; the line climbs two.
    const { flowsLh } = dripLine(line({ fall: -0.28, inletKPa: KPA_PER_M }));
    expect(flowsLh[0]!).toBeGreaterThan(0);
    expect(flowsLh.at(-1)!).toBe(0);
    expect(dripLine(line({ fall: -0.28, inletKPa: KPA_PER_M })).pressureVariation).toBe(1);
  });

  it("without pressure gives nothing", () => {
    const { inletLh, pressureVariation } = dripLine(line({ inletKPa: 0 }));
    expect(inletLh).toBeCloseTo(0, 6);
    expect(pressureVariation).toBe(0);
  });

  it("regression: a thin line whose pressure dies out waters up to there and hardly beyond", () => {
    const thin = line({
      emitters: 54,
      spacing: 100,
      bore: 4,
      inletKPa: 5,
      emitter: { ...NOZZLE, exponent: 0.2 },
    });
    const { flowsLh } = dripLine(thin);
    expect(flowsLh[0]!).toBeGreaterThan(0.5);
    expect(flowsLh.at(-1)!).toBeLessThan(0.3);
    expect(dripLine({ ...thin, emitters: 400 }).flowsLh.at(-1)!).toBeLessThan(1e-9);
  });

  it("that is far too long and thin still waters at its head", () => {
    const { flowsLh } = dripLine(line({ emitters: 2000, bore: 3, emitter: { ...NOZZLE, exponent: 1 } }));
    expect(flowsLh[0]!).toBeGreaterThan(0.5);
    expect(flowsLh.at(-1)!).toBeLessThan(1e-6);
  });

  it("may be as long as its variation allows and not one emitter longer", () => {
    const { emitters: _, ...open } = line({ bore: 4.3, spacing: 150, lead: 150 });
    const most = longestLine(open, 0.1);
    const variation = (emitters: number) => uniformityOf(dripLine({ ...open, emitters }).flowsLh).variation;
    expect(most).toBeGreaterThan(10);
    expect(variation(most)).toBeLessThanOrEqual(0.1);
    expect(variation(most + 1)).toBeGreaterThan(0.1);
    expect(longestLine({ ...open, inletKPa: 0 }, 0.1)).toBe(0);
  });

  it.each([
    ["no emitters", { emitters: 0 }],
    ["half an emitter", { emitters: 2.5 }],
    ["no spacing", { spacing: 0 }],
    ["no bore", { bore: 0 }],
    ["a fall like a wall", { fall: 2 }],
    ["less than no pressure", { inletKPa: -1 }],
    ["an emitter of nothing", { emitter: { ...NOZZLE, flowLh: 0 } }],
    ["an emitter of no pressure", { emitter: { ...NOZZLE, atKPa: 0 } }],
    ["an exponent of two", { emitter: { ...NOZZLE, exponent: 2 } }],
  ])("is refused: %s", (_, over) => expect(() => dripLine(line(over))).toThrow(RangeError));
});

describe("evenness", () => {
  it("is what one works out by hand", () => {
    // Mean 2, departures 0.4, 0.2, 0, 0.6: mean 0.3.
    const { christiansen, lowerQuarter, emission, variation } = uniformityOf([2.4, 1.8, 2, 1.8], 0.05, 1);
    expect(christiansen).toBeCloseTo(1 - 0.2 / 2, 10);
    expect(lowerQuarter).toBeCloseTo(0.9, 10);
    expect(emission).toBeCloseTo((1 - 1.27 * 0.05) * 0.9, 10);
    expect(variation).toBeCloseTo(0.25, 10);
  });

  it("takes the driest quarter, two of eight, and spreads makers' errors over the emitters of a plant", () => {
    const flows = [1, 1.2, 2, 2, 2.3, 2.5, 2.5, 2.5];
    const { lowerQuarter, emission } = uniformityOf(flows, 0.1, 4);
    expect(lowerQuarter).toBeCloseTo(1.1 / 2, 10);
    expect(emission).toBeCloseTo((1 - (1.27 * 0.1) / 2) * (1 / 2), 10);
  });

  it("is whole where all give the same, and does not mind how much", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 4, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (flows) => {
          const [one, other] = [uniformityOf(flows), uniformityOf(flows.map((flow) => 3 * flow))];
          expect(other.christiansen).toBeCloseTo(one.christiansen, 9);
          expect(one.lowerQuarter).toBeLessThanOrEqual(1 + 1e-12);
          expect(uniformityOf(flows.map(() => flows[0]!))).toMatchObject({ variation: 0 });
        },
      ),
    ));

  it("is refused where nothing flows", () => {
    expect(() => uniformityOf([])).toThrow(RangeError);
    expect(() => uniformityOf([0, 0])).toThrow("nothing flows");
    expect(() => uniformityOf([1], 0.05, 0)).toThrow("emitter");
  });
});
