import { fromMemory, type Source } from "../garden/source.ts";
import { within } from "./within.ts";

export const MULCHED_SOURCE: Source = fromMemory(
  "FAO-56 chapter 10: evaporation from the soil falls by about 5 % for each 10 % of it that organic mulch covers",
);

/** What organic mulch over all of the soil keeps of its evaporation. */
const KEPT = 0.5;

/**
 * Initial crop coefficient where organic mulch covers a share of the soil: then nearly all the water is lost from the soil
 * itself. The coefficients of the grown crop are left as they are: there the soil's part is a twentieth or so.
 *
 * Loose organic mulch only. The water that mulch itself soaks up in a light rain is not counted.
 *
 * @param coveredShare 0 to 1
 */
export const kcUnderMulch = (initial: number, coveredShare: number): number =>
  initial * (1 - KEPT * within(coveredShare, 0, 1, "the share under mulch"));
