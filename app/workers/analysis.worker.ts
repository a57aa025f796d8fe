import { expose } from "comlink";
import { type Access, type Depth, type Garden, type ItemId, searchShift, survey } from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

let garden: Garden | null = null;
/** The last survey closer than a glance, whose ways a search for a shift begins from. */
let last: { readonly of: Garden; readonly access: Access } | null = null;

const api = {
  /** The survey of the garden that the delta leads to; the delta starts from the garden of the call before. */
  survey(delta: GardenDelta, depth: Depth) {
    garden = withDelta(garden, delta);
    const found = survey(garden, depth);
    if (depth !== "glance") last = { of: garden, access: found.access };
    return found;
  },
  /** The smallest shift that clears the snags of these beds in the garden that the delta leads to. */
  searchShift(delta: GardenDelta, ids: readonly ItemId[]) {
    garden = withDelta(garden, delta);
    return searchShift(garden, ids, last?.of === garden ? last.access : undefined);
  },
};

export type AnalysisApi = typeof api;

expose(api);
