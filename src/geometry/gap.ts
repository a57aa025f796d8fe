import { boundsOf, contains } from "./ring.ts";
import { nearestOnSegment, properCrossing, segmentDistance } from "./segment.ts";
import type { Box, Point, Ring } from "./types.ts";

/** The narrowest place between two outlines. */
export interface Clearance {
  readonly width: number;
  /** Where it is narrowest, on the first and on the second outline: the ends of a dimension line. */
  readonly from: Point;
  readonly to: Point;
}

/** Below this a distance is noise of the arithmetic, mm: a corner turned onto a side misses it by some 1e-12. */
const NOISE = 1e-6;

/** What is remembered of a ring that is kept and never changed: by one look-up, for a moved ring is new at every move. */
interface Known {
  readonly box: Box;
  flat: Flat | null;
}
const knownOf = new WeakMap<Ring, Known>();

function knownAbout(ring: Ring): Known {
  let known = knownOf.get(ring);
  if (!known) {
    known = { box: boundsOf(ring), flat: null };
    knownOf.set(ring, known);
  }
  return known;
}

/** The bounds of a ring that is kept and never changed: remembered by the ring itself. */
export const boxOf = (ring: Ring): Box => knownAbout(ring).box;

/** Distance between two boxes, mm; 0 where they touch or overlap. */
export function boxDistance(a: Box, b: Box): number {
  const dx = Math.max(0, a.minX - b.maxX, b.minX - a.maxX);
  const dy = Math.max(0, a.minY - b.maxY, b.minY - a.maxY);
  return dx === 0 ? dy : dy === 0 ? dx : Math.hypot(dx, dy);
}

/**
 * Narrowest gap between two outlines, as solid ground: outlines that overlap have none.
 *
 * @param first, second rings in mm, one point or more, running either way round
 * @returns width in mm and its two ends; where the rings touch, cross or lie in each other the width is 0 and both ends
 *   are a point they share
 * @throws RangeError if a ring has no points
 * @source segments that do not cross are closest at an end of one of them: C. Ericson, Real-Time Collision Detection,
 *   2005, section 5.1.9
 */
export function gapBetween(first: Ring, second: Ring): Clearance {
  const shared = boxDistance(boxOf(first), boxOf(second)) === 0 ? pointInBoth(first, second) : null;
  if (shared) return { width: 0, from: shared, to: shared };
  return gapOfOutlines(first, second);
}

/** Narrowest gap between two outlines taken as lines only: a ring inside another stands off from its outline. */
export function gapOfOutlines(first: Ring, second: Ring): Clearance {
  const there = closestCorner(first, second, Infinity);
  const back = closestCorner(second, first, there.width);
  const [from, to] = back.width < there.width ? [back.to, back.from] : [there.from, there.to];
  const width = Math.min(there.width, back.width);
  return width < NOISE ? { width: 0, from, to: from } : { width, from, to };
}

/** Whether two rings cover some ground together; touching along a side or at a corner is not overlapping. */
export function overlaps(first: Ring, second: Ring): boolean {
  if (boxDistance(boxOf(first), boxOf(second)) > 0) return false;
  if (outlinesCross(first, second)) return true;
  return deepInside(first, second) || deepInside(second, first);
}

/** Whether the first ring lies in the second, touching its outline at most. */
export function liesWithin(inner: Ring, outer: Ring): boolean {
  if (outlinesCross(inner, outer)) return false;
  const within = (point: Point) => contains(outer, point) || onOutline(point, outer);
  // Middles too: a bed can have every corner on the yard's outline and still bridge a notch of it.
  return inner.every(within) && middles(inner).every(within) && contains(outer, innerPoint(inner));
}

const middles = (ring: Ring): Ring =>
  ring.map(([x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length]!;
    return [(x + nextX) / 2, (y + nextY) / 2];
  });

/** Distance from a point to a ring's outline, mm; not 0 inside it. */
export function distanceToOutline([px, py]: Point, ring: Ring): number {
  let best = Infinity;
  let [ax, ay] = ring.at(-1) ?? [Infinity, Infinity];
  for (const [bx, by] of ring) {
    best = Math.min(best, segmentDistance(px, py, ax, ay, bx, by));
    [ax, ay] = [bx, by];
  }
  return best;
}

const onOutline = (point: Point, ring: Ring): boolean => distanceToOutline(point, ring) < NOISE;

function pointInBoth(first: Ring, second: Ring): Point | null {
  const crossing = outlinesCross(first, second);
  if (crossing) return crossing;
  const [a, b] = [first[0], second[0]];
  if (a && contains(second, a)) return a;
  if (b && contains(first, b)) return b;
  return null;
}

/** A point at which two outlines cross each other, or null where they only touch or stand apart. */
export function outlinesCross(first: Ring, second: Ring): Point | null {
  const far = boxOf(second);
  let a = first.at(-1);
  for (const b of first) {
    if (a && segmentNearBox(a, b, far)) {
      let c = second.at(-1);
      for (const d of second) {
        const crossing = c ? properCrossing(a, b, c, d) : null;
        if (crossing) return crossing;
        c = d;
      }
    }
    a = b;
  }
  return null;
}

const segmentNearBox = (a: Point, b: Point, box: Box): boolean =>
  Math.max(a[0], b[0]) >= box.minX &&
  Math.min(a[0], b[0]) <= box.maxX &&
  Math.max(a[1], b[1]) >= box.minY &&
  Math.min(a[1], b[1]) <= box.maxY;

// Corners alone do not tell: twins lie on each other with every corner, a cross has none inside. Crossings are looked
// for before, so it is enough to find one corner or one middle of a side that is truly inside.
function deepInside(ring: Ring, other: Ring): boolean {
  const deep = (point: Point) => contains(other, point) && !onOutline(point, other);
  return ring.some(deep) || middles(ring).some(deep) || sameGround(ring, other);
}

/** Rings whose sides lie along each other all the way round: twins, the only overlap without a point deep inside. */
const sameGround = (ring: Ring, other: Ring): boolean =>
  ring.every((corner) => onOutline(corner, other)) &&
  other.every((corner) => onOutline(corner, ring)) &&
  contains(other, innerPoint(ring));

/** A point just inside the ring's first side that has length. */
function innerPoint(ring: Ring): Point {
  const twiceArea = ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length]!;
    return sum + x * ny - y * nx;
  }, 0);
  for (const [i, [ax, ay]] of ring.entries()) {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) continue;
    const step = (Math.sign(twiceArea) * 0.01) / length;
    return [(ax + bx) / 2 - step * (by - ay), (ay + by) / 2 + step * (bx - ax)];
  }
  return ring[0] ?? [0, 0];
}

// Every corner against every side, but for corners that the other's box alone puts farther off than the best so far: the
// corner nearest to the box goes first, and leaves few others. The innermost loop of a drag: bare numbers, squared until
// the end.
function closestCorner(corners: Ring, sides: Ring, best: number): Clearance {
  if (corners.length === 0 || sides.length === 0) {
    throw new RangeError("a gap needs at least one point on each side");
  }
  const known = knownAbout(sides);
  const first = nearestToBox(corners, known.box);
  let least = best * best;
  let [bestCorner, bestSide] = [-1, -1];
  for (let k = 0; k < corners.length; k++) {
    const i = k === 0 ? first : k <= first ? k - 1 : k;
    const corner = corners[i]!;
    const px = corner[0];
    const py = corner[1];
    if (offBox(px, py, known.box) >= least) continue;
    // A ring that has just moved is not worth the laying out for the one corner that most need.
    if (!known.flat && k === 0) {
      const side = nearestSide(px, py, sides);
      const square = toSide(px, py, sides, side);
      if (square < least) [least, bestCorner, bestSide] = [square, i, side];
      continue;
    }
    known.flat ??= flattened(sides);
    const { coordinates, runs } = known.flat;
    for (let j = 0; j < sides.length; j++) {
      const ex = px - coordinates[2 * j]!;
      const ey = py - coordinates[2 * j + 1]!;
      const dx = runs[3 * j]!;
      const dy = runs[3 * j + 1]!;
      let t = (ex * dx + ey * dy) * runs[3 * j + 2]!;
      if (t < 0) t = 0;
      else if (t > 1) t = 1;
      const fx = ex - t * dx;
      const fy = ey - t * dy;
      const square = fx * fx + fy * fy;
      if (square < least) {
        least = square;
        bestCorner = i;
        bestSide = j;
      }
    }
  }
  const from = corners[bestCorner];
  if (!from) return { width: Infinity, from: corners[0]!, to: sides[0]! };
  const to = nearestOnSegment(from, sides[bestSide]!, sides[(bestSide + 1) % sides.length]!);
  return { width: Math.hypot(to[0] - from[0], to[1] - from[1]), from, to };
}

/** Distance from a point to a box, squared. */
function offBox(x: number, y: number, { minX, minY, maxX, maxY }: Box): number {
  const offX = x < minX ? minX - x : x > maxX ? x - maxX : 0;
  const offY = y < minY ? minY - y : y > maxY ? y - maxY : 0;
  return offX * offX + offY * offY;
}

function nearestToBox(corners: Ring, box: Box): number {
  let [nearest, least] = [0, Infinity];
  for (let i = 0; i < corners.length; i++) {
    const corner = corners[i]!;
    const off = offBox(corner[0], corner[1], box);
    if (off < least) [nearest, least] = [i, off];
  }
  return nearest;
}

function nearestSide(px: number, py: number, ring: Ring): number {
  let [nearest, least] = [0, Infinity];
  for (let i = 0; i < ring.length; i++) {
    const square = toSide(px, py, ring, i);
    if (square < least) [nearest, least] = [i, square];
  }
  return nearest;
}

/** Distance from a point to a side of a ring, squared. */
function toSide(px: number, py: number, ring: Ring, side: number): number {
  const corner = ring[side]!;
  const next = ring[side + 1 === ring.length ? 0 : side + 1]!;
  const ex = px - corner[0];
  const ey = py - corner[1];
  const dx = next[0] - corner[0];
  const dy = next[1] - corner[1];
  const along = ex * dx + ey * dy;
  const square = dx * dx + dy * dy;
  const t = along <= 0 ? 0 : along >= square ? 1 : along / square;
  const fx = ex - t * dx;
  const fy = ey - t * dy;
  return fx * fx + fy * fy;
}

/** A ring's corners, and for each side its run in x and y and 1 over its length squared (0 for a corner drawn twice). */
interface Flat {
  readonly coordinates: Float64Array;
  readonly runs: Float64Array;
}

function flattened(ring: Ring): Flat {
  const coordinates = new Float64Array(2 * ring.length);
  const runs = new Float64Array(3 * ring.length);
  for (let i = 0; i < ring.length; i++) {
    const corner = ring[i]!;
    const next = ring[i + 1 === ring.length ? 0 : i + 1]!;
    const dx = next[0] - corner[0];
    const dy = next[1] - corner[1];
    const square = dx * dx + dy * dy;
    coordinates[2 * i] = corner[0];
    coordinates[2 * i + 1] = corner[1];
    runs[3 * i] = dx;
    runs[3 * i + 1] = dy;
    runs[3 * i + 2] = square === 0 ? 0 : 1 / square;
  }
  return { coordinates, runs };
}
