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

/**
 * Flow of an emitter at a pressure, L/h; none without pressure.
 * @throws RangeError for a rated flow or pressure of nothing, or an exponent outside 0 to 1
 * @source the emitter equation of Karmeli and Keller 1975, Trickle Irrigation Design; from memory
 */
export function emitterFlowLh(emitter: Emitter, kPa: number): number {
  const { flowLh, atKPa, exponent, keepsFromKPa } = checkEmitter(emitter);
  if (!(kPa > 0)) return 0;
  // Carried down from the end of the range, so that flow does not jump there.
  const held = Math.max(kPa, keepsFromKPa);
  const flow = flowLh * (held / atKPa) ** exponent;
  return kPa < keepsFromKPa ? flow * Math.sqrt(kPa / keepsFromKPa) : flow;
}

export function checkEmitter(emitter: Emitter): Emitter {
  aboveZero(emitter.flowLh, "the rated flow");
  aboveZero(emitter.atKPa, "the rated pressure");
  within(emitter.exponent, 0, 1, "the emitter exponent");
  atLeastZero(emitter.keepsFromKPa, "the pressure from which the flow is kept");
  return emitter;
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
