import * as v from "valibot";
import { add, turnedAbout } from "../geometry/vector.ts";
import type { ItemId } from "./fields.ts";
import { type Garden, gardenSchema } from "./garden.ts";
import { type Item, itemSchema } from "./item.ts";
import type { Op } from "./op.ts";

/**
 * Applies changes one after another: the one door for every change to a garden.
 *
 * @param garden is not changed; things that no change speaks of are shared with the result
 * @param ops in order
 * @returns the garden after them; the same object for no ops
 * @throws RangeError on a broken op: an id that is not there or already taken, or values no garden may hold. Nothing
 *   is then changed
 */
export function applyOps(garden: Garden, ops: readonly Op[]): Garden {
  return ops.reduce(applyOp, garden);
}

function applyOp(garden: Garden, op: Op): Garden {
  switch (op.op) {
    case "add":
      return added(garden, checkedItem(op.item), op.index ?? garden.items.length);
    case "remove":
      indexOf(garden, op.id);
      return { ...garden, items: garden.items.filter((item) => item.id !== op.id) };
    case "move":
      return changed(garden, op.id, (item) => ({ ...item, at: add(item.at, op.by) }));
    case "turn":
      return changed(garden, op.id, (item) => ({
        ...item,
        at: op.about ? turnedAbout(item.at, op.about, op.by) : item.at,
        turn: wholeTurnLess(item.turn + op.by),
      }));
    case "set":
      if ("id" in op.changes || "kind" in op.changes)
        throw new RangeError("a thing keeps its id and its kind");
      return changed(garden, op.id, (item) => ({ ...item, ...op.changes }));
    case "reorder":
      return reordered(garden, op.id, op.index);
    case "set-yard":
      return checked({ ...garden, yard: op.yard });
    case "set-site":
      return checked({ ...garden, site: { ...garden.site, ...op.changes } });
    case "set-gardener":
      return checked({ ...garden, gardener: { ...garden.gardener, ...op.changes } });
    case "set-limit":
      return checked({ ...garden, limits: withEntry(garden.limits, op.limit, op.value) });
    case "set-price": {
      const own = withEntry(garden.prices.own, op.key, op.value);
      return checked({ ...garden, prices: { ...garden.prices, own } });
    }
    case "set-garden": {
      const { prices, ...changes } = op.changes;
      return checked({ ...garden, ...changes, prices: { ...garden.prices, ...prices } });
    }
    default: {
      const never: never = op;
      throw new RangeError(`unknown change ${JSON.stringify(never)}`);
    }
  }
}

function indexOf(garden: Garden, id: ItemId): number {
  const index = garden.items.findIndex((item) => item.id === id);
  if (index < 0) throw new RangeError(`nothing in this garden is called "${id}"`);
  return index;
}

function added(garden: Garden, item: Item, index: number): Garden {
  if (garden.items.some(({ id }) => id === item.id))
    throw new RangeError(`"${item.id}" is already in this garden`);
  if (!Number.isInteger(index) || index < 0 || index > garden.items.length) {
    throw new RangeError(`no place ${index} in an order of ${garden.items.length}`);
  }
  return { ...garden, items: garden.items.toSpliced(index, 0, item) };
}

function changed(garden: Garden, id: ItemId, change: (item: Item) => unknown): Garden {
  const index = indexOf(garden, id);
  const before = garden.items[index]!;
  return { ...garden, items: garden.items.with(index, checkedItem(change(before))) };
}

function reordered(garden: Garden, id: ItemId, index: number): Garden {
  const from = indexOf(garden, id);
  if (!Number.isInteger(index) || index < 0 || index >= garden.items.length) {
    throw new RangeError(`no place ${index} in an order of ${garden.items.length}`);
  }
  const item = garden.items[from]!;
  return { ...garden, items: garden.items.toSpliced(from, 1).toSpliced(index, 0, item) };
}

function withEntry(record: Readonly<Record<string, number>>, key: string, value: number | null) {
  const { [key]: _, ...rest } = record;
  return value === null ? rest : { ...rest, [key]: value };
}

/** Within (-360, 360), as the document keeps turns. */
const wholeTurnLess = (degrees: number): number => ((degrees % 360) + 360) % 360;

function checkedItem(item: unknown): Item {
  const result = v.safeParse(itemSchema, item);
  if (!result.success) throw new RangeError(broken(result.issues[0]));
  return result.output as Item;
}

function checked(garden: unknown): Garden {
  const result = v.safeParse(v.omit(gardenSchema, ["items"]), withoutItems(garden as Garden));
  if (!result.success) throw new RangeError(broken(result.issues[0]));
  return garden as Garden;
}

function withoutItems({ items: _, ...rest }: Garden) {
  return rest;
}

function broken(issue: v.BaseIssue<unknown>): string {
  return `${v.getDotPath(issue) ?? "value"} ${issue.message}`;
}
