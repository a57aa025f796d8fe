import { atLeastZero } from "./within.ts";

/** How evenly a line or a bed is watered; 1 is the same everywhere. */
export interface Uniformity {
  /** Christiansen's coefficient CU: 1 less the mean departure over the mean flow. */
  readonly christiansen: number;
  /** The mean of the driest quarter over the mean of all: DU. */
  readonly lowerQuarter: number;
  /** EU as designed: the least flow over the mean, less what makers' spread takes. */
  readonly emission: number;
  /** (Highest flow - lowest) / highest. */
  readonly variation: number;
}

/**
 * Evenness of flows.
 *
 * @param flowsLh of all emitters, of which at least one flows
 * @param spread coefficient of variation of new emitters as the maker gives it; 0.05 is good
 * @param together emitters that serve one plant, 1 or more
 * @throws RangeError without flows
 * @source CU: J. E. Christiansen 1942; DU: the lowest quarter, USDA Soil Conservation Service; EU = (1 - 1.27 v / sqrt(n)) qmin / qmean:
 *   Keller and Karmeli 1974; from memory
 */
export function uniformityOf(flowsLh: readonly number[], spread = 0, together = 1): Uniformity {
  atLeastZero(spread, "the spread of emitters");
  if (!(together >= 1)) throw new RangeError(`at least one emitter serves a plant, not ${together}`);
  const sorted = flowsLh.map((flow) => atLeastZero(flow, "a flow")).toSorted((a, b) => a - b);
  const mean = meanOf(sorted);
  if (!(mean > 0)) throw new RangeError("nothing flows");
  const [least, most] = [sorted[0]!, sorted.at(-1)!];
  const departure = meanOf(sorted.map((flow) => Math.abs(flow - mean)));
  const quarter = sorted.slice(0, Math.max(1, Math.round(sorted.length / 4)));
  return {
    christiansen: 1 - departure / mean,
    lowerQuarter: meanOf(quarter) / mean,
    emission: Math.max(0, 1 - (1.27 * spread) / Math.sqrt(together)) * (least / mean),
    variation: (most - least) / most,
  };
}

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
