import type { Garden, ItemId, ShiftSearch } from "../../src/index.ts";

type Search = (garden: Garden, ids: readonly ItemId[]) => Promise<ShiftSearch>;

let search: Search | null = null;

/** Called by the analysis once its worker stands. */
export function provideShiftSearch(made: Search | null): void {
  search = made;
}

/** The smallest shift that clears the snags of some beds; null while nothing can look for it yet. */
export const searchForShift = async (garden: Garden, ids: readonly ItemId[]): Promise<ShiftSearch | null> =>
  search ? search(garden, ids) : null;
