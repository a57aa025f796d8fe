import type { Column } from "./flow.ts";
import type { Paper } from "./papers.ts";

const GUTTER = 4.5;
const UNDER_PLAN = 3;

/** A way of parting the page: so many columns, of which the plan takes the last ones from the top. */
export interface Grid {
  readonly columns: number;
  /** Columns under the plan; the others run beside it, the whole height of the page. */
  readonly span: number;
}

/** Columns narrower than this break every row, mm; wider ones leave rows half empty. */
const COLUMN = { least: 43, most: 92 } as const;

/** The ways a paper may be parted. Wider columns are read more easily, so they come first. */
export function gridsOf(paper: Paper): readonly Grid[] {
  const counts = Array.from({ length: MOST_COLUMNS }, (_, i) => i + 1).filter((columns) => {
    const width = columnWidth(paper, { columns, span: 1 });
    return width >= COLUMN.least && width <= COLUMN.most;
  });
  return counts.flatMap((columns) =>
    Array.from({ length: columns - 1 }, (_, i): Grid => ({ columns, span: columns - i })),
  );
}

const MOST_COLUMNS = 8;

const inner = ({ width, margin }: Paper): number => width - 2 * margin;

export const columnWidth = (paper: Paper, { columns }: Grid): number =>
  (inner(paper) - (columns - 1) * GUTTER) / columns;

/** Left edge and width of the room the plan has. */
export function planRoom(paper: Paper, grid: Grid): { readonly left: number; readonly width: number } {
  const width = grid.span * columnWidth(paper, grid) + (grid.span - 1) * GUTTER;
  return { left: paper.width - paper.margin - width, width };
}

/** The columns for the lists, in reading order. */
export function columnsOf(
  paper: Paper,
  grid: Grid,
  top: number,
  planBottom: number,
  bottom: number,
): Column[] {
  const width = columnWidth(paper, grid);
  return Array.from({ length: grid.columns }, (_, i) => ({
    x: paper.margin + i * (width + GUTTER),
    top: i < grid.columns - grid.span ? top : planBottom + UNDER_PLAN,
    bottom,
  }));
}
