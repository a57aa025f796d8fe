import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";

export const TASK_KINDS = [
  "top-up",
  "mulch",
  "sow",
  "harvest",
  "cover-crop",
  "bioassay",
  "water",
  "winter",
  "renewal",
  "care",
] as const;

export type TaskKind = (typeof TASK_KINDS)[number];

/** Something the year asks, with this garden's own quantities. */
export interface Task {
  /** Stable between two reckonings of the same garden: calendars renew by it. */
  readonly id: string;
  readonly kind: TaskKind;
  readonly title: string;
  readonly detail: string;
  /** First day and how many days there are for it; days of a year of 365, day 1 being 1 January. */
  readonly from: number;
  readonly days: number;
  /** Years after the first in which it comes up; null for every year. */
  readonly years: readonly number[] | null;
  readonly bedIds: readonly ItemId[];
  /** What it takes, in words with the garden's units: "0.4 yd³ of compost". Empty where nothing is taken. */
  readonly quantities: readonly string[];
  readonly tools: readonly string[];
  readonly why: string;
  readonly cautions: readonly string[];
  readonly source: Source;
}
