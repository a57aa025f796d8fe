import { expose } from "comlink";
import { type Garden, survey } from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

let garden: Garden | null = null;

const api = {
  /** The findings of the garden that the delta leads to; starts from the one of the call before. */
  analyse(delta: GardenDelta) {
    garden = withDelta(garden, delta);
    return survey(garden);
  },
};

export type AnalysisApi = typeof api;

expose(api);
