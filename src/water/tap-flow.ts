import { practice, type Source } from "../garden/source.ts";
import { aboveZero, atLeastZero, within } from "./within.ts";

/** What a tap gives, by a gauge and a bucket. */
export interface TapSupply {
  /** With nothing running. */
  readonly stillKPa: number;
  /** Wide open into a bucket. */
  readonly openLh: number;
}

/** Flow from a bucket filled in so many seconds, L/h. */
export const bucketFlowLh = (litres: number, seconds: number): number =>
  (aboveZero(litres, "the litres") * 3600) / aboveZero(seconds, "the seconds");

/** A zone leaves a quarter of the flow, for the kitchen and for pipes that age. */
export const USABLE_SHARE = 0.75;
export const USABLE_SHARE_SOURCE: Source = practice(
  "a zone takes no more than three quarters of the tap's flow",
);

const EXPONENT = 1.852;

/**
 * Pressure left at the tap while so much runs, kPa: wide open, all of it is lost in the house's pipes, and loss grows with
 * the flow to the power 1.852.
 * @param flowLh up to the open flow
 * @source the relation hydrant flow tests are reckoned by (exponent 0.54 the other way); from memory
 */
export function tapPressureKPa({ stillKPa, openLh }: TapSupply, flowLh: number): number {
  aboveZero(openLh, "the open flow");
  const share = within(flowLh, 0, openLh, "the flow") / openLh;
  return aboveZero(stillKPa, "the pressure") * (1 - share ** EXPONENT);
}

/**
 * The most a zone may take from a tap so that its lines still get their pressure, L/h: within the usable share of the flow
 * and with the pressure that is lost on the way (backflow preventer, filter, regulator, main, rise) to spare. 0 where the
 * tap has not that pressure even at rest.
 */
export function zoneLimitLh(supply: TapSupply, neededKPa: number, lostKPa: number): number {
  const wanted =
    atLeastZero(neededKPa, "the pressure of the lines") + atLeastZero(lostKPa, "the pressure lost");
  const { stillKPa, openLh } = supply;
  const spare = 1 - wanted / aboveZero(stillKPa, "the pressure");
  if (!(spare > 0)) return 0;
  return Math.min(USABLE_SHARE, spare ** (1 / EXPONENT)) * aboveZero(openLh, "the open flow");
}
