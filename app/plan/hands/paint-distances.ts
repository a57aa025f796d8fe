import type { Garden, ItemId } from "../../../src/index.ts";
import { paintDimension } from "../paint/dimension.ts";
import type { Pen } from "../pen.ts";
import { distancesOf } from "./distances.ts";

/** A gap shorter than this on the screen has no room for a dimension line, in pixels. */
const SHORTEST = 3;

/** Dimension lines from a thing to its neighbours; a gap that fails is the one heavy thing on the plan. */
export function paintNeighbourDistances(pen: Pen, garden: Garden, id: ItemId | null): void {
  if (id === null) return;
  for (const { from, to, width, words, fails } of distancesOf(garden, id)) {
    if (fails) paintDimension(pen, { from, to, words, colour: "accent", heavy: true });
    else if (width * pen.view.scale >= SHORTEST) paintDimension(pen, { from, to, words, colour: "ink" });
  }
}
