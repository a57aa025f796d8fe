/**
 * A number that has to lie in a range, both ends included.
 * @throws RangeError naming what was given and what would do
 */
export function within(value: number, least: number, most: number, what: string): number {
  if (!(value >= least && value <= most)) {
    throw new RangeError(`${what} must be from ${least} to ${most}, not ${value}`);
  }
  return value;
}

/** @throws RangeError unless the number is finite and above zero */
export function aboveZero(value: number, what: string): number {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${what} must be above 0, not ${value}`);
  return value;
}

/** @throws RangeError unless the number is finite and not below zero */
export function atLeastZero(value: number, what: string): number {
  if (!(value >= 0 && value < Infinity)) throw new RangeError(`${what} must not be below 0, not ${value}`);
  return value;
}
