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
/** The same among so many segments that they must be the chords of a round, which are up to 1 mm off it themselves. */
const ROUND_EXACT_TO = 0.5;
const ROUND_FROM = 24;

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
 * The place on some ground that is farthest from the nearest of some lines: to 0.1 mm (0.5 mm for rounds), and exact in a
 * strip between two parallel ones.
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
  return new Search(segments, first).over(piecesOf(ground));
}

/**
 * Whether a place on some ground is farther than so many mm from the nearest of some lines: as `farthestFrom` tells, and
 * sooner than how far the farthest is.
 */
export function isAnyFarther(
  ground: readonly Ring[],
  lines: readonly (readonly Point[])[],
  than: number,
): boolean {
  const first = ground[0]?.[0];
  if (!first) return false;
  const segments = lines.flatMap(segmentsOf);
  if (segments.length === 0) return true;
  return new Search(segments, first, than).over(piecesOf(ground)).distance > than;
}

const pieces = new WeakMap<readonly Ring[], readonly Ring[]>();

/** The soil of a bed is asked about again and again, with other stretches of its edge open. */
function piecesOf(ground: readonly Ring[]): readonly Ring[] {
  const known = pieces.get(ground) ?? convexPieces(ground);
  pieces.set(ground, known);
  return known;
}

const segmentsOf = (line: readonly Point[]): Segment[] =>
  line.slice(1).map(([bx, by], i) => {
    const [ax, ay] = line[i]!;
    const [dx, dy] = [bx - ax, by - ay];
    const square = dx * dx + dy * dy;
    return { ax, ay, dx, dy, perSquare: square === 0 ? 0 : 1 / square };
  });

function distanceTo(point: Point, { ax, ay, dx, dy, perSquare }: Segment): number {
  const ex = point[0] - ax;
  const ey = point[1] - ay;
  let t = (ex * dx + ey * dy) * perSquare;
  if (t < 0) t = 0;
  else if (t > 1) t = 1;
  const x = ex - t * dx;
  const y = ey - t * dy;
  return Math.sqrt(x * x + y * y);
}

class Search {
  readonly #queue = new FlatQueue<Piece>();
  readonly #segments: readonly Segment[];
  readonly #exactTo: number;
  #best: Farthest;
  readonly #enough: number;

  /** @param enough the search is over as soon as a place farther than this is found, and looks at nothing nearer */
  constructor(segments: readonly Segment[], start: Point, enough = Infinity) {
    this.#segments = segments;
    this.#exactTo = segments.length < ROUND_FROM ? EXACT_TO : ROUND_EXACT_TO;
    this.#enough = enough;
    this.#best = { at: start, distance: enough === Infinity ? 0 : enough };
  }

  over(pieces: readonly Ring[]): Farthest {
    for (const corners of pieces) this.#consider(corners, this.#segments);
    for (;;) {
      if (this.#best.distance > this.#enough) return this.#best;
      const most = -(this.#queue.peekValue() ?? Infinity);
      const piece = most > this.#best.distance + this.#exactTo ? this.#queue.pop() : undefined;
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

  /** Takes note of the piece's middle, and looks closer if a place inside may be farther than the best yet. */
  #consider(corners: Ring, segments: readonly Segment[]): void {
    if (corners.length < 3) return;
    const centre = middleOf(corners);
    const fromCentre: number[] = [];
    let closest = 0;
    for (let i = 0; i < segments.length; i++) {
      const away = distanceTo(centre, segments[i]!);
      fromCentre.push(away);
      if (away < fromCentre[closest]!) closest = i;
    }
    this.#note(centre, fromCentre[closest]!);

    const fromClosest: number[] = [];
    let most = 0;
    let square = 0;
    for (let i = 0; i < corners.length; i++) {
      const corner = corners[i]!;
      const away = distanceTo(corner, segments[closest]!);
      fromClosest.push(away);
      if (away > most) most = away;
      const dx = corner[0] - centre[0];
      const dy = corner[1] - centre[1];
      if (dx * dx + dy * dy > square) square = dx * dx + dy * dy;
    }
    if (most <= this.#best.distance + this.#exactTo) return;
    const within = most + Math.sqrt(square);
    const nearest: Segment[] = [];
    for (let i = 0; i < segments.length; i++) if (fromCentre[i]! <= within) nearest.push(segments[i]!);
    this.#bound({ corners, nearest }, fromClosest, most);
  }

  /** Takes note of the piece's corners, and queues it unless the means of two distances bound it well enough. */
  #bound(piece: Piece, fromClosest: readonly number[], start: number): void {
    const { corners, nearest } = piece;
    const nearestAt = [...fromClosest];
    let most = start;
    for (const segment of nearest) {
      let greatest = 0;
      let greatestMean = 0;
      for (let i = 0; i < corners.length; i++) {
        const away = distanceTo(corners[i]!, segment);
        const mean = (away + fromClosest[i]!) / 2;
        if (away > greatest) greatest = away;
        if (mean > greatestMean) greatestMean = mean;
        if (away < nearestAt[i]!) nearestAt[i] = away;
      }
      most = Math.min(most, greatest, greatestMean);
    }
    for (let i = 0; i < corners.length; i++) this.#note(corners[i]!, nearestAt[i]!);
    if (most > this.#best.distance + this.#exactTo) this.#queue.push(piece, -most);
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
