import { practice, type Source } from "../garden/source.ts";
import { type PipeRun, pipeLossKPa } from "./pipe.ts";
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
const HALVINGS = 50;

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

/** What stands between the tap and the lines. */
export interface TapToLines {
  /** Lost in the backflow preventer, filter and regulator, and to the rise from tap to bed, kPa. */
  readonly lostKPa: number;
  /** The pipe that brings the water, taken as if all of it went to the far end; null where lines start at the tap. */
  readonly main: Pick<PipeRun, "bore" | "length"> | null;
}

/** Pressure that arrives at the lines of a zone that takes so much, kPa; below zero where it does not get there. */
export function pressureAtLines(supply: TapSupply, { lostKPa, main }: TapToLines, flowLh: number): number {
  const inMain = main ? pipeLossKPa({ ...main, flowLh }) : 0;
  return tapPressureKPa(supply, flowLh) - atLeastZero(lostKPa, "the pressure lost") - inMain;
}

/**
 * The most a zone may take from a tap so that its lines still get their pressure, L/h: within the usable share of the flow.
 * 0 where the pressure does not reach even at rest.
 * @param neededKPa at the head of the lines
 */
export function zoneLimitLh(supply: TapSupply, way: TapToLines, neededKPa: number): number {
  atLeastZero(neededKPa, "the pressure of the lines");
  const reaches = (flowLh: number) => pressureAtLines(supply, way, flowLh) >= neededKPa;
  if (!reaches(0)) return 0;
  let [low, high] = [0, USABLE_SHARE * supply.openLh];
  if (reaches(high)) return high;
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (low + high) / 2;
    if (reaches(middle)) low = middle;
    else high = middle;
  }
  return low;
}
