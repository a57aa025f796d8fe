import type { Point } from "../geometry/types.ts";
import type { Boundary } from "./boundary.ts";

/**
 * The narrowest place between two pieces of outline. A piece is a sample with the stretches to its two neighbours, so
 * that a gap found between samples can be told exactly.
 */
export interface PieceGap {
  readonly width: number;
  readonly from: Point;
  readonly to: Point;
}

/** Where the last call of `narrow` found the gap: written in place, for it is asked thousands of times a frame. */
const found = { width: 0, fromX: 0, fromY: 0, toX: 0, toY: 0 };

/** Exact width between the pieces of outline about two samples, mm; 0 where they cross or touch. */
export function pieceWidth(boundary: Boundary, p: number, q: number): number {
  narrow(boundary, p, q);
  return found.width;
}

/** The same with its two ends. */
export function pieceGap(boundary: Boundary, p: number, q: number): PieceGap {
  narrow(boundary, p, q);
  const { width, fromX, fromY, toX, toY } = found;
  return { width, from: [fromX, fromY], to: [toX, toY] };
}

/**
 * Exact width between the pieces about two samples, if one passes the narrowest place between them on the way from a to
 * b; Infinity if one does not, unless it is narrower than `shut`.
 */
export function widthOnWay(
  boundary: Boundary,
  p: number,
  q: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  shut = 0,
): number {
  narrow(boundary, p, q);
  const { width, fromX, fromY, toX, toY } = found;
  if (width < shut) return width;
  const wayX = bx - ax;
  const wayY = by - ay;
  const along = wayX * ((fromX + toX) / 2 - ax) + wayY * ((fromY + toY) / 2 - ay);
  return along > 0 && along < wayX * wayX + wayY * wayY ? width : Infinity;
}

function narrow({ coords, previous, next, step }: Boundary, p: number, q: number): void {
  found.width = Number.POSITIVE_INFINITY;
  const [p0, p2, q0, q2] = [previous[p]!, next[p]!, previous[q]!, next[q]!];
  // Pieces farther apart than they are long cannot cross.
  const dx = coords[2 * q]! - coords[2 * p]!;
  const dy = coords[2 * q + 1]! - coords[2 * p + 1]!;
  if (dx * dx + dy * dy <= 4 * step * step) {
    crossed(coords, p0, p, q0, q);
    crossed(coords, p0, p, q, q2);
    crossed(coords, p, p2, q0, q);
    crossed(coords, p, p2, q, q2);
  }
  // Segments that do not cross are closest at an end of one of them (C. Ericson, Real-Time Collision Detection, 5.1.9).
  toPiece(coords, p0, q0, q, q2, false);
  toPiece(coords, p, q0, q, q2, false);
  toPiece(coords, p2, q0, q, q2, false);
  toPiece(coords, q0, p0, p, p2, true);
  toPiece(coords, q, p0, p, p2, true);
  toPiece(coords, q2, p0, p, p2, true);
  found.width = Math.sqrt(found.width);
}

/** Where segments ab and cd cross there is no gap at all. */
function crossed(coords: Float64Array, a: number, b: number, c: number, d: number): void {
  const [ax, ay, bx, by] = [coords[2 * a]!, coords[2 * a + 1]!, coords[2 * b]!, coords[2 * b + 1]!];
  const [cx, cy, dx, dy] = [coords[2 * c]!, coords[2 * c + 1]!, coords[2 * d]!, coords[2 * d + 1]!];
  const denominator = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
  if (denominator === 0) return;
  const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / denominator;
  const s = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / denominator;
  if (t < 0 || t > 1 || s < 0 || s > 1) return;
  const [x, y] = [ax + t * (bx - ax), ay + t * (by - ay)];
  keep(x, y, x, y);
}

/** Keeps the closest points of sample `from` and the piece a-b-c if they are closer than what was found; squared. */
function toPiece(
  coords: Float64Array,
  from: number,
  a: number,
  b: number,
  c: number,
  swapped: boolean,
): void {
  const [x, y] = [coords[2 * from]!, coords[2 * from + 1]!];
  const [bx, by] = [coords[2 * b]!, coords[2 * b + 1]!];
  toSegment(x, y, coords[2 * a]!, coords[2 * a + 1]!, bx, by, swapped);
  toSegment(x, y, bx, by, coords[2 * c]!, coords[2 * c + 1]!, swapped);
}

function toSegment(
  x: number,
  y: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
  swapped: boolean,
): void {
  const [ux, uy] = [bx - ax, by - ay];
  const square = ux * ux + uy * uy;
  const along = square === 0 ? 0 : ((x - ax) * ux + (y - ay) * uy) / square;
  const t = along < 0 ? 0 : Math.min(along, 1);
  const [footX, footY] = [ax + t * ux, ay + t * uy];
  if (swapped) keep(footX, footY, x, y);
  else keep(x, y, footX, footY);
}

function keep(fromX: number, fromY: number, toX: number, toY: number): void {
  const [dx, dy] = [toX - fromX, toY - fromY];
  const square = dx * dx + dy * dy;
  if (square >= found.width) return;
  found.width = square;
  found.fromX = fromX;
  found.fromY = fromY;
  found.toX = toX;
  found.toY = toY;
}

/** The point of the piece about sample p that is nearest to a place. */
export function nearestOnPiece({ coords, previous, next }: Boundary, p: number, [x, y]: Point): Point {
  found.width = Number.POSITIVE_INFINITY;
  for (const other of [previous[p]!, next[p]!]) {
    toSegment(x, y, coords[2 * p]!, coords[2 * p + 1]!, coords[2 * other]!, coords[2 * other + 1]!, false);
  }
  return [found.toX, found.toY];
}

/** How far that point is, mm. */
export function farFromPiece({ coords, previous, next }: Boundary, p: number, x: number, y: number): number {
  found.width = Number.POSITIVE_INFINITY;
  const [px, py, before, after] = [coords[2 * p]!, coords[2 * p + 1]!, previous[p]!, next[p]!];
  toSegment(x, y, px, py, coords[2 * before]!, coords[2 * before + 1]!, false);
  toSegment(x, y, px, py, coords[2 * after]!, coords[2 * after + 1]!, false);
  return Math.sqrt(found.width);
}
