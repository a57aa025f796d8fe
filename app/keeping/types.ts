import type { Garden, Units } from "../../src/index.ts";

/** A garden kept on this device, as the list of gardens shows it. */
export interface KeptGarden {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, milliseconds since 1970. */
  readonly changed: number;
  readonly beds: number;
  /** It could not be read and is set aside whole, to be saved as a file. */
  readonly broken: boolean;
}

export type KeepingState =
  /** Everything that was done is kept. */
  | { readonly state: "kept"; readonly at: number | null }
  | { readonly state: "keeping" }
  /** What was done is not kept; `reason` is one sentence that says why and what to do. Stays until it can be kept. */
  | { readonly state: "not-kept"; readonly reason: string };

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
  /** Hands the garden on the board to the browser as a file. */
  saveToFile(): void;
  /** Hands the text of a garden that could not be read to the browser as a file. */
  rescue(id: string): Promise<Outcome>;
  /** Reads a file; a bad one is refused with the reason and the open garden stays as it was. */
  openFromFile(file: File): Promise<Outcome>;
}

export type Outcome =
  | { readonly ok: true; readonly garden: Garden | null }
  | { readonly ok: false; readonly reason: string };
