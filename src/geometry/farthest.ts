import FlatQueue from "flatqueue";
import { convexPieces, halves } from "./convex-pieces.ts";
import { boundsOf } from "./ring.ts";
import { segmentDistance } from "./segment.ts";
import type { Point, Ring } from "./types.ts";

/** The place that is farthest from some lines, and how far. */
export interface Farthest {
  readonly at: Point;
  readonly distance: number;
}

/** How far the answer may fall short of the true one, mm. */
const EXACT_TO = 0.01;

type Segment = readonly [ax: number, ay: number, bx: number, by: number];

/** A convex piece of ground, with the segments that may be the nearest somewhere on it. */
interface Piece {
  readonly corners: Ring;
  readonly nearest: readonly Segment[];
}

/**
 * The place on some ground that is farthest from the nearest of some lines: to 0.01 mm.
 *
 * Branch and bound over convex pieces. The distance to one segment is a convex function, so on a convex piece it is
 * nowhere greater than at the piece's corners; the least of those greatest distances bounds what the piece can hold.
 * Where no more than two segments can be the nearest, the farthest place lies on the piece's edge: from a place inside,
 * going square to the line between the two (or away from both) never brings one nearer to either.
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
  line.slice(1).map(([bx, by], i) => [line[i]![0], line[i]![1], bx, by]);

const distanceTo = ([px, py]: Point, [ax, ay, bx, by]: Segment): number =>
  segmentDistance(px, py, ax, ay, bx, by);

function nearestDistance(point: Point, segments: readonly Segment[]): number {
  let nearest = Infinity;
  for (const segment of segments) nearest = Math.min(nearest, distanceTo(point, segment));
  return nearest;
}

class Search {
  readonly #queue = new FlatQueue<Piece>();
  #at: Point;
  #distance: number;

  constructor(
    private readonly segments: readonly Segment[],
    start: Point,
  ) {
    this.#at = start;
    this.#distance = nearestDistance(start, segments);
  }

  over(pieces: readonly Ring[]): Farthest {
    for (const corners of pieces) this.#consider(corners, this.segments);
    for (;;) {
      const most = -(this.#queue.peekValue() ?? Infinity);
      const piece = most > this.#distance + EXACT_TO ? this.#queue.pop() : undefined;
      if (!piece) return { at: this.#at, distance: this.#distance };
      if (piece.nearest.length <= 2) this.#walkEdge(piece);
      else this.#split(piece);
    }
  }

  /** Takes note of the piece's corners, and queues it if more may lie inside. */
  #consider(corners: Ring, segments: readonly Segment[]): void {
    if (corners.length < 3) return;
    const most = this.#mostAtCorners(corners, segments);
    if (most <= this.#distance + EXACT_TO) return;
    const { minX, minY, maxX, maxY } = boundsOf(corners);
    const centre: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
    const radius = Math.hypot(maxX - minX, maxY - minY) / 2;
    const nearest = segments.filter((segment) => distanceTo(centre, segment) - radius <= most);
    if (nearest.length > 1) this.#queue.push({ corners, nearest }, -most);
  }

  /** The least, over the segments, of the greatest distance to a corner. Corners are places too, and may be the best yet. */
  #mostAtCorners(corners: Ring, segments: readonly Segment[]): number {
    const nearest = new Float64Array(corners.length).fill(Infinity);
    let least = Infinity;
    for (const segment of segments) {
      let greatest = 0;
      for (let i = 0; i < corners.length; i++) {
        const away = distanceTo(corners[i]!, segment);
        if (away > greatest) greatest = away;
        if (away < nearest[i]!) nearest[i] = away;
      }
      if (greatest < least) least = greatest;
    }
    for (let i = 0; i < corners.length; i++) this.#note(corners[i]!, nearest[i]!);
    return least;
  }

  #note(at: Point, distance: number): void {
    if (distance <= this.#distance) return;
    this.#at = at;
    this.#distance = distance;
  }

  #split({ corners, nearest }: Piece): void {
    const { minX, minY, maxX, maxY } = boundsOf(corners);
    const axis = maxX - minX >= maxY - minY ? 0 : 1;
    const middle = axis === 0 ? (minX + maxX) / 2 : (minY + maxY) / 2;
    for (const half of halves(corners, axis, middle)) this.#consider(half, nearest);
  }

  #walkEdge({ corners, nearest }: Piece): void {
    let before = corners.at(-1)!;
    for (const corner of corners) {
      this.#walk(before, corner, nearest);
      before = corner;
    }
  }

  /** The same bound along a line: no farther than at its ends from any one segment. */
  #walk(from: Point, to: Point, segments: readonly Segment[]): void {
    let most = Infinity;
    for (const segment of segments) {
      most = Math.min(most, Math.max(distanceTo(from, segment), distanceTo(to, segment)));
    }
    if (most <= this.#distance + EXACT_TO) return;
    const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    this.#note(middle, nearestDistance(middle, segments));
    this.#walk(from, middle, segments);
    this.#walk(middle, to, segments);
  }
}
