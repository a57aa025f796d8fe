import type { Point, Ring } from "../geometry/types.ts";
import type { ItemId } from "./fields.ts";
import type { Garden, Gardener, Site } from "./garden.ts";
import type { Item } from "./item.ts";
import type { LimitId } from "./limits.ts";

/**
 * A change to a garden as plain data. `applyOps` (operations.ts) is the one door for all of them; undo, tests,
 * ways out and the page share it.
 */
export type Op =
  /** Adds in front of all others, or at an index in the order from back to front. */
  | { readonly op: "add"; readonly item: Item; readonly index?: number }
  | { readonly op: "remove"; readonly id: ItemId }
  | { readonly op: "move"; readonly id: ItemId; readonly by: Point }
  /** Turns clockwise by degrees about a point of the plan; about the item's own place if none is given. */
  | { readonly op: "turn"; readonly id: ItemId; readonly by: number; readonly about?: Point }
  /** Sets fields of an item (shape and place together for a resize; wall, plantings, name, ...). Never id or kind. */
  | { readonly op: "set"; readonly id: ItemId; readonly changes: Readonly<Record<string, unknown>> }
  /** Puts an item at an index in the order from back to front. */
  | { readonly op: "reorder"; readonly id: ItemId; readonly index: number }
  | { readonly op: "set-yard"; readonly yard: Ring }
  | { readonly op: "set-site"; readonly changes: Partial<Site> }
  | { readonly op: "set-gardener"; readonly changes: Partial<Gardener> }
  /** null puts the default back. */
  | { readonly op: "set-limit"; readonly limit: LimitId; readonly value: number | null }
  /** null puts the shipped example price back. */
  | { readonly op: "set-price"; readonly key: string; readonly value: number | null }
  | {
      readonly op: "set-garden";
      readonly changes: Partial<
        Pick<Garden, "name" | "units" | "paper" | "cutting" | "climate" | "water" | "upkeep" | "underlay">
      > & {
        readonly prices?: Partial<Omit<Garden["prices"], "own">>;
      };
    };
