import { expose, transfer } from "comlink";
import type { GardenDelta } from "../live/delta.ts";
import { createSunAnswers } from "./sun-answers.ts";

const answer = createSunAnswers();

const api = {
  /** Hours of sun in the garden that the delta leads to; the delta starts from the garden of the call before. */
  sunHours(delta: GardenDelta, settled: boolean) {
    const found = answer(delta, settled);
    const grids = found.ground ? [found.map.yard, found.ground] : [found.map.yard];
    return transfer(
      found,
      grids.map(({ hours }) => hours.buffer),
    );
  },
};

export type SunApi = typeof api;

expose(api);
