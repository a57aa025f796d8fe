import { proveBoardPlan } from "../../src/index.ts";
import { exposeInWords } from "./answer-in-words.ts";

/** Cut plans looked into more deeply than there is time for while a bed is dragged. */
const api = { prove: proveBoardPlan };

export type CutPlanApi = typeof api;

exposeInWords(api);
