import { type Item, type Point, placed, unplaced } from "../../src/index.ts";

/** Carries a point of the plan along with a thing that has been moved or turned since the point was found. */
export const carried = (point: Point, before: Item, after: Item): Point =>
  before === after || sameStand(before, after)
    ? point
    : placed(unplaced(point, before.at, before.turn), after.at, after.turn);

const sameStand = (a: Item, b: Item): boolean =>
  a.turn === b.turn && a.at[0] === b.at[0] && a.at[1] === b.at[1];
