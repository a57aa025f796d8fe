import { expose } from "comlink";
import { proveBoardPlan } from "../../src/index.ts";

/** Cut plans looked into more deeply than there is time for while a bed is dragged. */
const api = { prove: proveBoardPlan };

export type CutPlanApi = typeof api;

expose(api);
