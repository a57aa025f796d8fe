import type { EditionId } from "../garden/editions.ts";
import type { Limits } from "../garden/limits.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";

/**
 * The arithmetic of the 2010 ADA Standards for Accessible Design, as the U.S. Access Board publishes them, on which the
 * wheelchair rules stand. A private yard is not held to them: here they are guidance. All lengths in mm; a length within
 * `SAME_LENGTH` of a limit meets it.
 */

const atLeast = (value: number, limit: number): boolean => value >= limit - SAME_LENGTH;
const atMost = (value: number, limit: number): boolean => value <= limit + SAME_LENGTH;

export interface HalfTurn {
  /** Width of what is turned around. */
  readonly element: number;
  /** Clear width before, at and after the turn. */
  readonly approach: number;
  readonly turn: number;
  readonly leave: number;
}

/** A turn of 180 degrees around something narrow: 403.5.2 and its exception. */
export function halfTurnPasses({ element, approach, turn, leave }: HalfTurn, limits: Limits): boolean {
  if (element >= limits.turnElement - SAME_LENGTH) return true;
  const wide = [approach, leave].every((width) => atLeast(width, limits.turnApproach));
  const plain = [approach, leave].every((width) => atLeast(width, limits.wheelchairWay));
  return (wide && atLeast(turn, limits.turnAt)) || (plain && atLeast(turn, limits.turnAtException));
}

export interface Pinch {
  readonly width: number;
  /** How long the way stays narrower than a wheelchair way. */
  readonly run: number;
  /** Length of full-width way to the next pinch; null where there is none. */
  readonly toNext: number | null;
}

/** A way narrower than the rule for a short run: 403.5.1 and its exception. */
export function pinchPasses({ width, run, toNext }: Pinch, limits: Limits): boolean {
  if (atLeast(width, limits.wheelchairWay)) return true;
  return (
    atLeast(width, limits.wheelchairPinch) &&
    atMost(run, limits.wheelchairPinchRun) &&
    (toNext === null || atLeast(toNext, limits.wheelchairPinchApart))
  );
}

/** Space to turn in as a circle: 304.3.1. */
export const circlePasses = (diameter: number, limits: Limits): boolean =>
  atLeast(diameter, limits.turningCircle);

/** A T-shaped space: how wide its bar and base are, and how far each reaches past the other, mm. */
export interface TSpace {
  readonly arm: number;
  readonly armClear: number;
  readonly baseClear: number;
}

/** The T to turn in, in a square of 60 in: 304.3.2. */
export const T_SPACE: TSpace = { arm: 36 * INCH, armClear: 12 * INCH, baseClear: 24 * INCH };
/** The same as printed in metric: a square of 1525 mm. */
const T_SPACE_MM: TSpace = { arm: 915, armClear: 305, baseClear: 610 };

/** The T of an edition; null where its figures are not known here, and only the circle counts. */
export function tSpaceOf(edition: EditionId): TSpace | null {
  switch (edition) {
    case "ada-2010":
      return T_SPACE;
    case "ada-2010-mm":
      return T_SPACE_MM;
    case "a117-2017":
    case "iso-21542":
      return null;
  }
}

/** Where two ways meet as a T whose bar and base go on 48 in past each other, two can pass: 403.5.3. Null as `tSpaceOf`. */
export function passingTeeOf(edition: EditionId): TSpace | null {
  const tee = tSpaceOf(edition);
  const beyond = edition === "ada-2010-mm" ? 1220 : 48 * INCH;
  return tee && { arm: tee.arm, armClear: beyond, baseClear: beyond };
}

/** Whether two ways that meet as a T make a turning space, by the clear length of each arm past the other way. */
export const tPasses = (clear: {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly base: number;
}): boolean =>
  atLeast(clear.width, T_SPACE.arm) &&
  atLeast(clear.left, T_SPACE.armClear) &&
  atLeast(clear.right, T_SPACE.armClear) &&
  atLeast(clear.base, T_SPACE.baseClear);

/** Whether a run of way without a passing space is short enough, or wide enough to need none: 403.5.3. */
export const passingPasses = (
  run: { readonly width: number; readonly length: number },
  limits: Limits,
): boolean => atLeast(run.width, limits.passingSpace) || atMost(run.length, limits.passingEvery);

/** Slopes are ratios: to the last digit that a level shows. */
const SAME_SLOPE = 1e-4;
export const slopePasses = (slope: number, limit: number): boolean => slope <= limit + SAME_SLOPE;

/** A ramp: 405.2 and 405.8. */
export const RAMP = { slope: 1 / 12, handrailOver: 6 * INCH, mostRise: 30 * INCH };
export const rampRun = (rise: number): number => rise / RAMP.slope;
export const needsHandrail = (rise: number): boolean => rise > RAMP.handrailOver + SAME_LENGTH;

/** Clear opening of a gate or door: 404.2.3. */
export const openingPasses = (width: number, limits: Limits): boolean =>
  atLeast(width, limits.wheelchairGate);

/** A side reach over something: 308.3.2, for a bed worked from one side by analogy. */
export const sideReachPasses = (
  bed: { readonly rim: number; readonly depth: number },
  limits: Limits,
): boolean => atMost(bed.rim, limits.seatedRim) && atMost(bed.depth, limits.seatedReach);

export const soilHeightPasses = (height: number, limits: Limits): boolean =>
  atLeast(height, limits.seatedSoil);

/**
 * Least depth of knee room at a height above the ground: 11 in at 9 in, falling by 1 in for each 6 in of height to 8 in
 * at 27 in; 306.3.
 * @throws RangeError outside 9 to 27 in, where the rule says nothing
 */
export function kneeDepthAt(height: number): number {
  if (height < 9 * INCH - SAME_LENGTH || height > 27 * INCH + SAME_LENGTH) {
    throw new RangeError(`knee room is asked for between 9 and 27 in, not at ${height} mm`);
  }
  return 11 * INCH - (height - 9 * INCH) / 6;
}

/** Room under a table to sit up to it: 306.2, 306.3, 902.3. */
export const TABLE = { lowestRim: 28 * INCH, kneeDepth: 17 * INCH, kneeWidth: 30 * INCH };

export interface TableBed {
  readonly rim: number;
  readonly kneeHeight: number;
  /** Room from front to back at toe height. */
  readonly kneeDepth: number;
  readonly width: number;
}

export const tablePasses = ({ rim, kneeHeight, kneeDepth, width }: TableBed, limits: Limits): boolean =>
  atMost(rim, limits.seatedRim) &&
  atLeast(rim, TABLE.lowestRim) &&
  atLeast(kneeHeight, limits.knees) &&
  atLeast(kneeDepth, TABLE.kneeDepth) &&
  atLeast(width, TABLE.kneeWidth);

/** A wheelchair's place shut in on three sides: 305.7. */
export function alcovePasses(alcove: {
  readonly approach: "forward" | "parallel";
  readonly depth: number;
  readonly width: number;
}): boolean {
  const rule =
    alcove.approach === "forward"
      ? { deep: 24 * INCH, width: 36 * INCH, plain: 30 * INCH }
      : { deep: 15 * INCH, width: 60 * INCH, plain: 48 * INCH };
  return atLeast(alcove.width, atMost(alcove.depth, rule.deep) ? rule.plain : rule.width);
}
