import { expose, transfer } from "comlink";
import { type Garden, SUN_LIVE, SUN_SETTLED, sunHours } from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

let garden: Garden | null = null;

const api = {
  /** Hours of sun in the garden that the delta leads to; the delta starts from the garden of the call before. */
  sunHours(delta: GardenDelta, settled: boolean) {
    garden = withDelta(garden, delta);
    const map = sunHours(garden, settled ? SUN_SETTLED : SUN_LIVE);
    return transfer(map, [map.yard.hours.buffer]);
  },
};

export type SunApi = typeof api;

expose(api);
