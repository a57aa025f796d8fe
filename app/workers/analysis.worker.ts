import { expose } from "comlink";
import { type Depth, type Garden, type ItemId, searchShift, survey } from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

let garden: Garden | null = null;

const api = {
  /** The survey of the garden that the delta leads to; the delta starts from the garden of the call before. */
  survey(delta: GardenDelta, depth: Depth) {
    garden = withDelta(garden, delta);
    return survey(garden, depth);
  },
  /** The smallest shift that clears the snags of these beds in the garden that the delta leads to. */
  searchShift(delta: GardenDelta, ids: readonly ItemId[]) {
    garden = withDelta(garden, delta);
    return searchShift(garden, ids);
  },
};

export type AnalysisApi = typeof api;

expose(api);
