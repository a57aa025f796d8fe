import { create } from "zustand";
import type { KeepingState } from "./types.ts";

interface Keeping {
  /** The kept garden that the one on the board is; null for a worked example nobody has changed yet. */
  readonly gardenId: string | null;
  readonly keeping: KeepingState;
}

export const useKeeping = create<Keeping>()(() => ({ gardenId: null, keeping: { state: "kept", at: null } }));
