import type { Item } from "../../src/index.ts";

/** What lies under what, whatever the order of the garden: ground, paths, what stands on them, openings, crowns. */
const TIER: Readonly<Record<Item["kind"], number>> = {
  ground: 0,
  path: 1,
  "keep-clear": 2,
  bed: 3,
  house: 3,
  shed: 3,
  wall: 3,
  fence: 3,
  gate: 4,
  door: 4,
  tap: 4,
  tree: 5,
};

/** Things from back to front as they are drawn: by tier, and in a tier by the garden's own order. */
export const paintOrder = (items: readonly Item[]): readonly Item[] =>
  items.toSorted((a, b) => TIER[a.kind] - TIER[b.kind]);
