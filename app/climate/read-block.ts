import { say, sayCount, told, type Units } from "../../src/index.ts";
import { COLUMN_IDS, COLUMNS, readCell } from "./columns.ts";
import { type Draft, withCell } from "./draft.ts";

const MONTHS = 12;
/** A year with its mean or sum at the end. */
const WITH_YEAR = 13;

/** What a pasted block came to: the table with all that could be read in it, and what could not, cell by cell. */
export interface ReadBlock {
  readonly draft: Draft;
  readonly filled: number;
  readonly problems: readonly string[];
}

/**
 * Reads cells out of a spreadsheet or a station's table: a month a row, or a month a column, in the order of the
 * table's columns. Headings, names of months and a thirteenth row or column for the year are left out. What cannot be
 * read is told, and leaves its cell as it was.
 *
 * @param text cells parted by tabs, semicolons, bars or commas, or by spaces where there is none of them
 * @throws RangeError where it has not the twelve months of at least one column
 */
export function readBlock(text: string, before: Draft, units: Units): ReadBlock {
  const grid = upright(withoutHeadings(cellsOf(text)));
  let draft = before;
  let filled = 0;
  const problems: string[] = [];
  for (const [month, row] of grid.entries()) {
    for (const [i, cell] of row.entries()) {
      const column = COLUMN_IDS[i];
      if (!column || cell.trim() === "") continue;
      try {
        draft = withCell(draft, month, column, readCell(column, cell, units));
        filled++;
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
        problems.push(say`${told(COLUMNS[column].label)}, month ${month + 1}: ${error.message}`);
      }
    }
  }
  return { draft, filled, problems };
}

/** Commas part cells only where nothing else does: elsewhere they are decimal marks. */
function cellsOf(text: string): string[][] {
  const lines = text.split(/\r\n?|\n/).filter((line) => line.trim() !== "");
  const mark = ["\t", ";", "|", ","].find((sought) => text.includes(sought));
  // A tab at the beginning stands for an empty cell, spaces there for nothing.
  return lines.map((line) => (mark ? line.split(mark) : line.trim().split(/\s+/)).map(plain));
}

/** As cells come: in quotes, with a wide minus. */
const plain = (cell: string): string =>
  cell
    .trim()
    .replace(/^"(.*)"$/, "$1")
    .replace(/^[\u2212\u2013]/, "-");

const isWord = (cell: string): boolean => /^\p{L}/u.test(cell);

/** Without the first row where all it holds is words, and without a first column of words. */
function withoutHeadings(grid: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const rows = grid[0]?.every((cell) => cell === "" || isWord(cell)) ? grid.slice(1) : grid;
  const named = rows.length > 0 && rows.every(([first = ""]) => first === "" || isWord(first));
  return named ? rows.map((row) => row.slice(1)) : rows;
}

/** A month a row. */
function upright(grid: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const widest = Math.max(0, ...grid.map((row) => row.length));
  if (grid.length === MONTHS || grid.length === WITH_YEAR) return grid.slice(0, MONTHS);
  if (widest === MONTHS || widest === WITH_YEAR) {
    return Array.from({ length: MONTHS }, (_, month) => grid.map((row) => row[month] ?? ""));
  }
  throw new RangeError(
    sayCount(
      grid.length,
      {
        one: "This has {{count}} row of up to {{widest}} cells: twelve rows, or twelve columns, make a year.",
        other:
          "This has {{count}} rows of up to {{widest}} cells: twelve rows, or twelve columns, make a year.",
      },
      { widest },
    ),
  );
}
