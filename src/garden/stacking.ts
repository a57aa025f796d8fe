import type { ItemId } from "./fields.ts";
import type { Garden } from "./garden.ts";
import type { Op } from "./op.ts";

export type Stacking = "front" | "back" | "forward" | "backward";

/**
 * Changes that bring things to the front, send them to the back, or one step either way, keeping their own order.
 * Things at the end already stay there.
 * @throws RangeError for an id that is not there
 */
export function orderOps(garden: Pick<Garden, "items">, ids: readonly ItemId[], to: Stacking): Op[] {
  const order = garden.items.map(({ id }) => id);
  for (const id of ids) {
    if (!order.includes(id)) throw new RangeError(`nothing in this garden is called "${id}"`);
  }
  return steps(order, wanted(order, new Set(ids), to));
}

function wanted(order: readonly ItemId[], chosen: ReadonlySet<ItemId>, to: Stacking): readonly ItemId[] {
  const taken = order.filter((id) => chosen.has(id));
  const left = order.filter((id) => !chosen.has(id));
  if (to === "front") return [...left, ...taken];
  if (to === "back") return [...taken, ...left];
  // A step back is a step forward seen from behind.
  return to === "forward"
    ? steppedForward(order, chosen)
    : steppedForward(order.toReversed(), chosen).toReversed();
}

function steppedForward(order: readonly ItemId[], chosen: ReadonlySet<ItemId>): ItemId[] {
  const now = [...order];
  for (let i = now.length - 2; i >= 0; i--) {
    const [here, next] = [now[i]!, now[i + 1]!];
    if (chosen.has(here) && !chosen.has(next)) [now[i], now[i + 1]] = [next, here];
  }
  return now;
}

/** Single reorders that lead from one order to another, from the back to the front. */
function steps(from: readonly ItemId[], to: readonly ItemId[]): Op[] {
  const now = [...from];
  return to.flatMap((id, index): Op[] => {
    if (now[index] === id) return [];
    now.splice(now.indexOf(id), 1);
    now.splice(index, 0, id);
    return [{ op: "reorder", id, index }];
  });
}
