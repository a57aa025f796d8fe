import type { GardenClimate } from "../../src/index.ts";
import { COLUMN_IDS, COLUMNS, type Column } from "./columns.ts";

export type DraftMonth = Readonly<Record<Column, number | null>>;
/** Twelve months, January first, while they are being typed. */
export type Draft = readonly DraftMonth[];

const NOTHING: DraftMonth = {
  maxC: null,
  minC: null,
  rain: null,
  humidity: null,
  sunHours: null,
  windMs: null,
};

export const EMPTY_DRAFT: Draft = Array.from({ length: 12 }, () => NOTHING);

export const draftOf = (climate: GardenClimate | null): Draft => climate?.months ?? EMPTY_DRAFT;

export const withCell = (draft: Draft, month: number, column: Column, value: number | null): Draft =>
  draft.map((row, i) => (i === month ? { ...row, [column]: value } : row));

type Months = GardenClimate["months"];

/** The months as the garden keeps them, or how many of the needed figures are still missing and which days are colder than their nights. */
export type Ripe =
  | { readonly months: Months }
  | { readonly missing: number; readonly upsideDown: readonly number[] };

export function ripe(draft: Draft): Ripe {
  const months: Months[number][] = [];
  const upsideDown: number[] = [];
  let missing = 0;
  for (const [i, row] of draft.entries()) {
    const { maxC, minC, rain } = row;
    missing += COLUMN_IDS.filter((column) => COLUMNS[column].needed && row[column] === null).length;
    if (maxC !== null && minC !== null && maxC < minC) upsideDown.push(i);
    if (maxC !== null && minC !== null && rain !== null) months.push({ ...row, maxC, minC, rain });
  }
  return missing === 0 && upsideDown.length === 0 ? { months } : { missing, upsideDown };
}
