import { expose } from "comlink";
import { type Depth, type Garden, survey } from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

let garden: Garden | null = null;

const api = {
  /** The survey of the garden that the delta leads to; the delta starts from the garden of the call before. */
  survey(delta: GardenDelta, depth: Depth) {
    garden = withDelta(garden, delta);
    return survey(garden, depth);
  },
};

export type AnalysisApi = typeof api;

expose(api);
