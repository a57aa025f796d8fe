import type { Point } from "./types.ts";

/** The point of the segment from `a` to `b` that is nearest to `p`; the ends may coincide. */
export function nearestOnSegment([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const dx = bx - ax;
  const dy = by - ay;
  const lengthSquared = dx * dx + dy * dy;
  if (lengthSquared === 0) return [ax, ay]; // a corner drawn twice
  const along = ((px - ax) * dx + (py - ay) * dy) / lengthSquared;
  const t = Math.min(1, Math.max(0, along));
  return [ax + t * dx, ay + t * dy];
}

/** Distance in mm from the point (px, py) to the segment from (ax, ay) to (bx, by). Bare numbers: it is the innermost loop. */
export function segmentDistance(
  px: number,
  py: number,
  ax: number,
  ay: number,
  bx: number,
  by: number,
): number {
  const dx = bx - ax;
  const dy = by - ay;
  const lengthSquared = dx * dx + dy * dy;
  let t = lengthSquared === 0 ? 0 : ((px - ax) * dx + (py - ay) * dy) / lengthSquared;
  if (t < 0) t = 0;
  else if (t > 1) t = 1;
  const ex = ax + t * dx - px;
  const ey = ay + t * dy - py;
  return Math.sqrt(ex * ex + ey * ey);
}

/**
 * Where two segments cross each other, each passing from one side of the other to its other side; null where they only
 * touch, lie along each other or stand apart.
 */
export function properCrossing(a: Point, b: Point, c: Point, d: Point): Point | null {
  const [rx, ry] = [b[0] - a[0], b[1] - a[1]];
  const [sx, sy] = [d[0] - c[0], d[1] - c[1]];
  const turn = rx * sy - ry * sx;
  if (turn === 0) return null;
  const [qx, qy] = [c[0] - a[0], c[1] - a[1]];
  const t = (qx * sy - qy * sx) / turn;
  const u = (qx * ry - qy * rx) / turn;
  if (t <= 0 || t >= 1 || u <= 0 || u >= 1) return null;
  return [a[0] + t * rx, a[1] + t * ry];
}
