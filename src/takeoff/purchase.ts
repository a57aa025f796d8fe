import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";
import type { Good } from "./goods.ts";
import type { Line } from "./types.ts";

/** One thing to buy, before its price is looked up. */
export interface Purchase {
  readonly part: Line["part"];
  readonly good: Good;
  readonly quantity: number;
  readonly how: string;
  readonly source: Source;
  /** What each bed has of it, in any one measure; what no bed has is the garden's own, such as a path. */
  readonly shares: Shares;
  /** Part of it that fills beds, 0 to 1. */
  readonly filling: number;
  /** Stages of the paths it is for; those of its beds follow from `shares`. */
  readonly pathStages?: readonly number[];
}

export type Shares = ReadonlyMap<ItemId, number>;

/** What is bought, and everything that was on offer: the rows of the price table this garden can use. */
export interface Bill {
  readonly purchases: readonly Purchase[];
  readonly offered: readonly Good[];
}

/** Adds up how much each bed has; nothing is left out of the map. */
export function sharesOf<T>(
  parts: readonly T[],
  idOf: (part: T) => ItemId,
  amountOf: (part: T) => number,
): Shares {
  const shares = new Map<ItemId, number>();
  for (const part of parts) {
    const amount = amountOf(part);
    if (amount > 0) shares.set(idOf(part), (shares.get(idOf(part)) ?? 0) + amount);
  }
  return shares;
}

/** Parts by the key they share, in the order they come. */
export function groupedBy<T>(parts: readonly T[], keyOf: (part: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const part of parts) {
    const group = groups.get(keyOf(part));
    if (group) group.push(part);
    else groups.set(keyOf(part), [part]);
  }
  return groups;
}

export const total = <T>(parts: readonly T[], amountOf: (part: T) => number): number =>
  parts.reduce((sum, part) => sum + amountOf(part), 0);

export { counted } from "./counted.ts";

export const joinedBills = (bills: readonly Bill[]): Bill => ({
  purchases: bills.flatMap(({ purchases }) => purchases),
  offered: bills.flatMap(({ offered }) => offered),
});
