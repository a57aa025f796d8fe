import { aboveZero, atLeastZero, within } from "./within.ts";

/** An outlet of a drip line: q = k h^x through its rated flow. */
export interface Emitter {
  /** Rated flow, at the rated pressure. */
  readonly flowLh: number;
  readonly atKPa: number;
  /** x: 0 keeps its flow at any pressure, 0.5 is a nozzle or a whirling path, 1 a long gliding path. */
  readonly exponent: number;
  /** Pressure from which a pressure-keeping emitter keeps its flow; below it flows like a nozzle. 0 for all others. */
  readonly keepsFromKPa: number;
}

/** Under this share of its rated pressure water no more than glides through an emitter: flow then falls with pressure. */
const GLIDES_BELOW = 0.01;

/**
 * Flow of an emitter at a pressure, L/h; none without pressure. The equation is fitted to working pressures; under a hundredth
 * of the rated one it is carried on straight to nothing, which for a small exponent it would not reach.
 * @throws RangeError for a rated flow or pressure of nothing, or an exponent outside 0 to 1
 * @source the emitter equation of Karmeli and Keller 1975, Trickle Irrigation Design; from memory
 */
export function emitterFlowLh(emitter: Emitter, kPa: number): number {
  checkEmitter(emitter);
  const glides = GLIDES_BELOW * emitter.atKPa;
  if (!(kPa > 0)) return 0;
  return kPa < glides ? (kPa / glides) * byEquation(emitter, glides) : byEquation(emitter, kPa);
}

function byEquation({ flowLh, atKPa, exponent, keepsFromKPa }: Emitter, kPa: number): number {
  // Carried down from the end of the range, so that flow does not jump there.
  const flow = flowLh * (Math.max(kPa, keepsFromKPa) / atKPa) ** exponent;
  return kPa < keepsFromKPa ? flow * Math.sqrt(kPa / keepsFromKPa) : flow;
}

/** @throws RangeError for an emitter that there cannot be */
export function checkEmitter(emitter: Emitter): void {
  aboveZero(emitter.flowLh, "the rated flow");
  aboveZero(emitter.atKPa, "the rated pressure");
  within(emitter.exponent, 0, 1, "the emitter exponent");
  atLeastZero(emitter.keepsFromKPa, "the pressure from which the flow is kept");
}

/**
 * The exponent of an emitter from two flows of its chart.
 * @throws RangeError where the pressures are the same
 */
export function emitterExponent(
  low: { readonly kPa: number; readonly flowLh: number },
  high: { readonly kPa: number; readonly flowLh: number },
): number {
  const pressures = Math.log(aboveZero(high.kPa, "a pressure") / aboveZero(low.kPa, "a pressure"));
  if (pressures === 0) throw new RangeError(`two pressures are needed, not ${low.kPa} kPa twice`);
  return Math.log(aboveZero(high.flowLh, "a flow") / aboveZero(low.flowLh, "a flow")) / pressures;
}
