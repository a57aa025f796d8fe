import { boundsOf } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { drawnIn } from "./convex-cut.ts";
import type { Spacing } from "./spacing.ts";

/** How a planting is set. */
export interface Setting extends Spacing {
  readonly set: "rows" | "block";
  /** The way its rows run in the bed's own frame. */
  readonly rowsRun: "x" | "y";
}

export interface SetPlants {
  /** Each as long as the room of its plants: half a spacing on from the first and the last. */
  readonly rows: readonly (readonly [Point, Point])[];
  readonly plants: readonly Point[];
}

/** Runs of ground along a line, from and to. */
type Run = readonly [from: number, to: number];

/**
 * Sets plants on some ground: half a spacing from its edge, so that neighbours and walls are kept off as far as the plants
 * keep off one another, with an allowance of half the least length that counts.
 *
 * Rows stand evenly about the middle, half their own distance from the edge where there is room for a row at all. In a block
 * each second row stands half a spacing on, so that plants are equally far from one another in every direction.
 */
export function setPlants(ground: readonly Ring[], { set, rowsRun, apart, rowsApart }: Setting): SetPlants {
  const swap = rowsRun === "y";
  const rings = swap ? ground.map(swapped) : ground;
  const room = drawnIn(rings, Math.max(SAME_LENGTH / 2, apart / 2 - SAME_LENGTH / 2));
  if (room.length === 0) return { rows: [], plants: [] };
  const box = boundsOf(room.flat());
  const rows: [Point, Point][] = [];
  const plants: Point[] = [];
  const grid = set === "block" ? staggeredStart(box.minX, box.maxX, apart) : null;
  rowsAcross(rings, box.minY, box.maxY, rowsApart, set).forEach((y, i) => {
    let last = -Infinity;
    for (const run of runsAlong(room, y)) {
      const places =
        grid === null
          ? evenlyIn(run, last + apart, apart)
          : onGrid(run, grid + (i % 2 === 0 ? 0 : apart / 2), apart);
      if (places.length === 0) continue;
      for (const x of places) plants.push(swap ? [y, x] : [x, y]);
      last = places.at(-1)!;
      const [from, to] = [places[0]! - apart / 2, last + apart / 2];
      rows.push(
        swap
          ? [
              [y, from],
              [y, to],
            ]
          : [
              [from, y],
              [to, y],
            ],
      );
    }
  });
  return { rows, plants };
}

/** The ring with x and y in each other's place; turned round, so that it runs clockwise again. */
const swapped = (ring: Ring): Ring => ring.map(([x, y]): Point => [y, x]).reverse();

/** Centre lines of the rows, evenly about the middle of the ground. */
function rowsAcross(
  rings: readonly Ring[],
  top: number,
  bottom: number,
  rowsApart: number,
  set: Setting["set"],
): number[] {
  const { minY, maxY } = boundsOf(rings.flat());
  const fit = Math.floor((bottom - top) / rowsApart) + 1;
  const wide = set === "block" ? fit : Math.max(1, Math.floor((maxY - minY + SAME_LENGTH) / rowsApart));
  const count = Math.min(fit, wide);
  const first = (top + bottom) / 2 - ((count - 1) * rowsApart) / 2;
  return Array.from({ length: count }, (_, i) => first + i * rowsApart);
}

/** Where a level line lies on ground, from left to right. */
function runsAlong(rings: readonly Ring[], y: number): Run[] {
  const crossings: number[] = [];
  for (const ring of rings) {
    let [bx, by] = ring.at(-1)!;
    for (const [ax, ay] of ring) {
      if (ay > y !== by > y) crossings.push(ax + ((bx - ax) * (y - ay)) / (by - ay));
      [bx, by] = [ax, ay];
    }
  }
  crossings.sort((a, b) => a - b);
  const runs: Run[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) runs.push([crossings[i]!, crossings[i + 1]!]);
  return runs;
}

/** As many places as a run has room for, about its middle. @param notBefore where the run before lets it begin */
function evenlyIn([from, to]: Run, notBefore: number, apart: number): number[] {
  const start = Math.max(from, notBefore);
  if (start > to) return [];
  const count = Math.floor((to - start) / apart) + 1;
  const first = start + (to - start - (count - 1) * apart) / 2;
  return Array.from({ length: count }, (_, i) => first + i * apart);
}

/** Where the even rows of a block begin so that both they and the odd ones lie about the middle. */
function staggeredStart(from: number, to: number, apart: number): number {
  const count = Math.floor((to - from) / apart) + 1;
  const slack = to - from - (count - 1) * apart;
  return from + (slack >= apart / 2 ? (slack - apart / 2) / 2 : slack / 2);
}

function onGrid([from, to]: Run, start: number, apart: number): number[] {
  const first = start + Math.ceil((from - start) / apart - 1e-9) * apart;
  const count = Math.floor((to - first) / apart + 1e-9) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => first + i * apart);
}
