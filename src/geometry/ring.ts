import type { Box, Point, Ring } from "./types.ts";
import { cross, subtract } from "./vector.ts";

/** Shoelace area in mm²; positive where the ring runs clockwise as seen. */
export function signedArea(ring: Ring): number {
  let twice = 0;
  let previous = ring.at(-1);
  for (const point of ring) {
    if (previous) twice += cross(previous, point);
    previous = point;
  }
  return twice / 2;
}

/** Area in mm², whichever way the ring runs. */
export const ringArea = (ring: Ring): number => Math.abs(signedArea(ring));

/** The same ring, running clockwise as seen. */
export const clockwise = (ring: Ring): Ring => (signedArea(ring) < 0 ? [...ring].reverse() : ring);

/** Length of the closed outline in mm. */
export function perimeter(ring: Ring): number {
  let length = 0;
  let previous = ring.at(-1);
  for (const point of ring) {
    if (previous) length += Math.hypot(point[0] - previous[0], point[1] - previous[1]);
    previous = point;
  }
  return length;
}

/** @throws RangeError for no points: nothing has no bounds */
export function boundsOf(points: Ring): Box {
  if (points.length === 0) throw new RangeError("bounds need at least one point");
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  // By index: taking points apart as pairs is half the time of a gap.
  for (let i = 0; i < points.length; i++) {
    const point = points[i]!;
    const x = point[0];
    const y = point[1];
    if (x < minX) minX = x;
    if (y < minY) minY = y;
    if (x > maxX) maxX = x;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Even-odd rule; a point exactly on the outline may fall either way. */
export function contains(ring: Ring, [px, py]: Point): boolean {
  let inside = false;
  let [bx, by] = ring.at(-1) ?? [0, 0];
  for (const [ax, ay] of ring) {
    if (ay > py !== by > py && px < ((bx - ax) * (py - ay)) / (by - ay) + ax) inside = !inside;
    [bx, by] = [ax, ay];
  }
  return inside;
}

/** Centre of the ring's area; for a ring without area the mean of its corners. */
export function centroid(ring: Ring): Point {
  const origin = ring[0];
  if (!origin) throw new RangeError("a centroid needs at least one point");
  let [twice, x, y] = [0, 0, 0];
  let previous = subtract(ring.at(-1) ?? origin, origin);
  for (const corner of ring) {
    const point = subtract(corner, origin);
    const part = cross(previous, point);
    twice += part;
    x += (previous[0] + point[0]) * part;
    y += (previous[1] + point[1]) * part;
    previous = point;
  }
  if (twice === 0) {
    const sum = ring.reduce<Point>(([sx, sy], [px, py]) => [sx + px, sy + py], [0, 0]);
    return [sum[0] / ring.length, sum[1] / ring.length];
  }
  return [origin[0] + x / (3 * twice), origin[1] + y / (3 * twice)];
}
