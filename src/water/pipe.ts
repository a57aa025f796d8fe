import { aboveZero, atLeastZero, within } from "./within.ts";

/** A straight run of pipe that carries one flow, full. */
export interface PipeRun {
  readonly flowLh: number;
  /** True inside diameter, mm: trade sizes do not tell it. */
  readonly bore: number;
  readonly length: number;
}

/** Pressure of a metre of water, kPa: 1000 kg/m³ under standard gravity. */
export const KPA_PER_M = 9.80665;
const GRAVITY = 9.80665;
/** Kinematic viscosity of water at 20 °C, m²/s. */
const VISCOSITY = 1.004e-6;
const SECONDS_PER_HOUR = 3600;

/** m³/s */
const flowOf = (flowLh: number) => atLeastZero(flowLh, "the flow") / 1000 / SECONDS_PER_HOUR;

/** Mean speed of the water, m/s. Under 1.5 m/s a shut valve does no harm: common practice. */
export function speedMs(flowLh: number, bore: number): number {
  const radiusM = aboveZero(bore, "the bore") / 2000;
  return flowOf(flowLh) / (Math.PI * radiusM ** 2);
}

/** Reynolds number at 20 °C: under 2000 the water glides, over 4000 it whirls. */
export const reynolds = (flowLh: number, bore: number): number =>
  (speedMs(flowLh, bore) * bore) / 1000 / VISCOSITY;

/**
 * Pressure lost in a straight pipe by Hazen-Williams, kPa.
 *
 * Valid for whirling water of 5 to 25 °C in pipes of 50 mm and more at up to 3 m/s. In garden tubing it gives too little: at
 * 230 to 340 L/h in 15.2 mm tubing 6 to 10 % with C = 140 and 17 to 21 % with C = 150 (against Darcy-Weisbach with Blasius);
 * so `pipeLossKPa` is used there. It is kept for mains and to check designs that others made with it.
 *
 * @param smoothness C: 140 to 150 for plastic; 60 to 160
 * @throws RangeError for a flow or length below zero, no bore, or a C that no pipe has
 * @source SI form, hf = 10.67 L Q^1.852 / (C^1.852 d^4.8704); the US form with 0.2083 and 4.8655 gives 0.6 % more
 *   in half-inch tubing and 1.4 % in 3 in pipe
 */
export function hazenWilliamsKPa({ flowLh, bore, length }: PipeRun, smoothness: number): number {
  within(smoothness, 60, 160, "the smoothness C");
  const lengthM = atLeastZero(length, "the length") / 1000;
  const boreM = aboveZero(bore, "the bore") / 1000;
  return (10.67 * lengthM * flowOf(flowLh) ** 1.852 * KPA_PER_M) / (smoothness ** 1.852 * boreM ** 4.8704);
}

/**
 * Pressure lost in a straight smooth plastic pipe by Darcy-Weisbach, kPa, at 20 °C: for every flow of a garden, gliding
 * (64 / Re), whirling (Blasius to Re 100 000, Prandtl and Karman to 10 000 000), and between the two a straight passage.
 *
 * @throws RangeError for a flow or length below zero, no bore, or a flow beyond the range
 * @source H. Blasius 1913 (f = 0.3164 Re^-0.25); the passage from 2000 to 4000, where flow is unsettled, is practice
 */
export function pipeLossKPa({ flowLh, bore, length }: PipeRun): number {
  const lengthM = atLeastZero(length, "the length") / 1000;
  const speed = speedMs(flowLh, bore);
  if (speed === 0) return 0;
  const headM =
    (frictionFactor(reynolds(flowLh, bore)) * (lengthM / (bore / 1000)) * speed ** 2) / (2 * GRAVITY);
  return headM * KPA_PER_M;
}

const GLIDES = 2000;
const WHIRLS = 4000;
const blasius = (re: number) => 0.3164 / re ** 0.25;

/** Darcy's friction factor of a smooth pipe. @param re Reynolds number, above 0, to 10 million */
export function frictionFactor(re: number): number {
  aboveZero(within(re, 0, 1e7, "the Reynolds number"), "the Reynolds number");
  if (re <= GLIDES) return 64 / re;
  if (re < WHIRLS) {
    const from = 64 / GLIDES;
    return from + ((re - GLIDES) / (WHIRLS - GLIDES)) * (blasius(WHIRLS) - from);
  }
  return re <= 1e5 ? blasius(re) : karman(re);
}

/** 1 / sqrt(f) = 2 log10(Re sqrt(f)) - 0.8, by steps that each mend the last to a tenth. */
function karman(re: number): number {
  let inverse = 1 / Math.sqrt(blasius(re));
  for (let step = 0; step < 12; step++) inverse = 2 * Math.log10(re / inverse) - 0.8;
  return inverse ** -2;
}
