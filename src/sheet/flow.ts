import { say } from "../words/say.ts";
import { LEAST_PT, lineHeight, shortened, textWidth, type Weight, wrapped } from "./lettering.ts";
import type { Mark } from "./types.ts";

/** One row of a list: how high it is, and its marks once it has a place. */
export interface Row {
  readonly height: number;
  /** In words, for the outline. */
  readonly words: string;
  draw(x: number, y: number): Mark[];
  /** The same row in parts that may stand in two columns, their heights adding up to its own; unbroken if not given. */
  readonly parts?: readonly Row[];
}

/** A heading with its rows. */
export interface Block {
  readonly heading: string;
  readonly rows: readonly Row[];
  /** Rows from here on may be left out where the page is full; `more` says so in a sentence. All must show if absent. */
  readonly spare?: { readonly from: number; readonly more: (left: number) => string };
}

/** A column of the page, mm from its top left corner. */
export interface Column {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

const HEADING_PT = 9.5;
const HEADING_HEIGHT = lineHeight(HEADING_PT) + 1.6;
const BETWEEN_BLOCKS = 2.6;
/** A heading does not stand alone at the foot of a column. */
const ROWS_WITH_HEADING = 2;
const ROW_GAP = 0.6;

/**
 * Sets blocks one after another into columns, breaking between rows; a block that goes on in the next column says so.
 * @returns the marks, or null if the columns do not hold them all
 */
export function flowed(blocks: readonly Block[], columns: readonly Column[], width: number): Mark[] | null {
  const marks: Mark[] = [];
  const left = [...columns];
  let column = left.shift();
  let y = column?.top ?? 0;

  const nextColumn = () => {
    column = left.shift();
    y = column?.top ?? 0;
  };

  for (const block of blocks) {
    if (block.rows.length === 0) continue;
    const rows = block.rows.flatMap((row) => row.parts ?? [row]);
    const start = HEADING_HEIGHT + heightOf(rows.slice(0, ROWS_WITH_HEADING));
    if (column && y + start > column.bottom) nextColumn();
    let heading = block.heading;
    let atTop = true;
    for (const row of rows) {
      if (column && !atTop && y + row.height > column.bottom) {
        nextColumn();
        heading = say`${block.heading} (continued)`;
        atTop = true;
      }
      if (!column) return null;
      if (atTop) {
        if (y + HEADING_HEIGHT + row.height > column.bottom) return null;
        marks.push(...headingMarks(heading, column.x, y, width));
        y += HEADING_HEIGHT;
        atTop = false;
      }
      marks.push(...row.draw(column.x, y));
      y += row.height;
    }
    y += BETWEEN_BLOCKS;
  }
  return marks;
}

const heightOf = (rows: readonly Row[]): number => rows.reduce((sum, { height }) => sum + height, 0);

function headingMarks(heading: string, x: number, y: number, width: number): Mark[] {
  const baseline = y + lineHeight(HEADING_PT) * 0.8;
  const rule = y + lineHeight(HEADING_PT) + 0.3;
  return [
    text(shortened(heading, width, HEADING_PT, "bold"), x, baseline, { pt: HEADING_PT, weight: "bold" }),
    {
      draw: "line",
      points: [
        [x, rule],
        [x + width, rule],
      ],
      closed: false,
      pen: 0.25,
    },
  ];
}

interface TextStyle {
  readonly pt?: number;
  readonly weight?: Weight;
  readonly anchor?: "start" | "middle" | "end";
}

/** A line of type as a mark; `y` is its baseline. */
export function text(words: string, x: number, y: number, style: TextStyle = {}): Mark {
  const { pt = LEAST_PT, weight = "normal", anchor = "start" } = style;
  return { draw: "text", at: [x, y], text: words, pt, weight, anchor };
}

const LINE = lineHeight(LEAST_PT);
const BASELINE = LINE * 0.78;

/** Running text, broken into lines; lines after the first stand in by `indent` mm. */
export function paragraph(
  words: string,
  width: number,
  options: { indent?: number; weight?: Weight } = {},
): Row {
  const { indent = 0, weight = "normal" } = options;
  const lines = wrapped(words, width - indent, LEAST_PT, weight);
  return inParts(
    words,
    lines.map(
      (line, i): Row => ({
        height: LINE + (i === lines.length - 1 ? ROW_GAP : 0),
        words: line,
        draw: (x, y) => [text(line, x + (i > 0 ? indent : 0), y + BASELINE, { weight })],
      }),
    ),
  );
}

/** One row made of parts, one under the other. */
function inParts(words: string, parts: readonly Row[]): Row {
  return {
    height: heightOf(parts),
    words,
    parts,
    draw: (x, y) => {
      let top = y;
      return parts.flatMap((part) => {
        const marks = part.draw(x, top);
        top += part.height;
        return marks;
      });
    },
  };
}

/** A numbered step, its number hanging. */
export function step(number: number, words: string, width: number): Row {
  const hang = textWidth("00. ", LEAST_PT);
  const body = paragraph(words, width - hang);
  return {
    height: body.height,
    words: `${number}. ${words}`,
    draw: (x, y) => [text(`${number}.`, x, y + BASELINE), ...body.draw(x + hang, y)],
  };
}

/** A cell of a table row: its words, its right or left edge as mm from the row's left, and which edge that is. */
export interface Cell {
  readonly words: string;
  readonly x: number;
  readonly anchor?: "start" | "end";
  readonly weight?: Weight;
  /** Room it has, mm; what is longer is broken into lines (left-hand cells only). */
  readonly width?: number;
}

/** A row of cells with a hairline under it. */
export function tableRow(cells: readonly Cell[], width: number): Row {
  const broken = cells.map((cell) => ({
    cell,
    lines: cell.width ? wrapped(cell.words, cell.width, LEAST_PT, cell.weight) : [cell.words],
  }));
  const lines = Math.max(1, ...broken.map((one) => one.lines.length));
  const height = lines * LINE + ROW_GAP;
  return {
    height,
    words: cells
      .map(({ words }) => words)
      .filter(Boolean)
      .join(", "),
    draw: (x, y) => [
      ...broken.flatMap(({ cell, lines: own }) =>
        own.map((line, i) =>
          text(line, x + cell.x, y + BASELINE + i * LINE, {
            anchor: cell.anchor ?? "start",
            weight: cell.weight ?? "normal",
          }),
        ),
      ),
      {
        draw: "line",
        points: [
          [x, y + height - 0.35],
          [x + width, y + height - 0.35],
        ],
        closed: false,
        pen: 0.08,
      },
    ],
  };
}
