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

/**
 * What the days of a task follow from: frosts that were typed, the frosts usual in the hemisphere and its kind of winter, a
 * day that was typed, or the months of the calendar.
 */
export type DayBy = "frosts" | "usual" | "typed" | "months";

/** Something the year asks, with this garden's own quantities. */
export interface Task {
  /** Stable between two reckonings of the same garden: calendars renew by it. */
  readonly id: string;
  readonly kind: TaskKind;
  readonly title: string;
  readonly detail: string;
  /** First day and how many days there are for it; days of a year of 365, day 1 being 1 January. May run over new year. */
  readonly from: number;
  readonly days: number;
  readonly dayBy: DayBy;
  /** Years after the first before it comes up: 0 from the year in which the beds are built. */
  readonly since: number;
  /** Years after the first in which it comes up, in order; null for every year from `since` on. */
  readonly years: readonly number[] | null;
  readonly bedIds: readonly ItemId[];
  /** What it takes, in words with the garden's units: "0.4 yd³ of compost". Empty where nothing is taken. */
  readonly quantities: readonly string[];
  readonly tools: readonly string[];
  readonly why: string;
  readonly cautions: readonly string[];
  readonly source: Source;
}

/** Whether a task comes up so many years after the first. */
export const comesUpIn = ({ since, years }: Pick<Task, "since" | "years">, year: number): boolean =>
  years === null ? year >= since : years.includes(year);
