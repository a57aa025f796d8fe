import { properCrossing, segmentDistance } from "./segment.ts";
import type { Point, Ring } from "./types.ts";

/** How far the chords of a drawn arc may lie inside it, mm. */
const ARC_TOLERANCE = 0.05;
/** Below this a distance is noise of the arithmetic, mm. */
const NOISE = 1e-6;
/** Sides that turn back on each other by less than this leave no corner to draw. */
const NOTHING = 1e-9;

/** A ring drawn in. */
export interface Inset {
  readonly ring: Ring;
  /** The same with one chord for each arc: a little more ground, with few corners, where it only has to be searched. */
  readonly chorded: Ring;
}

/**
 * A ring drawn in by a distance where that is plain to do: every side moves inwards and keeps its direction, and outward
 * corners stay corners. About an inward corner the outline runs on an arc.
 *
 * Most shapes that are drawn are as plain as that, arms that are twice as wide as the distance too: nothing is left of
 * them. Where more vanishes or an outline falls into several, clipping has to sort out what is left (see `offset`).
 *
 * @param ring clockwise, simple
 * @param by mm, above 0
 * @returns null where it is not plain
 */
export function plainInset(ring: Ring, by: number): Inset | null {
  const corners = cornersOf(ring, by);
  if (!corners || !keepsSides(ring, corners, by)) return null;
  const gone = endsOfArms(ring, corners);
  const parts = corners.map((corner, i) => {
    if (gone.has(i)) return [];
    return corner.turn < 0 ? arcAbout(ring[i]!, corner, by) : [corner.ends];
  });
  const arcsKeepOff = corners.every(({ turn }, i) => turn >= 0 || keepsOffArc(ring, i, parts[i]!, by));
  if (!arcsKeepOff) return null;
  const chorded = parts.flatMap((part) => (part.length > 1 ? [part[0]!, part.at(-1)!] : part));
  return chorded.length < 3 ? null : { ring: parts.flat(), chorded };
}

/** Corners at the ends of arms that are just twice as wide: drawn in, such an arm is a line there and back. */
function endsOfArms(ring: Ring, corners: readonly Corner[]): ReadonlySet<number> {
  const gone = new Set<number>();
  for (let i = 0; i < ring.length; i++) {
    const next = i + 1 === ring.length ? 0 : i + 1;
    if (!isGone(corners[i]!, corners[next]!)) continue;
    gone.add(i).add(next);
  }
  return gone;
}

const isGone = ({ starts }: Corner, { ends }: Corner): boolean =>
  Math.abs(starts[0] - ends[0]) < NOISE && Math.abs(starts[1] - ends[1]) < NOISE;

/** What becomes of a corner: where the side before it ends and the one after it starts; one place but for an inward corner. */
interface Corner {
  readonly ends: Point;
  readonly starts: Point;
  /** From the one side to the next, radians, clockwise; below 0 inwards. */
  readonly turn: number;
}

function cornersOf(ring: Ring, by: number): Corner[] | null {
  const corners: Corner[] = [];
  let before = directionOf(ring.at(-1)!, ring[0]!);
  for (let i = 0; i < ring.length; i++) {
    const [x, y] = ring[i]!;
    const after = directionOf(ring[i]!, ring[i + 1 === ring.length ? 0 : i + 1]!);
    if (!before || !after) return null;
    const turn = before[0] * after[1] - before[1] * after[0];
    const along = before[0] * after[0] + before[1] * after[1];
    if (1 + along < NOTHING) return null;
    // Inwards of a side lies a quarter turn clockwise: the two inward directions add up to where the corner goes.
    const far = by / (1 + along);
    const met: Point = [x - far * (before[1] + after[1]), y + far * (before[0] + after[0])];
    corners.push(
      turn >= 0
        ? { ends: met, starts: met, turn }
        : {
            ends: [x - by * before[1], y + by * before[0]],
            starts: [x - by * after[1], y + by * after[0]],
            turn: Math.atan2(turn, along),
          },
    );
    before = after;
  }
  return corners;
}

function directionOf([ax, ay]: Point, [bx, by]: Point): Point | null {
  const length = Math.hypot(bx - ax, by - ay);
  return length === 0 ? null : [(bx - ax) / length, (by - ay) / length];
}

function arcAbout([x, y]: Point, { ends, starts, turn }: Corner, by: number): Point[] {
  const chords = Math.max(1, Math.ceil(Math.abs(turn) / (2 * Math.acos(1 - ARC_TOLERANCE / by))));
  const arc: Point[] = [ends];
  // Turned by one chord after another: a hundred of them add up to less than a picometre of error.
  const c = Math.cos(turn / chords);
  const s = Math.sin(turn / chords);
  let ux = ends[0] - x;
  let uy = ends[1] - y;
  for (let i = 1; i < chords; i++) {
    const turned = ux * c - uy * s;
    uy = ux * s + uy * c;
    ux = turned;
    arc.push([x + ux, y + uy]);
  }
  arc.push(starts);
  return arc;
}

/** Whether every side still runs the way it ran, and keeps off all others: then nothing lies in another side's strip. */
function keepsSides(ring: Ring, corners: readonly Corner[], by: number): boolean {
  const runs = ring.every((a, i) => {
    const next = i + 1 === ring.length ? 0 : i + 1;
    const b = ring[next]!;
    const [from, to] = [corners[i]!.starts, corners[next]!.ends];
    if (isGone(corners[i]!, corners[next]!)) return isEndOfArm(ring, corners, i);
    return (to[0] - from[0]) * (b[0] - a[0]) + (to[1] - from[1]) * (b[1] - a[1]) > 0;
  });
  // Outward corners only: sides that keep their direction go round once, and meet nowhere.
  if (!runs || corners.every(({ turn }) => turn >= 0)) return runs;
  return ring.every((_, i) =>
    keepsOff(ring, corners[i]!.starts, corners[i + 1 === ring.length ? 0 : i + 1]!.ends, by),
  );
}

/** Whether the sides before and after one run back along each other, in an outline that is not all outward corners. */
function isEndOfArm(ring: Ring, corners: readonly Corner[], side: number): boolean {
  const at = (i: number) => ring[(i + ring.length) % ring.length]!;
  const before = directionOf(at(side - 1), at(side));
  const after = directionOf(at(side + 1), at(side + 2));
  if (!before || !after || corners.every(({ turn }) => turn >= 0)) return false;
  return before[0] * after[0] + before[1] * after[1] < -1 + NOTHING;
}

function keepsOff(ring: Ring, from: Point, to: Point, by: number): boolean {
  let c = ring.at(-1)!;
  for (const d of ring) {
    if (
      segmentDistance(from[0], from[1], c[0], c[1], d[0], d[1]) < by - NOISE ||
      segmentDistance(to[0], to[1], c[0], c[1], d[0], d[1]) < by - NOISE ||
      segmentDistance(d[0], d[1], from[0], from[1], to[0], to[1]) < by - NOISE ||
      properCrossing(from, to, c, d)
    ) {
      return false;
    }
    c = d;
  }
  return true;
}

/** Whether the arc about an inward corner keeps off all sides. A side far enough from the corner is so from its arc. */
function keepsOffArc(ring: Ring, corner: number, arc: readonly Point[], by: number): boolean {
  const [x, y] = ring[corner]!;
  return ring.every(([ax, ay], j) => {
    const next = j + 1 === ring.length ? 0 : j + 1;
    if (j === corner || next === corner) return true;
    const [bx, bottom] = ring[next]!;
    if (segmentDistance(x, y, ax, ay, bx, bottom) >= 2 * by) return true;
    return arc.every(([px, py]) => segmentDistance(px, py, ax, ay, bx, bottom) >= by - NOISE);
  });
}
