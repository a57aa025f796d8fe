import { create } from "zustand";

/** How large the plan's element is, px. `Plan.tsx` measures it; all else asks here. */
export interface PlanSize {
  readonly width: number;
  readonly height: number;
  /** Device pixels per px: what is drawn is drawn this much finer. */
  readonly ratio: number;
}

export const usePlanSize = create<PlanSize>()(() => ({ width: 0, height: 0, ratio: 1 }));
