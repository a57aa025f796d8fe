import { create } from "zustand";
import type { KeepingState, Place } from "./types.ts";

interface Keeping {
  /** The kept garden that the one on the board is; null for a worked example nobody has changed yet. */
  readonly gardenId: string | null;
  readonly keeping: KeepingState;
  readonly place: Place;
  /** Name and trouble of a garden that should have come first and could not be read; until the notice is dismissed. */
  readonly setAside: { readonly name: string; readonly problem: string } | null;
}

export const useKeeping = create<Keeping>()(() => ({
  gardenId: null,
  keeping: { state: "kept", at: null },
  place: "here",
  setAside: null,
}));
