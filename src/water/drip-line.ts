import { checkEmitter, type Emitter, emitterFlowLh } from "./emitter.ts";
import { KPA_PER_M, pipeLossKPa } from "./pipe.ts";
import { aboveZero, atLeastZero, within } from "./within.ts";

/** A straight drip line with emitters of one kind, closed at its end. */
export interface DripLine {
  readonly emitter: Emitter;
  readonly emitters: number;
  /** From one emitter to the next, mm. */
  readonly spacing: number;
  /** From the inlet to the first emitter, mm. */
  readonly lead: number;
  /** True inside diameter, mm. */
  readonly bore: number;
  /** Fall of the line, mm a mm: positive where it runs downhill; 0 in a bed. */
  readonly fall: number;
  readonly inletKPa: number;
}

/** A line at work; emitters from the inlet on. */
export interface DripLineFlow {
  readonly flowsLh: readonly number[];
  readonly pressuresKPa: readonly number[];
  readonly inletLh: number;
  /** Share by which the highest pressure of the line exceeds the lowest, inlet not counted, 0 to 1. */
  readonly pressureVariation: number;
}

/** No line of a garden has more. */
const MOST_EMITTERS = 2000;
const HALVINGS = 60;
/** Less than this is nothing. */
const LEAST_KPA = 1e-300;

/**
 * Works a drip line out emitter by emitter: each takes what its pressure gives it, each length of tube loses what the flow
 * that is left asks (Darcy-Weisbach). Losses where emitters sit in the tube are not counted.
 *
 * The pressure at the end is searched: from it everything upstream follows, and a higher end means a higher inlet.
 *
 * @throws RangeError for no emitters, no bore, a fall steeper than 1, or a pressure below zero
 */
export function dripLine(line: DripLine): DripLineFlow {
  checkLine(line);
  const { flowsLh, pressuresKPa } = upstreamOf(line, endPressureKPa(line));
  const [most, least] = [Math.max(...pressuresKPa), Math.max(0, Math.min(...pressuresKPa))];
  return {
    flowsLh,
    pressuresKPa,
    inletLh: flowsLh.reduce((sum, flow) => sum + flow, 0),
    pressureVariation: most > 0 ? (most - least) / most : 0,
  };
}

/**
 * The pressure at the last emitter that asks for the line's inlet pressure. Along a thin line it falls by powers of ten, so
 * it is sought by its power and not by its size. Below nothing where the end of the line lies dry above the water.
 */
function endPressureKPa(line: DripLine): number {
  const tooHigh = (endKPa: number) => upstreamOf(line, endKPa).inletKPa > line.inletKPa;
  const gain = fallKPa(line);
  // At the least nothing flows and the water just does not enter; at the most nothing is lost on the way.
  if (tooHigh(0)) return bisect(Math.min(0, gain), 0, tooHigh);
  if (tooHigh(LEAST_KPA)) return 0;
  const most = line.inletKPa + Math.max(0, gain);
  return Math.exp(bisect(Math.log(LEAST_KPA), Math.log(most), (power) => tooHigh(Math.exp(power))));
}

/** Pressure won from the inlet to the end by the fall of the line, kPa; below nothing uphill. */
const fallKPa = ({ emitters, spacing, lead, fall }: DripLine) =>
  (fall * (lead + spacing * (emitters - 1)) * KPA_PER_M) / 1000;

function bisect(from: number, to: number, tooHigh: (value: number) => boolean): number {
  let [low, high] = [from, to];
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (tooHigh(middle)) high = middle;
    else low = middle;
  }
  return low;
}

/** The line as it must be for a pressure at its last emitter. */
function upstreamOf(line: DripLine, endKPa: number) {
  const { emitter, emitters, spacing, lead, bore, fall } = line;
  const flowsLh = new Array<number>(emitters).fill(0);
  const pressuresKPa = new Array<number>(emitters).fill(0);
  let pressure = endKPa;
  let carried = 0;
  const most = line.inletKPa + Math.max(0, fallKPa(line));
  for (let i = emitters - 1; i >= 0; i--) {
    // More than the tap can give anywhere: the end was taken too high, and further up flows only run away.
    if (pressure > most * (1 + 1e-9)) return { flowsLh, pressuresKPa, inletKPa: Infinity };
    pressuresKPa[i] = pressure;
    flowsLh[i] = emitterFlowLh(emitter, pressure);
    carried += flowsLh[i]!;
    const length = i === 0 ? lead : spacing;
    pressure += pipeLossKPa({ flowLh: carried, bore, length }) - (fall * length * KPA_PER_M) / 1000;
  }
  return { flowsLh, pressuresKPa, inletKPa: pressure };
}

function checkLine({ emitter, emitters, spacing, lead, bore, fall, inletKPa }: DripLine): void {
  checkEmitter(emitter);
  within(emitters, 1, MOST_EMITTERS, "the emitters of a line");
  if (!Number.isInteger(emitters)) throw new RangeError(`no number of emitters: ${emitters}`);
  aboveZero(spacing, "the spacing of emitters");
  atLeastZero(lead, "the way to the first emitter");
  aboveZero(bore, "the bore");
  within(fall, -1, 1, "the fall of a line");
  atLeastZero(inletKPa, "the pressure at the inlet");
}

/**
 * The most emitters a line may have so that its flow does not vary by more than a share, and 0 where not even one gets water.
 * @param variation (highest flow - lowest) / highest, above 0, under 1; a tenth is usual
 */
export function longestLine(line: Omit<DripLine, "emitters">, variation: number): number {
  aboveZero(within(variation, 0, 1, "the variation"), "the variation");
  const holds = (emitters: number) => {
    const { flowsLh } = dripLine({ ...line, emitters });
    const most = Math.max(...flowsLh);
    return most > 0 && (most - Math.min(...flowsLh)) / most <= variation;
  };
  if (!holds(1)) return 0;
  let good = 1;
  while (good < MOST_EMITTERS && holds(Math.min(2 * good, MOST_EMITTERS)))
    good = Math.min(2 * good, MOST_EMITTERS);
  let bad = Math.min(2 * good, MOST_EMITTERS + 1);
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
