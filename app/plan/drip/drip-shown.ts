import { create } from "zustand";
import type { Garden, ItemId } from "../../../src/index.ts";
import type { Leaf } from "../../store/editor.ts";

/** Whether pipes are on the plan at all times, not only while water is looked at. A look at the plan, no part of the garden. */
export const useDripShown = create<{ readonly always: boolean }>()(() => ({ always: false }));

interface Looked {
  readonly garden: Garden;
  readonly leaf: Leaf;
  readonly selection: ReadonlySet<ItemId>;
}

/** Pipes are drawn while water is looked at: its leaf, or a bed or tap that has to do with them. */
export function isDripShown({ garden, leaf, selection }: Looked): boolean {
  if (useDripShown.getState().always || leaf === "year-round") return true;
  return garden.items.some(
    (item) =>
      selection.has(item.id) && (item.kind === "tap" || (item.kind === "bed" && item.watering.by === "drip")),
  );
}
