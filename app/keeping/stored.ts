import { type Garden, writeGarden } from "../../src/index.ts";

/** Which steps are kept of a garden's history: `first` up to, not with, `end`. The garden stands before step `at`. */
export interface Span {
  readonly first: number;
  readonly at: number;
  readonly end: number;
}

/** A garden as it lies in the browser's storage: its text is the same as in a file, and read through the same door. */
export interface StoredGarden {
  readonly id: string;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly changed: number;
  readonly beds: number;
  readonly text: string;
  /** Gardens kept before there was a history have none. */
  readonly history?: Span;
}

/** One step of a garden's history as text; what it holds is told in `history-record.ts`. */
export interface StepRecord {
  readonly n: number;
  readonly text: string;
}

/** What is written at once, whole or not at all: the garden, and what is new in its history. */
export interface KeptChange {
  readonly garden: StoredGarden;
  readonly steps: readonly StepRecord[];
}

export const countBeds = ({ items }: Garden): number => items.filter(({ kind }) => kind === "bed").length;

export function asStored(id: string, garden: Garden, changed: number, history?: Span): StoredGarden {
  const stored = { id, name: garden.name, changed, beds: countBeds(garden), text: writeGarden(garden) };
  return history ? { ...stored, history } : stored;
}
