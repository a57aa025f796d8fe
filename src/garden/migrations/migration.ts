/** The raw document on its way to the current version: its shape is that of some earlier version. */
export type RawGarden = Readonly<Record<string, unknown>>;

/**
 * One step from a version to the next. Once shipped it is never edited: the remedy for a mistake in it is the next
 * step. Each has a test, and a file of the version it starts from in `tests/fixtures` that is read for ever.
 */
export interface Migration {
  /** Says what changed: "slopes-become-ratios". */
  readonly name: string;
  /** The version it takes; it gives the next one. */
  readonly from: number;
  /** Pure: leaves what it is given as it is. The version field is set by the runner. */
  readonly step: (garden: RawGarden) => RawGarden;
}

/** A record as it is. @throws TypeError for anything else: what follows would tell nonsense */
export function record(raw: unknown): RawGarden {
  if (typeof raw !== "object" || raw === null || Array.isArray(raw)) throw new TypeError("not a record");
  return { ...raw };
}
