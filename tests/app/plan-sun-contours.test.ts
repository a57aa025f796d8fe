import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contoursOf } from "../../app/plan/paint/sun-contours.ts";
import type { Point, SunGrid } from "../../src/index.ts";

const COLUMNS = 23;
const ROWS = 17;
const CELL = 150;
const ORIGIN: Point = [400, -250];

/** A map whose hours are a function of the place. */
function gridOf(hoursAt: (x: number, y: number) => number): SunGrid {
  const hours = new Float32Array(COLUMNS * ROWS);
  for (let i = 0; i < hours.length; i++) {
    const [column, row] = [i % COLUMNS, Math.floor(i / COLUMNS)];
    hours[i] = hoursAt(ORIGIN[0] + (column + 0.5) * CELL, ORIGIN[1] + (row + 0.5) * CELL);
  }
  return { origin: ORIGIN, cell: CELL, columns: COLUMNS, rows: ROWS, hours };
}

describe("lines of equal hours", () => {
  it("over hours that rise evenly run straight, and where the plane has those hours", () => {
    // 1 h more with every 500 mm to the right and every 1250 mm down.
    const lines = contoursOf(
      gridOf((x, y) => x / 500 + y / 1250),
      [3, 5],
    );
    expect(lines.map(({ hours }) => hours)).toEqual([3, 5]);
    for (const { hours, line } of lines) {
      for (const [x, y] of line) expect(x / 500 + y / 1250).toBeCloseTo(hours, 4);
      // From the first row of middles to the last, all in one piece.
      const rows = line.map(([, y]) => y);
      expect(Math.min(...rows)).toBeCloseTo(-250 + 75, 3);
      expect(Math.max(...rows)).toBeCloseTo(-250 + 16.5 * 150, 3);
    }
  });

  it("run round a shady place in a ring, at the distance the hours say", () => {
    const [cx, cy] = [400 + 11.5 * 150, -250 + 8.5 * 150];
    const [ring, ...others] = contoursOf(
      gridOf((x, y) => Math.hypot(x - cx, y - cy) / 200),
      [4],
    );
    expect(others).toEqual([]);
    expect(ring?.line[0]).toEqual(ring?.line.at(-1));
    // Between the middles of cells a cone sags from the chord by less than a sixteenth of a cell here.
    for (const [x, y] of ring?.line ?? []) {
      expect(Math.abs(Math.hypot(x - cx, y - cy) - 800)).toBeLessThan(CELL / 16);
    }
  });

  it("stop where the map says nothing", () => {
    const wallFrom = ORIGIN[1] + 6 * CELL;
    const wallTo = ORIGIN[1] + 8 * CELL;
    const lines = contoursOf(
      gridOf((x, y) => (y > wallFrom && y < wallTo ? Number.NaN : x / 500)),
      [2.6],
    );
    expect(lines).toHaveLength(2);
    for (const [x, y] of lines.flatMap(({ line }) => line)) {
      expect(x).toBeCloseTo(1300, 3);
      expect(y <= wallFrom || y >= wallTo).toBe(true);
    }
  });

  it("part at a saddle, the two high corners together where the middle is high", () => {
    const saddle = (high: number): SunGrid => ({
      origin: [0, 0],
      cell: 100,
      columns: 2,
      rows: 2,
      hours: Float32Array.of(high, 1, 1, high),
    });
    // Mean 5 lies over the level: the low corners at the right and left are cut off.
    const [first, second] = contoursOf(saddle(9), [3]);
    const sums = [first, second].map((one) => one?.line.map(([x, y]) => Math.sign(x - y)));
    expect(sums).toEqual([
      [1, 1],
      [-1, -1],
    ]);
    // Mean 2.5 lies under it: the high corners are.
    const corners = contoursOf(saddle(4), [3]).map(({ line }) =>
      line.map(([x, y]) => Math.sign(x + y - 200)),
    );
    expect(corners).toEqual([
      [-1, -1],
      [1, 1],
    ]);
  });

  it("are none where no place reaches the hours", () => {
    expect(
      contoursOf(
        gridOf(() => 7),
        [8, 6],
      ),
    ).toEqual([]);
  });

  it("begin and end only at the edge of the map, whatever the hours", () => {
    const field = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), {
      minLength: COLUMNS * ROWS,
      maxLength: COLUMNS * ROWS,
    });
    fc.assert(
      fc.property(field, (hours) => {
        let i = 0;
        const grid = gridOf(() => hours[i++]!);
        for (const { line } of contoursOf(grid, [5])) {
          const [start, end] = [line[0]!, line.at(-1)!];
          if (start[0] === end[0] && start[1] === end[1]) continue;
          for (const point of [start, end]) expect(onEdge(point)).toBe(true);
        }
      }),
      { numRuns: 60, seed: 20261125 },
    );
  });
});

function onEdge([x, y]: Point): boolean {
  const column = (x - ORIGIN[0]) / CELL - 0.5;
  const row = (y - ORIGIN[1]) / CELL - 0.5;
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  return near(column, 0) || near(column, COLUMNS - 1) || near(row, 0) || near(row, ROWS - 1);
}
