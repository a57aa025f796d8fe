import type { Box, Point, Ring } from "../geometry/types.ts";

/** Square cells over a box of the plan, row by row from the top left. */
export interface Cells {
  /** Top left corner of the first cell, mm. */
  readonly origin: Point;
  /** Side of a cell, mm. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

/** A bit for each cell: 32 columns a word, each row begun with a word of its own. */
export type Mask = Int32Array;

/** Cells that cover a box, the outermost ones reaching over it by up to one cell. */
export const cellsOver = (box: Box, cell: number): Cells => ({
  origin: [box.minX, box.minY],
  cell,
  columns: Math.max(1, Math.ceil((box.maxX - box.minX) / cell - 1e-9)),
  rows: Math.max(1, Math.ceil((box.maxY - box.minY) / cell - 1e-9)),
});

export const wordsInRow = ({ columns }: Cells): number => (columns + 31) >>> 5;
export const emptyMask = (cells: Cells): Mask => new Int32Array(wordsInRow(cells) * cells.rows);

/** Middle of a cell on the plan. */
export const cellMiddle = ({ origin, cell }: Cells, column: number, row: number): Point => [
  origin[0] + (column + 0.5) * cell,
  origin[1] + (row + 0.5) * cell,
];

/** The cell a point lies in, or null outside of all. */
export function cellAt(
  { origin, cell, columns, rows }: Cells,
  [x, y]: Point,
): readonly [number, number] | null {
  const [column, row] = [Math.floor((x - origin[0]) / cell), Math.floor((y - origin[1]) / cell)];
  return column >= 0 && row >= 0 && column < columns && row < rows ? [column, row] : null;
}

/** Cells whose middles lie within any of the rings (even-odd along each row over all of them together). */
export function maskOf(cells: Cells, rings: readonly Ring[]): Mask {
  const mask = emptyMask(cells);
  for (let row = 0; row < cells.rows; row++) {
    const y = cells.origin[1] + (row + 0.5) * cells.cell;
    const crossings = rings.flatMap((ring) => crossingsAt(ring, y)).sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const from = Math.max(0, Math.ceil((crossings[i]! - cells.origin[0]) / cells.cell - 0.5));
      const to = Math.min(
        cells.columns - 1,
        Math.floor((crossings[i + 1]! - cells.origin[0]) / cells.cell - 0.5),
      );
      setBits(mask, row * wordsInRow(cells), from, to);
    }
  }
  return mask;
}

function crossingsAt(ring: Ring, y: number): number[] {
  const crossings: number[] = [];
  let [bx, by] = ring.at(-1)!;
  for (const [ax, ay] of ring) {
    if (ay > y !== by > y) crossings.push(ax + ((bx - ax) * (y - ay)) / (by - ay));
    [bx, by] = [ax, ay];
  }
  return crossings;
}

/** Sets the bits of some columns, both ends included, in the row that begins at a word. */
export function setBits(mask: Mask, start: number, from: number, to: number): void {
  if (from > to) return;
  const [first, last] = [from >> 5, to >> 5];
  const head = -1 << (from & 31);
  const tail = -1 >>> (31 - (to & 31));
  if (first === last) {
    mask[start + first]! |= head & tail;
    return;
  }
  mask[start + first]! |= head;
  for (let word = first + 1; word < last; word++) mask[start + word] = -1;
  mask[start + last]! |= tail;
}

export const isSet = (mask: Mask, cells: Cells, column: number, row: number): boolean =>
  ((mask[row * wordsInRow(cells) + (column >> 5)]! >>> (column & 31)) & 1) === 1;

/** Bits set in a word. @source H. S. Warren, Hacker's Delight, 2nd ed. 2013, section 5-1 */
export function bitCount(word: number): number {
  let v = word - ((word >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
