import type { Point, SunGrid } from "../../../src/index.ts";

/** A line through places with the same hours of sun. A closed one ends where it begins. */
export interface Contour {
  readonly hours: number;
  readonly line: readonly Point[];
}

/** One crossing of a level with a side of a square is the end of up to two pieces of line. */
type Pieces = Map<number, number[]>;

/**
 * Lines of equal hours over a map of the sun: marching squares on the middles of its cells, each piece joined to the next.
 * Where a square's corners alternate, its middle decides which of them hang together. Squares with a corner that says
 * nothing are left out.
 *
 * @param levels hours, in any order
 * @returns lines in plan mm, level by level
 * @source W. E. Lorensen and H. E. Cline's marching cubes (1987) in the plane
 */
export const contoursOf = (grid: SunGrid, levels: readonly number[]): Contour[] =>
  levels.flatMap((hours) => joined(piecesAt(grid, hours)).map((sides) => contour(grid, hours, sides)));

const contour = (grid: SunGrid, hours: number, sides: readonly number[]): Contour => ({
  hours,
  line: sides.map((side) => crossing(grid, hours, side)),
});

/** Sides are numbered by the cell they start from: even ones run to the right of it, odd ones down. */
function piecesAt({ columns, rows, hours }: SunGrid, level: number): Pieces {
  const pieces: Pieces = new Map();
  const join = (a: number, b: number) => {
    pieces.set(a, [...(pieces.get(a) ?? []), b]);
    pieces.set(b, [...(pieces.get(b) ?? []), a]);
  };
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const i = row * columns + column;
      const [a, b, c, d] = [hours[i]!, hours[i + 1]!, hours[i + columns + 1]!, hours[i + columns]!];
      const mean = (a + b + c + d) / 4;
      if (Number.isNaN(mean)) continue;
      const high = [a >= level, b >= level, c >= level, d >= level];
      const [top, right, bottom, left] = [2 * i, 2 * (i + 1) + 1, 2 * (i + columns), 2 * i + 1];
      const crossed = [top, right, bottom, left].filter((_, side) => high[side] !== high[(side + 1) % 4]);
      if (crossed.length === 2) join(crossed[0]!, crossed[1]!);
      if (crossed.length < 4) continue;
      const cutsOffRight = high[0] === mean >= level;
      join(top, cutsOffRight ? right : left);
      join(bottom, cutsOffRight ? left : right);
    }
  }
  return pieces;
}

/** Sides in the order a line passes them: first the lines that have ends, then those that run in a ring. */
function joined(pieces: Pieces): number[][] {
  const left = new Map([...pieces].map(([side, to]) => [side, [...to]]));
  const take = (from: number, to: number) => {
    const there = left.get(from)!;
    there.splice(there.indexOf(to), 1);
  };
  const follow = (start: number): number[] => {
    const line = [start];
    let at = start;
    for (let to = left.get(at)?.[0]; to !== undefined; to = left.get(at)?.[0]) {
      take(at, to);
      take(to, at);
      line.push(to);
      at = to;
    }
    return line;
  };
  const ends = [...pieces].filter(([, to]) => to.length === 1).map(([side]) => side);
  return [...ends, ...pieces.keys()].flatMap((side) => (left.get(side)?.length ? [follow(side)] : []));
}

/** Where a level crosses a side, on the straight line between its two ends. */
function crossing({ origin, cell, columns, hours }: SunGrid, level: number, side: number): Point {
  const i = side >> 1;
  const across = side % 2 === 0;
  const [from, to] = [hours[i]!, hours[i + (across ? 1 : columns)]!];
  const part = (level - from) / (to - from);
  const [column, row] = [i % columns, Math.floor(i / columns)];
  return [
    origin[0] + (column + 0.5 + (across ? part : 0)) * cell,
    origin[1] + (row + 0.5 + (across ? 0 : part)) * cell,
  ];
}
