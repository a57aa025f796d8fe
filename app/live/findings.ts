import { create } from "zustand";
import type { Access, DripPlan, Garden, Snag, Takeoff } from "../../src/index.ts";

/** What the engine says of the garden on the screen. */
export interface Findings {
  /** The garden these are about; an older one for the moment until the newest is done. */
  readonly of: Garden | null;
  /** Most serious first. */
  readonly snags: readonly Snag[];
  readonly takeoff: Takeoff | null;
  readonly access: Access | null;
  /** The drip lines; while something is dragged those of a moment ago. */
  readonly drip: DripPlan | null;
  /** The garden the drip lines were laid in: an older one while something is dragged. */
  readonly dripOf: Garden | null;
  /** Routes and ways out are those of this very garden, not carried over from a moment ago. */
  readonly settled: boolean;
}

/** The last findings. `analysis.ts` writes them; the plan, the ledger and the build sheet read them. */
export const useFindings = create<Findings>()(() => ({
  of: null,
  snags: [],
  takeoff: null,
  access: null,
  drip: null,
  dripOf: null,
  settled: false,
}));
