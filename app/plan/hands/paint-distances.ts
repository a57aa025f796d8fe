import {
  formatLength,
  formatShort,
  type Garden,
  type ItemId,
  limitsOf,
  SAME_LENGTH,
  sideDimensions,
} from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { paintDimension } from "../paint/dimension.ts";
import type { Pen } from "../pen.ts";
import { bodyOf } from "./bodies.ts";
import { wayWanted } from "./wanted-gaps.ts";

/** A gap shorter than this on the screen has no room for a dimension line, in pixels. */
const SHORTEST = 3;

/**
 * Dimension lines from a thing to its nearest neighbour on each side. A gap that has to be walked and is too small is
 * the one heavy thing on the plan, with what it lacks.
 */
export function paintNeighbourDistances(pen: Pen, garden: Garden, id: ItemId | null): void {
  const item = garden.items.find((one) => one.id === id);
  if (!item) return;
  const { together } = limitsOf(garden);
  const wanted = wayWanted(garden);
  const isWalkedRound = item.kind === "bed";
  for (const { from, to, width, other } of sideDimensions(garden, item.id)) {
    const beside = garden.items.find((one) => one.id === other);
    const isWay = isWalkedRound && (!beside || bodyOf(beside).solid);
    const short = wanted - width;
    if (isWay && width > together && short > SAME_LENGTH) {
      const words = `${formatShort(width, garden.units)} · ${formatShort(short, garden.units)} short`;
      paintDimension(pen, { from, to, words, colour: INK.accent, heavy: true });
    } else if (width * pen.view.scale >= SHORTEST) {
      paintDimension(pen, { from, to, words: formatLength(width, garden.units), colour: INK.ink });
    }
  }
}
