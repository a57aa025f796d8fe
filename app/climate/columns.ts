import { type GardenClimate, say, told, type Units, word } from "../../src/index.ts";
import { readNumber, writeNumber } from "../ledger/fields/read-number.ts";

export type Column = keyof GardenClimate["months"][number];

/** How a column's figures are shown in one of the unit systems, and turned into those of the garden and back. */
interface Measure {
  readonly unit: string;
  readonly decimals: number;
  readonly shown: (kept: number) => number;
  readonly kept: (shown: number) => number;
}

interface ColumnFacts {
  readonly label: string;
  /** Must be known of every month before anything can be worked out. */
  readonly needed: boolean;
  /** As kept: °C, mm, %, hours, m/s. */
  readonly least: number;
  readonly most: number;
  readonly us: Measure;
  readonly metric: Measure;
}

const scaled = (unit: string, decimals: number, by: number): Measure => ({
  unit,
  decimals,
  shown: (kept) => kept / by,
  kept: (shown) => shown * by,
});
const same = (unit: string, decimals = 1) => scaled(unit, decimals, 1);

const celsius = same("°C");
const fahrenheit: Measure = {
  unit: "°F",
  decimals: 1,
  shown: (kept) => kept * 1.8 + 32,
  kept: (shown) => (shown - 32) / 1.8,
};
/** Exactly: 1 international mile is 1609.344 m. */
const METRES_A_SECOND_PER_MPH = 1609.344 / 3600;

/** The table's columns in the order they are shown and pasted in. */
export const COLUMNS: Readonly<Record<Column, ColumnFacts>> = {
  maxC: { label: word("Mean high"), needed: true, least: -80, most: 65, us: fahrenheit, metric: celsius },
  minC: { label: word("Mean low"), needed: true, least: -80, most: 65, us: fahrenheit, metric: celsius },
  rain: {
    label: word("Rain"),
    needed: true,
    least: 0,
    most: 5000,
    us: scaled(word("in"), 2, 25.4),
    metric: same("mm", 0),
  },
  humidity: {
    label: word("Humidity"),
    needed: false,
    least: 1,
    most: 100,
    us: same("%", 0),
    metric: same("%", 0),
  },
  sunHours: {
    label: word("Sunshine a day"),
    needed: false,
    least: 0,
    most: 24,
    us: same("h"),
    metric: same("h"),
  },
  windMs: {
    label: word("Wind"),
    needed: false,
    least: 0,
    most: 60,
    us: scaled("mph", 1, METRES_A_SECOND_PER_MPH),
    metric: same("m/s"),
  },
};

export const COLUMN_IDS = Object.keys(COLUMNS) as readonly Column[];

export const unitOf = (column: Column, units: Units): string => told(COLUMNS[column][units].unit);

/** A cell as it is shown; nothing where the figure is not known. */
export function writeCell(column: Column, kept: number | null, units: Units): string {
  const { shown, decimals } = COLUMNS[column][units];
  return kept === null ? "" : writeNumber(shown(kept), decimals);
}

/**
 * Reads a cell.
 * @returns the figure as the garden keeps it; null for an empty cell
 * @throws RangeError with one sentence that says what was wrong
 */
export function readCell(column: Column, text: string, units: Units): number | null {
  const bare = text.trim();
  if (bare === "") return null;
  const { least, most, label } = COLUMNS[column];
  const { decimals, kept, shown } = COLUMNS[column][units];
  const unit = unitOf(column, units);
  const value = kept(readNumber(bare, unit));
  if (value < least || value > most) {
    const [from, to] = [least, most].map((bound) => writeNumber(shown(bound), decimals));
    throw new RangeError(say`${told(label)} goes from ${from!} to ${to!} ${unit}.`);
  }
  return value;
}
