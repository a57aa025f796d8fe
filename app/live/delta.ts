import type { Garden, Item, ItemId } from "../../src/index.ts";

/**
 * What must be told to somebody who has the garden before, to give them the garden after. Things are shared
 * between versions of a garden, so a drag tells of one thing, however many there are; and who receives it keeps
 * the things it has, and all that it remembers about them.
 */
export interface GardenDelta {
  /** All but the things. */
  readonly rest: Omit<Garden, "items"> | null;
  /** Who is there, from back to front; null where that is as before. */
  readonly order: readonly ItemId[] | null;
  readonly changed: readonly Item[];
}

export function deltaOf(before: Garden | null, after: Garden): GardenDelta {
  if (!before)
    return { rest: withoutItems(after), order: after.items.map(({ id }) => id), changed: after.items };
  const known = new Set(before.items);
  const sameOrder =
    before.items.length === after.items.length &&
    before.items.every((item, i) => item.id === after.items[i]?.id);
  return {
    rest: sameRest(before, after) ? null : withoutItems(after),
    order: sameOrder ? null : after.items.map(({ id }) => id),
    changed: after.items.filter((item) => !known.has(item)),
  };
}

/** @throws RangeError for a delta that starts from another garden */
export function withDelta(before: Garden | null, delta: GardenDelta): Garden {
  const rest = delta.rest ?? before;
  // The very same garden, so that all that is remembered about it holds.
  if (before && !delta.rest && !delta.order && delta.changed.length === 0) return before;
  const order = delta.order ?? before?.items.map(({ id }) => id);
  if (!rest || !order) throw new RangeError("the first delta must tell of the whole garden");
  const byId = new Map([...(before?.items ?? []), ...delta.changed].map((item) => [item.id, item]));
  const items = order.map((id) => {
    const item = byId.get(id);
    if (!item) throw new RangeError(`the delta speaks of "${id}", which is not known here`);
    return item;
  });
  return { ...rest, items };
}

function sameRest(before: Garden, after: Garden): boolean {
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]) as Set<keyof Garden>;
  keys.delete("items");
  return [...keys].every((key) => before[key] === after[key]);
}

function withoutItems({ items: _, ...rest }: Garden): Omit<Garden, "items"> {
  return rest;
}
