import FlatQueue from "flatqueue";
import { convexPieces, halves } from "./convex-pieces.ts";
import { boundsOf } from "./ring.ts";
import type { Point, Ring } from "./types.ts";

/** The place that is farthest from some lines, and how far. */
export interface Farthest {
  readonly at: Point;
  readonly distance: number;
}

/** How far the answer may fall short of the true one, mm. */
const EXACT_TO = 0.1;

/** A segment from (ax, ay) by (dx, dy); `perSquare` is 1 over its length squared, 0 for a mere point. */
interface Segment {
  readonly ax: number;
  readonly ay: number;
  readonly dx: number;
  readonly dy: number;
  readonly perSquare: number;
}

/** A convex piece of ground, with the segments that may be the nearest somewhere on it. */
interface Piece {
  readonly corners: Ring;
  readonly nearest: readonly Segment[];
}

/**
 * The place on some ground that is farthest from the nearest of some lines: to 0.1 mm, and exact in a strip between two
 * parallel ones.
 *
 * Branch and bound over convex pieces. The distance to a segment is a convex function, and so is the mean of the
 * distances to two: on a convex piece neither is anywhere greater than at a corner. No place is farther from the nearest
 * segment than from any one, nor than the mean of any two; the least of those bounds what a piece can hold. The mean
 * makes short work of the strip between two sides of a bed, where every place of the middle line is as far as any other.
 *
 * @param ground rings in mm that do not cross each other; rings within rings are holes
 * @param lines of two points or more
 * @returns null for no ground; distance Infinity, at the ground's first corner, for no lines
 */
export function farthestFrom(ground: readonly Ring[], lines: readonly (readonly Point[])[]): Farthest | null {
  const first = ground[0]?.[0];
  if (!first) return null;
  const segments = lines.flatMap(segmentsOf);
  if (segments.length === 0) return { at: first, distance: Infinity };
  return new Search(segments, first).over(convexPieces(ground));
}

const segmentsOf = (line: readonly Point[]): Segment[] =>
  line.slice(1).map(([bx, by], i) => {
    const [ax, ay] = line[i]!;
    const [dx, dy] = [bx - ax, by - ay];
    const square = dx * dx + dy * dy;
    return { ax, ay, dx, dy, perSquare: square === 0 ? 0 : 1 / square };
  });

function distanceTo([px, py]: Point, { ax, ay, dx, dy, perSquare }: Segment): number {
  const [ex, ey] = [px - ax, py - ay];
  const along = (ex * dx + ey * dy) * perSquare;
  const t = Math.max(0, Math.min(1, along));
  return Math.sqrt((ex - t * dx) ** 2 + (ey - t * dy) ** 2);
}

class Search {
  readonly #queue = new FlatQueue<Piece>();
  readonly #segments: readonly Segment[];
  #best: Farthest;

  constructor(segments: readonly Segment[], start: Point) {
    this.#segments = segments;
    this.#best = { at: start, distance: 0 };
  }

  over(pieces: readonly Ring[]): Farthest {
    for (const corners of pieces) this.#consider(corners, this.#segments);
    for (;;) {
      const most = -(this.#queue.peekValue() ?? Infinity);
      const piece = most > this.#best.distance + EXACT_TO ? this.#queue.pop() : undefined;
      if (!piece) return this.#best;
      this.#split(piece);
    }
  }

  #split({ corners, nearest }: Piece): void {
    const { minX, minY, maxX, maxY } = boundsOf(corners);
    const axis = maxX - minX >= maxY - minY ? 0 : 1;
    const middle = axis === 0 ? (minX + maxX) / 2 : (minY + maxY) / 2;
    for (const half of halves(corners, axis, middle)) this.#consider(half, nearest);
  }

  /** Takes note of the piece's middle and corners, and queues it if a place inside may be farther. */
  #consider(corners: Ring, segments: readonly Segment[]): void {
    if (corners.length < 3) return;
    const centre = middleOf(corners);
    const fromCentre = segments.map((segment) => distanceTo(centre, segment));
    const closest = fromCentre.indexOf(Math.min(...fromCentre));
    this.#note(centre, fromCentre[closest]!);

    const fromClosest = corners.map((corner) => distanceTo(corner, segments[closest]!));
    let most = Math.max(...fromClosest);
    if (most <= this.#best.distance + EXACT_TO) return;
    const radius = Math.max(...corners.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1])));
    const nearest = segments.filter((_, i) => fromCentre[i]! - radius <= most);

    const nearestAt = [...fromClosest];
    for (const segment of nearest) {
      let [greatest, greatestMean] = [0, 0];
      for (let i = 0; i < corners.length; i++) {
        const away = distanceTo(corners[i]!, segment);
        greatest = Math.max(greatest, away);
        greatestMean = Math.max(greatestMean, (away + fromClosest[i]!) / 2);
        nearestAt[i] = Math.min(nearestAt[i]!, away);
      }
      most = Math.min(most, greatest, greatestMean);
    }
    corners.forEach((corner, i) => {
      this.#note(corner, nearestAt[i]!);
    });
    if (most > this.#best.distance + EXACT_TO) this.#queue.push({ corners, nearest }, -most);
  }

  #note(at: Point, distance: number): void {
    if (distance > this.#best.distance) this.#best = { at, distance };
  }
}

function middleOf(corners: Ring): Point {
  let [x, y] = [0, 0];
  for (const [cornerX, cornerY] of corners) {
    x += cornerX;
    y += cornerY;
  }
  return [x / corners.length, y / corners.length];
}
