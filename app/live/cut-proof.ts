import { useEffect, useMemo } from "react";
import { create } from "zustand";
import {
  type AimedPlan,
  type BoardPlan,
  type CutJob,
  type Garden,
  type ProvenPlans,
  type Takeoff,
  takeoff,
} from "../../src/index.ts";
import type { CutPlanApi } from "../workers/cut-plan.worker.ts";
import { speakingWorker } from "./speaking-worker.ts";

/** What is known of a cut plan. */
export type ProofState =
  | { readonly state: "proven" }
  | { readonly state: "proving" }
  /** At most `excess` above the least, as a share of it: 0.012 is 1.2 %. */
  | { readonly state: "bounded"; readonly excess: number };

/** Plans of jobs long past are forgotten: with every size a bed is dragged to there are new ones. */
const PLANS_KEPT = 60;

interface Proofs {
  /** What the worker has found, by the key of the job. */
  readonly found: ProvenPlans;
  /** Keys of jobs that are with the worker, or wait for it. */
  readonly asked: ReadonlySet<string>;
}

const NOTHING: Proofs = { found: new Map(), asked: new Set() };

const useProofs = create<Proofs>()(() => NOTHING);

type Prove = (job: CutJob) => Promise<AimedPlan>;

let prove: Prove | null = null;

/** The worker is started by the first plan that is not proven at once, and stays. */
function startWorker(): Prove {
  const worker = new Worker(new URL("../workers/cut-plan.worker.ts", import.meta.url), { type: "module" });
  return speakingWorker<CutPlanApi>(worker).prove;
}

/** Has plans proven by something else than a worker, in a test; forgets all that was found. */
export function provideProver(made: Prove | null): void {
  prove = made;
  useProofs.setState(NOTHING, true);
}

/** Asks for the proof of a plan; once only, whatever comes of it. */
async function ask({ key, pieces, stock, kerf, aim, plan, excess }: BoardPlan): Promise<void> {
  const { found, asked } = useProofs.getState();
  if (found.has(key) || asked.has(key)) return;
  useProofs.setState({ asked: new Set(asked).add(key) });
  let better: AimedPlan = { plan, excess };
  try {
    prove ??= startWorker();
    better = await prove({ pieces, stock, kerf, aim });
  } catch {
    // The plan made at once stands, with its bound; asked again, the worker would fail again.
  }
  useProofs.setState((proofs) => withFound(proofs, key, better));
}

function withFound({ found, asked }: Proofs, key: string, plan: AimedPlan): Proofs {
  const kept = [...found, [key, plan] as const].slice(-PLANS_KEPT);
  return { found: new Map(kept), asked: new Set([...asked].filter((other) => other !== key)) };
}

const needsProof = ({ plan }: BoardPlan): boolean => !plan.proven && plan.uncut.length === 0;

/**
 * The takeoff to be shown: as it was made at once, with each cut plan replaced by its proven one as that comes.
 *
 * @param live of the garden, made at once
 * @param resting false while something is dragged: proofs are asked for when the hand rests
 */
export function useProvenTakeoff(
  garden: Garden,
  live: Takeoff,
  resting: boolean,
): { readonly takeoff: Takeoff; stateOf(key: string): ProofState } {
  const { found, asked } = useProofs();
  useEffect(() => {
    if (!resting) return;
    for (const plan of live.boardPlans.filter(needsProof)) void ask(plan);
  }, [live, resting]);

  const shown = useMemo(() => {
    const better = live.boardPlans.some(({ key }) => found.has(key));
    return better ? takeoff(garden, { stage: live.stage, proven: found }) : live;
  }, [garden, live, found]);

  const stateOf = (key: string): ProofState => {
    const plan = shown.boardPlans.find((one) => one.key === key);
    if (!plan || plan.plan.proven) return { state: "proven" };
    if (asked.has(key)) return { state: "proving" };
    return { state: "bounded", excess: plan.excess };
  };
  return { takeoff: shown, stateOf };
}
