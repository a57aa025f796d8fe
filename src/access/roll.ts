import type { Box, Point } from "../geometry/types.ts";

/** From and to, mm along a roll. */
export type Span = readonly [from: number, to: number];

/** The line on which the centre of a disc moves that rolls along the outside of one side of a ring. */
export interface Roll {
  readonly x: number;
  readonly y: number;
  /** Its direction, of length 1. */
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
  readonly box: Box;
  at(along: number): Point;
}

/** The roll beside the side from a to b of a clockwise ring; null for a side without length. */
export function rollAlong([ax, ay]: Point, [bx, by]: Point, radius: number): Roll | null {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return null;
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  // Outwards of a clockwise ring in the y-down frame.
  const [x, y] = [ax + radius * uy, ay - radius * ux];
  const [endX, endY] = [bx + radius * uy, by - radius * ux];
  const box = {
    minX: Math.min(x, endX),
    minY: Math.min(y, endY),
    maxX: Math.max(x, endX),
    maxY: Math.max(y, endY),
  };
  return { x, y, ux, uy, length, box, at: (along) => [x + along * ux, y + along * uy] };
}

/**
 * The part of the roll that is nearer than `distance` to the segment from (ax, ay) to (bx, by), which may run on beyond
 * the roll's ends; null where none is. It is the hull of what is near the segment's two ends and near the line between them.
 */
export function takenBy(
  { x, y, ux, uy, length }: Pick<Roll, "x" | "y" | "ux" | "uy" | "length">,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  distance: number,
): Span | null {
  // The segment in the roll's own frame: along it, and across it.
  const a = (ax - x) * ux + (ay - y) * uy;
  const b = (bx - x) * ux + (by - y) * uy;
  if (Math.max(a, b) + distance <= 0 || Math.min(a, b) - distance >= length) return null;
  const aSide = (ay - y) * ux - (ax - x) * uy;
  const bSide = (by - y) * ux - (bx - x) * uy;
  if (Math.min(aSide, bSide) >= distance || Math.max(aSide, bSide) <= -distance) return null;
  let from = Infinity;
  let to = -Infinity;
  const include = (low: number, high: number) => {
    if (low >= high) return;
    from = Math.min(from, low);
    to = Math.max(to, high);
  };
  if (Math.abs(aSide) < distance) {
    const spread = Math.sqrt(distance * distance - aSide * aSide);
    include(a - spread, a + spread);
  }
  if (Math.abs(bSide) < distance) {
    const spread = Math.sqrt(distance * distance - bSide * bSide);
    include(b - spread, b + spread);
  }
  include(...besides(a, aSide, b, bSide, distance));
  return from < to ? [from, to] : null;
}

const NONE: Span = [0, 0];
const ALL: Span = [-Infinity, Infinity];

/** The part of the roll whose foot falls on the segment between its ends, and nearer than the distance. */
function besides(a: number, aSide: number, b: number, bSide: number, distance: number): Span {
  const [dx, dy] = [b - a, bSide - aSide];
  const square = dx * dx + dy * dy;
  if (square === 0) return NONE;
  const [footFrom, footTo] = footsOn(a, aSide, dx, dy, square);
  const [nearFrom, nearTo] = nearLine(a, aSide, dx, dy, distance * Math.sqrt(square));
  return [Math.max(footFrom, nearFrom), Math.min(footTo, nearTo)];
}

/** Where 0 <= (t - a) dx - aSide dy <= square: the foot of t lies on the segment. */
function footsOn(a: number, aSide: number, dx: number, dy: number, square: number): Span {
  if (dx === 0) return -aSide * dy >= 0 && -aSide * dy <= square ? ALL : NONE;
  const start = a + (aSide * dy) / dx;
  const end = start + square / dx;
  return start < end ? [start, end] : [end, start];
}

/** Where |(t - a) dy + aSide dx| < reach: t lies near the segment's line. */
function nearLine(a: number, aSide: number, dx: number, dy: number, reach: number): Span {
  if (dy === 0) return Math.abs(aSide * dx) < reach ? ALL : NONE;
  const one = a + (-aSide * dx - reach) / dy;
  const two = a + (-aSide * dx + reach) / dy;
  return one < two ? [one, two] : [two, one];
}
