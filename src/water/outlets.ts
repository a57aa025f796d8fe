import { hazenWilliamsKPa, type PipeRun } from "./pipe.ts";
import { within } from "./within.ts";

/** Exponent of the flow in Hazen-Williams; 1.75 with Blasius. */
export const HAZEN_WILLIAMS_EXPONENT = 1.852;

/**
 * What a pipe with so many even outlets loses, as a share of what it would lose if all the water went to its end. The first
 * outlet stands one spacing from the inlet and nothing goes on past the last.
 *
 * @param outlets 1 or more, whole
 * @param exponent of the flow in the friction formula, 1 to 2
 * @source J. E. Christiansen 1942, Irrigation by Sprinkling, California Agricultural Experiment Station Bulletin 670; from memory
 */
export function christiansenFactor(outlets: number, exponent: number = HAZEN_WILLIAMS_EXPONENT): number {
  if (!(Number.isInteger(outlets) && outlets >= 1)) throw new RangeError(`no number of outlets: ${outlets}`);
  within(exponent, 1, 2, "the exponent");
  return 1 / (exponent + 1) + 1 / (2 * outlets) + Math.sqrt(exponent - 1) / (6 * outlets ** 2);
}

/**
 * Pressure lost along a line with even outlets, by the reduction factor and Hazen-Williams, kPa: the desk method. `dripLine`
 * works the line out outlet by outlet.
 * @param run with the flow at the inlet
 */
export const lateralLossKPa = (run: PipeRun, outlets: number, smoothness: number): number =>
  christiansenFactor(outlets) * hazenWilliamsKPa(run, smoothness);
