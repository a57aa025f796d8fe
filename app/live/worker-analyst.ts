import { type Remote, wrap } from "comlink";
import type { Garden } from "../../src/index.ts";
import type { AnalysisApi } from "../workers/analysis.worker.ts";
import { deltaOf } from "./delta.ts";
import { useFindings } from "./findings.ts";

export interface WorkerAnalyst {
  /** Asks for the findings of a garden; they are written to `useFindings` when done. */
  analyse(garden: Garden): void;
  stop(): void;
}

/** One question at a time; while it is out only the newest garden waits, and those between are never asked about. */
export function startWorker(): WorkerAnalyst {
  const worker = new Worker(new URL("../workers/analysis.worker.ts", import.meta.url), { type: "module" });
  const remote: Remote<AnalysisApi> = wrap<AnalysisApi>(worker);
  let told: Garden | null = null;
  let waiting: Garden | null = null;
  let busy = false;

  const ask = async (garden: Garden) => {
    busy = true;
    const delta = deltaOf(told, garden);
    told = garden;
    const findings = await remote.analyse(delta);
    useFindings.setState({ of: garden, ...findings });
    busy = false;
    const next = waiting;
    waiting = null;
    if (next && next !== garden) void ask(next);
  };

  return {
    analyse(garden) {
      if (busy) waiting = garden;
      else void ask(garden);
    },
    stop() {
      worker.terminate();
    },
  };
}
