import { isConvex } from "../geometry/convex.ts";
import { boxDistance, boxOf } from "../geometry/gap.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** Part of one side of a ring, from `start` to `end` mm along it. */
export interface Interval {
  /** From this corner of the ring to the next. */
  readonly side: number;
  readonly start: number;
  readonly end: number;
}

export interface Hindrances {
  readonly others: readonly Ring[];
  /** The outline to stay inside of; null for open country. */
  readonly yard: Ring | null;
  /** How much nearer than its radius the disc may come to the ring's own other sides, mm. */
  readonly ownSlack: number;
}

/** Below this a distance is noise of the arithmetic, mm: a disc that just fits touches on both sides. */
const NOISE = 1e-6;

/**
 * Where a disc can touch a ring from outside without coming nearer to anything than its radius.
 *
 * The centre of a disc that rolls along a side moves on the line beside it at one radius. Each hindering segment takes
 * from that line what lies within a radius of it; that is one interval, for all points within a distance of a segment
 * make a convex shape.
 *
 * @param ring clockwise as seen
 * @param radius mm
 * @returns in the order of the ring's sides; an interval without length is a place where the disc just fits
 */
export function freeIntervals(
  ring: Ring,
  radius: number,
  { others, yard, ownSlack }: Hindrances,
): Interval[] {
  const near = others.filter((other) => boxDistance(boxOf(ring), boxOf(other)) < radius * 2);
  // A convex ring never stands in the way of a disc that touches it from outside.
  const ownHinders = !isConvex(ring);
  const free: Interval[] = [];
  for (let side = 0; side < ring.length; side++) {
    const roll = rollAlong(ring[side]!, ring[(side + 1) % ring.length]!, radius);
    if (!roll) continue; // a corner drawn twice has no side
    let left: [number, number][] = [[0, roll.length]];
    if (yard) left = withoutNear(left, roll, yard, radius - NOISE, -1);
    for (const other of near) left = withoutNear(left, roll, other, radius - NOISE, -1);
    if (ownHinders) left = withoutNear(left, roll, ring, radius - ownSlack - NOISE, side);
    for (const [start, end] of left) {
      const middle = pointOf(roll, (start + end) / 2);
      if (standsFree(middle, near, yard)) free.push({ side, start, end });
    }
  }
  return free;
}

/** The line on which the centre of the disc moves. */
interface Roll {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
}

function rollAlong([ax, ay]: Point, [bx, by]: Point, radius: number): Roll | null {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return null;
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  // Outwards of a clockwise ring in the y-down frame.
  return { x: ax + radius * uy, y: ay - radius * ux, ux, uy, length };
}

const pointOf = ({ x, y, ux, uy }: Roll, along: number): Point => [x + along * ux, y + along * uy];

const standsFree = (point: Point, others: readonly Ring[], yard: Ring | null): boolean =>
  (!yard || contains(yard, point)) && !others.some((other) => contains(other, point));

/** Takes from the intervals what lies within `distance` of any side of a ring, but for the side `own`. */
function withoutNear(
  intervals: [number, number][],
  roll: Roll,
  ring: Ring,
  distance: number,
  own: number,
): [number, number][] {
  let left = intervals;
  let [ax, ay] = ring.at(-1)!;
  for (let i = 0; i < ring.length && left.length > 0; i++) {
    const [bx, by] = ring[i]!;
    const isOwn = own >= 0 && (i === 0 ? ring.length - 1 : i - 1) === own;
    if (!isOwn) {
      const blocked = blockedBy(roll, ax, ay, bx, by, distance);
      if (blocked) left = cut(left, blocked);
    }
    ax = bx;
    ay = by;
  }
  return left;
}

/** The part of the roll within a distance of a segment: of its two ends, and of the band between them. */
function blockedBy(
  { x, y, ux, uy, length }: Roll,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  distance: number,
): [number, number] | null {
  // The segment in the roll's own frame: along it, and across it.
  const [a, aSide] = [(ax - x) * ux + (ay - y) * uy, (ay - y) * ux - (ax - x) * uy];
  const [b, bSide] = [(bx - x) * ux + (by - y) * uy, (by - y) * ux - (bx - x) * uy];
  if (Math.max(a, b) + distance <= 0 || Math.min(a, b) - distance >= length) return null;
  if (Math.min(aSide, bSide) >= distance || Math.max(aSide, bSide) <= -distance) return null;
  let [from, to] = [Infinity, -Infinity];
  const include = (low: number, high: number) => {
    if (low < high) {
      from = Math.min(from, low);
      to = Math.max(to, high);
    }
  };
  for (const [end, side] of [
    [a, aSide],
    [b, bSide],
  ] as const) {
    if (Math.abs(side) < distance) {
      const spread = Math.sqrt(distance * distance - side * side);
      include(end - spread, end + spread);
    }
  }
  include(...bandOf(a, aSide, b, bSide, distance));
  return from < to ? [from, to] : null;
}

/** The part of the axis that lies beside the segment, between its two ends, and nearer than the distance. */
function bandOf(a: number, aSide: number, b: number, bSide: number, distance: number): [number, number] {
  const [dx, dy] = [b - a, bSide - aSide];
  const size = Math.hypot(dx, dy);
  if (size === 0) return [0, 0];
  // Foot of the axis point t on the segment: ((t - a) dx - aSide dy) / size², to lie within 0 and 1.
  const beside =
    dx === 0 ? (between01(-aSide * dy, size) ? ALL : NONE) : ends(a + (aSide * dy) / dx, (size * size) / dx);
  // Distance from the segment's line: |(t - a) dy + aSide dx| / size, wanted below the distance.
  const reach = distance * size;
  const near = dy === 0 ? (Math.abs(aSide * dx) < reach ? ALL : NONE) : between(a, aSide * dx, dy, reach);
  return [Math.max(beside[0], near[0]), Math.min(beside[1], near[1])];
}

const ALL: readonly [number, number] = [-Infinity, Infinity];
const NONE: readonly [number, number] = [0, 0];
const between01 = (foot: number, size: number): boolean => foot >= 0 && foot <= size * size;
const ends = (start: number, run: number): readonly [number, number] =>
  run < 0 ? [start + run, start] : [start, start + run];

/** Where |(t - a) dy + offset| < reach. */
function between(a: number, offset: number, dy: number, reach: number): readonly [number, number] {
  const one = a + (-offset - reach) / dy;
  const two = a + (-offset + reach) / dy;
  return one < two ? [one, two] : [two, one];
}

function cut(intervals: [number, number][], [from, to]: [number, number]): [number, number][] {
  const left: [number, number][] = [];
  for (const [start, end] of intervals) {
    if (to <= start || from >= end) left.push([start, end]);
    else {
      if (from >= start) left.push([start, from]);
      if (to <= end) left.push([to, end]);
    }
  }
  return left;
}
