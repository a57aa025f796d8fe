import { create } from "zustand";
import type { LimitId } from "../../src/index.ts";

/** How far the ledger is drawn up on a narrow screen, where it is a sheet from the bottom. */
export type Stop = "low" | "half" | "full";
export const STOPS: readonly Stop[] = ["low", "half", "full"];

interface LedgerState {
  readonly stop: Stop;
  /** On a narrow screen the card of what is selected takes the leaf's place while it is open. */
  readonly cardOpen: boolean;
  /** On a wide screen the card is folded down to its head, and the leaf has its room. */
  readonly cardFolded: boolean;
  /** A limit that the Site leaf is asked to show. */
  readonly wantedLimit: LimitId | null;
  /** The Site leaf is asked to open what it says of north. */
  readonly northWanted: boolean;
  /** Label of the way out that is being tried: the figures are those it would lead to. */
  readonly trying: string | null;
  drawTo(stop: Stop): void;
  openCard(open: boolean): void;
  foldCard(folded: boolean): void;
  wantLimit(limit: LimitId | null): void;
  wantNorth(wanted: boolean): void;
}

/** What is open and shut in the ledger. No part of the garden, so no part of its history. */
export const useLedger = create<LedgerState>()((set) => ({
  stop: "low",
  cardOpen: false,
  cardFolded: false,
  wantedLimit: null,
  northWanted: false,
  trying: null,
  drawTo: (stop) => set({ stop }),
  openCard: (cardOpen) => set({ cardOpen }),
  foldCard: (cardFolded) => set({ cardFolded }),
  wantLimit: (wantedLimit) => set({ wantedLimit }),
  wantNorth: (northWanted) => set({ northWanted }),
}));
