import { boundsOfItem } from "../garden/bounds-of-item.ts";
import type { Item } from "../garden/item.ts";
import type { Path } from "../garden/kinds/path.ts";
import { outlineOf } from "../garden/outline.ts";
import { offset } from "../geometry/clip.ts";
import { contains } from "../geometry/ring.ts";
import { properCrossing } from "../geometry/segment.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { distance, placed } from "../geometry/vector.ts";
import { pathStrip } from "./path-ground.ts";

/** What stands this near to the side of a path holds it, mm. */
const AGAINST = 25;
/** A gap this short needs no edging of its own, mm. */
const SHORTEST = 50;

const known = new WeakMap<Path, { readonly near: readonly Item[]; readonly runs: readonly number[] }>();

/**
 * Lengths of the parts of both sides of a path, mm, that nothing stands against: beds, houses and sheds hold the
 * surfacing themselves, and where another path joins there is no side. Remembered while the same things lie near.
 */
export function freeEdges(path: Path, items: readonly Item[]): readonly number[] {
  const box = boundsOfItem(path);
  const near = items.filter(
    (item) =>
      item !== path &&
      (item.kind === "bed" || item.kind === "house" || item.kind === "shed" || item.kind === "path") &&
      meet(box, boundsOfItem(item)),
  );
  const kept = known.get(path);
  if (kept && kept.near.length === near.length && kept.near.every((item, i) => item === near[i]))
    return kept.runs;
  const covers = near.flatMap(groundOf);
  const runs = sidesOf(path).flatMap((side) => freeRuns(side, covers));
  known.set(path, { near, runs });
  return runs;
}

function groundOf(item: Item): readonly Ring[] {
  if (item.kind === "path") return pathStrip(item);
  return item.kind === "bed" || item.kind === "house" || item.kind === "shed"
    ? offset([outlineOf(item)], AGAINST, "mitred")
    : [];
}

/** The two long sides of the strip, without its ends, where the path leads on. */
function sidesOf(path: Path): readonly (readonly Point[])[] {
  const line = path.points.map((point) => placed(point, path.at, path.turn));
  const half = path.width / 2;
  return [beside(line, half), beside(line, -half)];
}

/** A line beside another, its corners mitred; `by` to the right of the way it runs, y being down. */
function beside(line: readonly Point[], by: number): readonly Point[] {
  const legs = line.slice(1).flatMap((to, i): (readonly [Point, Point])[] => {
    const from = line[i]!;
    const length = distance(from, to);
    if (length === 0) return [];
    const [nx, ny] = [(-(to[1] - from[1]) * by) / length, ((to[0] - from[0]) * by) / length];
    return [
      [
        [from[0] + nx, from[1] + ny],
        [to[0] + nx, to[1] + ny],
      ],
    ];
  });
  const points: Point[] = [];
  for (const [i, [from, to]] of legs.entries()) {
    const before = legs[i - 1];
    points.push(before ? (meetingPoint(before, [from, to]) ?? from) : from);
    if (i === legs.length - 1) points.push(to);
  }
  return points;
}

/** Where two lines meet; null where they run the same way. */
function meetingPoint([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): Point | null {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-6 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return null;
  const t = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / cross;
  return [a[0] + t * ux, a[1] + t * uy];
}

/** Lengths of the parts of a line that lie in none of the rings; a part that goes on round a corner is one. */
function freeRuns(line: readonly Point[], rings: readonly Ring[]): number[] {
  const runs: number[] = [];
  let run = 0;
  const end = () => {
    if (run > SHORTEST) runs.push(run);
    run = 0;
  };
  for (const [i, to] of line.slice(1).entries()) {
    const from = line[i]!;
    const cuts = [from, ...crossings(from, to, rings), to];
    for (const [j, next] of cuts.slice(1).entries()) {
      const start = cuts[j]!;
      const middle: Point = [(start[0] + next[0]) / 2, (start[1] + next[1]) / 2];
      if (rings.some((ring) => contains(ring, middle))) end();
      else run += distance(start, next);
    }
  }
  end();
  return runs;
}

function crossings(from: Point, to: Point, rings: readonly Ring[]): Point[] {
  const found = rings.flatMap((ring) =>
    ring.flatMap((corner, i) => {
      const at = properCrossing(from, to, ring.at(i - 1) ?? corner, corner);
      return at ? [at] : [];
    }),
  );
  return found.sort((a, b) => distance(from, a) - distance(from, b));
}

/** Grown by what still counts as against the side. */
const meet = (a: Box, b: Box): boolean =>
  a.minX < b.maxX + AGAINST &&
  b.minX < a.maxX + AGAINST &&
  a.minY < b.maxY + AGAINST &&
  b.minY < a.maxY + AGAINST;
