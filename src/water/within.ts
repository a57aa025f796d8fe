import { say, told } from "../words/say.ts";

/**
 * A number that has to lie in a range, both ends included. What can be wrong with a climate somebody has typed is named
 * by a text marked with `word`, since it is shown.
 * @throws RangeError naming what was given and what would do
 */
export function within(value: number, least: number, most: number, what: string): number {
  if (!(value >= least && value <= most)) {
    const wrong = say`${told(what)} must be from ${least} to ${most}, not ${value}`;
    throw new RangeError(wrong);
  }
  return value;
}

/** @throws RangeError unless the number is finite and above zero */
export function aboveZero(value: number, what: string): number {
  if (value > 0 && value < Infinity) return value;
  const wrong = say`${told(what)} must be above 0, not ${value}`;
  throw new RangeError(wrong);
}

/** @throws RangeError unless the number is finite and not below zero */
export function atLeastZero(value: number, what: string): number {
  if (value >= 0 && value < Infinity) return value;
  const wrong = say`${told(what)} must not be below 0, not ${value}`;
  throw new RangeError(wrong);
}
