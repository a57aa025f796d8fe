import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { say } from "../words/say.ts";

/** A point somebody has measured from, and how far the tape ran. */
export interface Tape {
  readonly from: Point;
  /** mm */
  readonly length: number;
}

/** Two tapes that do not meet. `message` is a sentence for the person who measured. */
export class TapeError extends Error {
  override readonly name = "TapeError";
  /** By how much the two lengths fall short or run past each other, mm. */
  readonly gap: number;

  constructor(message: string, gap: number) {
    super(message);
    this.gap = gap;
  }
}

/** Tapes this much too short to meet have met: half a millimetre is less than anybody reads off a tape. */
const READING = 0.5;

/**
 * Where a thing stands that was measured from two known points, as people measure a yard.
 *
 * @returns the two places there are, one on each side of the line between the points: first the one to the left, looking
 *   from the first point to the second with the plan's top up. Both are the same where the tapes just meet on that line.
 * @throws TapeError where the two lengths cannot meet
 * @throws RangeError where both were measured from one point, or a length is not above nothing
 * @source intersection of two circles, plane geometry
 */
export function placesByTape(first: Tape, second: Tape): readonly [Point, Point] {
  const apart = distance(first.from, second.from);
  if (!(apart > READING)) throw new RangeError("the two points must be apart from each other");
  if (!(first.length > 0 && second.length > 0)) throw new RangeError("a tape must be longer than nothing");
  refuseApart(first.length, second.length, apart);

  const along = (apart ** 2 + first.length ** 2 - second.length ** 2) / (2 * apart);
  const aside = Math.sqrt(Math.max(0, first.length ** 2 - along ** 2));
  const [ux, uy] = [(second.from[0] - first.from[0]) / apart, (second.from[1] - first.from[1]) / apart];
  const foot: Point = [first.from[0] + along * ux, first.from[1] + along * uy];
  // y runs down the plan: left of the direction (ux, uy) lies (uy, -ux).
  return [
    [foot[0] + aside * uy, foot[1] - aside * ux],
    [foot[0] - aside * uy, foot[1] + aside * ux],
  ];
}

function refuseApart(first: number, second: number, apart: number): void {
  const short = apart - (first + second);
  if (short > READING)
    throw new TapeError(say`the two tapes together do not reach from one point to the other`, short);
  const past = Math.abs(first - second) - apart;
  if (past > READING) {
    throw new TapeError(say`one tape runs past all that the other reaches: one of the two was misread`, past);
  }
}
