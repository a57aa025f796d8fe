/** One line of the bench's table. */
export interface BenchRow {
  /** The seeded scene it was measured on. */
  readonly scene: string;
  readonly what: string;
  readonly productMs: number;
  /** The outside reference on the same input, in the same process, turn about; null where there is none. */
  readonly referenceMs: number | null;
  /** What is asked of it, in words: "at least 5 times faster". */
  readonly bar: string;
  readonly ok: boolean;
}
