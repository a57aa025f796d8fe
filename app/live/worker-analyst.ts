import type { Remote } from "comlink";
import type { Depth, Garden, ItemId, ShiftSearch, Survey } from "../../src/index.ts";
import type { AnalysisApi } from "../workers/analysis.worker.ts";
import { deltaOf } from "./delta.ts";
import { speakingWorker } from "./speaking-worker.ts";

export interface Answer {
  readonly of: Garden;
  readonly depth: Depth;
  readonly survey: Survey;
}

export interface WorkerAnalyst {
  /** Asks for a survey, to these depths one after another, the shallowest first. Replaces what was asked before. */
  ask(garden: Garden, depths: readonly Depth[]): void;
  /** The smallest shift of these beds that clears their snags of position. */
  searchShift(garden: Garden, ids: readonly ItemId[]): Promise<ShiftSearch>;
  stop(): void;
}

/** One question at a time; while it is out only the newest waits, and those between are never asked. */
export function startWorker(onAnswer: (answer: Answer) => void): WorkerAnalyst {
  const worker = new Worker(new URL("../workers/analysis.worker.ts", import.meta.url), { type: "module" });
  const remote: Remote<AnalysisApi> = speakingWorker<AnalysisApi>(worker);
  let told: Garden | null = null;
  let asked: { readonly garden: Garden; readonly depths: readonly Depth[] } | null = null;
  let busy = false;

  /** Messages arrive in the order they are sent, so each delta starts where the one before it led. */
  const tell = (garden: Garden) => {
    const delta = deltaOf(told, garden);
    told = garden;
    return delta;
  };

  const next = async () => {
    const [depth, ...deeper] = asked?.depths ?? [];
    if (busy || !asked || !depth) return;
    const { garden } = asked;
    asked = { garden, depths: deeper };
    busy = true;
    const survey = await remote.survey(tell(garden), depth);
    busy = false;
    onAnswer({ of: garden, depth, survey });
    void next();
  };

  return {
    ask(garden, depths) {
      asked = { garden, depths };
      void next();
    },
    searchShift: (garden, ids) => remote.searchShift(tell(garden), ids),
    stop() {
      asked = null;
      worker.terminate();
    },
  };
}
