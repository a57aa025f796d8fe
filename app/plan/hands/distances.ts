import {
  formatLength,
  formatShort,
  type Garden,
  type ItemId,
  limitsOf,
  type Point,
  roomToStand,
  SAME_LENGTH,
  say,
  sideDimensions,
} from "../../../src/index.ts";
import { bodyOf } from "./bodies.ts";

/** A dimension line from a thing to its neighbour on one side. */
export interface NeighbourDistance {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  readonly words: string;
  /** It has to be walked and is too small. */
  readonly fails: boolean;
}

/**
 * How far a thing is from its nearest neighbour on each side. A gap beside a bed that has to be walked and is too
 * small fails, and says by how much; one that is built together does not.
 * @returns none for a thing that is not there
 */
export function distancesOf(garden: Garden, id: ItemId): readonly NeighbourDistance[] {
  const item = garden.items.find((one) => one.id === id);
  if (!item) return [];
  const { units } = garden;
  const limits = limitsOf(garden);
  const wanted = roomToStand(garden.gardener, limits);
  return sideDimensions(garden, id).map(({ from, to, width, other }) => {
    const beside = garden.items.find((one) => one.id === other);
    const isWay = item.kind === "bed" && (!beside || bodyOf(beside).solid);
    const short = wanted - width;
    const fails = isWay && width > limits.together && short > SAME_LENGTH;
    const words = fails
      ? say`${formatShort(width, units)} · ${formatShort(short, units)} short`
      : formatLength(width, units);
    return { from, to, width, words, fails };
  });
}
