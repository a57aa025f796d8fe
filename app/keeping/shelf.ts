import type { KeptChange, StepRecord, StoredGarden } from "./stored.ts";

/** An earlier state of a garden, its text packed by gzip. */
export interface PackedState {
  readonly garden: string;
  /** Milliseconds since 1970; one state a millisecond. */
  readonly at: number;
  readonly name: string;
  readonly beds: number;
  readonly label: string;
  readonly packed: ArrayBuffer;
}

/** Where gardens are put. The page's is IndexedDB (`database.ts`); a test's is a few maps. Everything may throw. */
export interface Shelf {
  /** All gardens, last changed first. */
  list(): Promise<readonly StoredGarden[]>;
  get(id: string): Promise<StoredGarden | undefined>;
  steps(id: string): Promise<readonly StepRecord[]>;
  /** Puts a garden in place of what it was, with the new steps of its history, and drops steps outside its span. */
  put(change: KeptChange): Promise<unknown>;
  /** Removes a garden with its history and its earlier states. */
  remove(id: string): Promise<unknown>;
  /** When there are earlier states of. */
  stateTimes(id: string): Promise<readonly number[]>;
  states(id: string): Promise<readonly PackedState[]>;
  /** Puts one more earlier state, and drops those of its garden that were thinned out. */
  putState(state: PackedState, thinnedOut: readonly number[]): Promise<unknown>;
}
