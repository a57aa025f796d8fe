import * as v from "valibot";
import { say, told, word } from "../words/say.ts";

/** Building bricks of the document's schema: what a number, a place or a name in a garden may be. */

/** 1 km either way: far beyond any yard, near enough that arithmetic on it stays exact to the micrometre. */
export const FARTHEST = 1_000_000;
const LONGEST_NAME = 80;

const finite = v.pipe(
  v.number(() => say`must be a number`),
  v.finite(() => say`must be a finite number`),
);

/** JSON has no minus zero: kept as plain zero, so that a garden read back equals the one written. */
const plainZero = v.transform((value: number) => value + 0);

export const coordinate = v.pipe(
  finite,
  v.minValue(-FARTHEST, () => say`lies more than 1 km away`),
  v.maxValue(FARTHEST, () => say`lies more than 1 km away`),
  plainZero,
);
/** A size of something that is there: above zero, at most 1 km. */
export const size = v.pipe(
  finite,
  v.gtValue(0, () => say`must be above 0`),
  v.maxValue(FARTHEST, () => say`is over 1 km`),
);
/** A size that may be nothing at all. */
export const sizeOrNone = v.pipe(
  finite,
  v.minValue(0, () => say`must not be negative`),
  v.maxValue(FARTHEST, () => say`is over 1 km`),
  plainZero,
);
/** Within these bounds, both included; `bounds` says so in words. */
export const between = (least: number, most: number, bounds: string) =>
  v.pipe(
    finite,
    v.minValue(least, () => told(bounds)),
    v.maxValue(most, () => told(bounds)),
    plainZero,
  );
export const degrees = between(-360, 360, word("must be within ±360"));
/** A part of a whole, 0 to 1. */
export const share = v.pipe(
  finite,
  v.minValue(0, () => say`must be at least 0`),
  v.maxValue(1, () => say`must be at most 1`),
  plainZero,
);
export const money = v.pipe(
  finite,
  v.minValue(0, () => say`must not be negative`),
  v.maxValue(1e9, () => say`is too large`),
  plainZero,
);
/** A whole number that may be nothing. */
export const countOrNone = (most: number) =>
  v.pipe(
    v.number(() => say`must be a number`),
    v.integer(() => say`must be a whole number`),
    v.minValue(0, () => say`must not be negative`),
    v.maxValue(most, () => say`must be at most ${most}`),
    plainZero,
  );
export const count = (most: number) =>
  v.pipe(
    v.number(() => say`must be a number`),
    v.integer(() => say`must be a whole number`),
    v.minValue(1, () => say`must be at least 1`),
    v.maxValue(most, () => say`must be at most ${most}`),
  );

export const point = v.pipe(
  v.strictTuple([coordinate, coordinate], () => say`must be two numbers, x and y`),
  v.readonly(),
);
const MOST_CORNERS = 400;
export const points = (least: number) =>
  v.pipe(
    v.array(point, () => say`must be a list of points`),
    v.minLength(least, () => say`needs at least ${least} points`),
    v.maxLength(MOST_CORNERS, () => say`has more than ${MOST_CORNERS} points`),
    v.readonly(),
  );

export const text = v.pipe(
  v.string(() => say`must be text`),
  v.maxLength(LONGEST_NAME, () => say`is longer than ${LONGEST_NAME} letters`),
);

export const itemIdField = v.pipe(
  v.string(() => say`must be text`),
  v.regex(/^[a-z0-9][a-z0-9-]{0,39}$/, () => say`must be 1 to 40 small letters, digits or dashes`),
  v.brand("ItemId"),
);
export type ItemId = v.InferOutput<typeof itemIdField>;

/**
 * Mints an item's id from plain text.
 * @throws RangeError if it is not 1 to 40 small letters, digits or dashes
 */
export function itemId(raw: string): ItemId {
  const result = v.safeParse(itemIdField, raw);
  if (!result.success) throw new RangeError(`not an item id: "${raw}"`);
  return result.output;
}

/** Later stages of the work. */
export const LAST_STAGE = 9;
/** In which stage of the work it is built, the first being 1. */
export const stageField = count(LAST_STAGE);

/** What every kind of thing has: who it is and where it stands. */
export const standing = {
  id: itemIdField,
  /** What the gardener calls it; may be empty, then the kind's word stands in for it. */
  name: text,
  /** The middle of its own frame on the plan, mm. */
  at: point,
  /** Degrees clockwise as seen. */
  turn: degrees,
};
