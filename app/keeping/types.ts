import type { Garden, Units } from "../../src/index.ts";

/** A garden kept on this device, as the list of gardens shows it. */
export interface KeptGarden {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, milliseconds since 1970. */
  readonly changed: number;
  readonly beds: number;
  /** Why it could not be read, in words that go on from a colon; it is then set aside whole, to be saved as a file. */
  readonly problem: string | null;
}

/** A garden as it was at some time, as the list of earlier states shows it. */
export interface EarlierState {
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly beds: number;
  /** The last thing done to it then: "Move Salads". Empty where nothing was. */
  readonly label: string;
}

export type KeepingState =
  /**
   * Everything that was done is kept. `lacking` says what else is not: a sentence, where the garden itself found
   * room and its history did not.
   */
  | { readonly state: "kept"; readonly at: number | null; readonly lacking?: string }
  | { readonly state: "keeping" }
  /** What was done is not kept; `reason` says why and what to do. Stays until it can be kept. */
  | { readonly state: "not-kept"; readonly reason: string };

/** Where the garden on the board is changed. */
export type Place =
  | "here"
  /** In another tab; here it can be looked at. */
  | "elsewhere"
  /** In another tab that holds changes it cannot keep, and so does not let go. */
  | "held-back";

/** What the Gardens menu can do. Implemented by `gardens.ts`; each throws nothing and tells through its result. */
export interface Gardens {
  list(): Promise<readonly KeptGarden[]>;
  /** Puts a kept garden on the board. */
  open(id: string): Promise<Outcome>;
  /** A new empty yard, kept and put on the board. */
  startNew(units: Units): Promise<Outcome>;
  /** A worked example as a garden of one's own. */
  startExample(example: string): Promise<Outcome>;
  /** The garden on the board again under another name; the copy goes on the board. */
  duplicate(): Promise<Outcome>;
  remove(id: string): Promise<Outcome>;
  /** Hands the garden on the board to the browser as a file, with the picture beneath its plan. */
  saveToFile(): Promise<void>;
  /** Hands the text of a garden that could not be read to the browser as a file. */
  rescue(id: string): Promise<Outcome>;
  /** Reads a file; a bad one is refused with the reason and the open garden stays as it was. */
  openFromFile(file: File): Promise<Outcome>;
  /** Earlier states of a kept garden, latest first. */
  earlier(id: string): Promise<readonly EarlierState[]>;
  /**
   * Puts an earlier state on the board, as one step that can be undone. One of a garden that can no longer be read
   * becomes a garden of its own; what could not be read stays set aside.
   */
  goBackTo(id: string, at: number): Promise<Outcome>;
  /** Makes this the tab in which the garden on the board is changed. */
  takeOver(): Promise<void>;
}

export type Outcome =
  | { readonly ok: true; readonly garden: Garden | null }
  | { readonly ok: false; readonly reason: string };
