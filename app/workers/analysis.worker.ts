import {
  type Access,
  type Depth,
  type DripPlan,
  type Garden,
  type ItemId,
  searchShift,
  survey,
} from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";
import { exposeInWords } from "./answer-in-words.ts";

let garden: Garden | null = null;
/** The last survey closer than a glance: a search for a shift begins from its ways, a glance counts by its drip lines. */
let last: { readonly of: Garden; readonly access: Access; readonly drip: DripPlan | null } | null = null;

const api = {
  /** The survey of the garden that the delta leads to; the delta starts from the garden of the call before. */
  survey(delta: GardenDelta, depth: Depth) {
    garden = withDelta(garden, delta);
    const found = survey(garden, depth, { drip: last?.drip ?? null });
    if (depth !== "glance") last = { of: garden, access: found.access, drip: found.drip };
    return found;
  },
  /** The smallest shift that clears the snags of these beds in the garden that the delta leads to. */
  searchShift(delta: GardenDelta, ids: readonly ItemId[]) {
    garden = withDelta(garden, delta);
    return searchShift(garden, ids, last?.of === garden ? last.access : undefined);
  },
};

export type AnalysisApi = typeof api;

exposeInWords(api);
