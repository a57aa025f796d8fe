import FlatQueue from "flatqueue";
import { isClear } from "../access/kept-off.ts";
import type { RouteGround } from "../access/route-ground.ts";
import { type End, touching } from "../access/route-search.ts";
import { BLOCKED, CLEAR, UNTRIED } from "../access/route-sight.ts";
import { boxDistance, boxOf, gapBetween } from "../geometry/gap.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";

/** What a pipe is led to: the outline of a bed, or a single place. */
export interface Target<Id> {
  readonly id: Id;
  readonly ring: Ring;
}

/** Where a pipe meets what it leads to. */
export interface Head {
  readonly at: Point;
  /** Pipe from the start to here, mm. */
  readonly along: number;
}

export interface PipeTree<Id> {
  /** Each from where it leaves the tree so far. */
  readonly runs: readonly (readonly Point[])[];
  readonly length: number;
  readonly heads: ReadonlyMap<Id, Head>;
  /** What no pipe gets to. */
  readonly unreached: readonly Id[];
}

/** A straight piece of pipe that is laid already. */
interface Piece {
  readonly from: Point;
  readonly to: Point;
  /** The turn it ends at; null where it ends at something else. */
  readonly turn: number | null;
  /** Pipe from the start to `from`, mm. */
  readonly gone: number;
}

/** A straight way from the pipe that lies to a turn or a target: not looked along until it would be the shortest. */
interface Leap {
  readonly from: Point;
  /** Off the wall first, where a round outline would be in the way. */
  readonly via?: Point;
  /** Pipe from the start to `from`. */
  readonly gone: number;
  readonly length: number;
}

/** A piece of pipe from which nobody has looked yet where it comes nearest to a target: no nearer than `length`. */
interface Unlooked {
  readonly piece: Piece;
  readonly length: number;
}

interface Found<Id> {
  readonly target: Target<Id>;
  readonly leap: Leap;
  readonly turns: readonly number[];
  readonly end: Point;
  readonly length: number;
}

/**
 * A tree of pipe from a start to all targets, along free ground: again and again the target nearest to the pipe that lies
 * is joined to it by the shortest way there is, from any place along the pipe.
 *
 * It is never longer than the shortest tree of walks between the start and the same heads, which forks at heads alone, and
 * for one target it is the shortest walk. A tree that forks elsewhere might be shorter still; to find the shortest of all
 * is a search that no garden waits for.
 *
 * @param start on free ground
 * @source H. Takahashi and A. Matsuyama, "An approximate solution for the Steiner problem in graphs", Mathematica Japonica
 *   24, 1980; from memory
 */
export function pipeTree<Id>(
  ground: RouteGround,
  start: Point,
  targets: readonly Target<Id>[],
): PipeTree<Id> {
  const tree = new GrowingTree(ground, start, targets);
  while (tree.grow());
  return tree.grown();
}

class GrowingTree<Id> {
  readonly #ground: RouteGround;
  readonly #open: Set<Target<Id>>;
  /** Leaps from the pipe to each turn, in no order; those that something is in the way of are thrown out. */
  readonly #toTurns: Leap[][];
  readonly #toTargets: Map<Target<Id>, (Leap | Unlooked)[]>;
  readonly #clear: Set<Leap> = new Set();
  /** The shortest of the leaps to each turn. */
  readonly #least: Float64Array;
  /** No more than this is needed from the pipe to each turn, by an earlier search. */
  readonly #upper: Float64Array;
  readonly #runs: (readonly Point[])[] = [];
  readonly #heads = new Map<Id, Head>();
  #length = 0;

  constructor(ground: RouteGround, start: Point, targets: readonly Target<Id>[]) {
    this.#ground = ground;
    this.#open = new Set(targets);
    this.#toTurns = ground.turns.map(() => []);
    this.#toTargets = new Map(targets.map((target) => [target, []]));
    this.#least = new Float64Array(ground.turns.length).fill(Infinity);
    this.#upper = new Float64Array(ground.turns.length).fill(Infinity);
    this.#lay({ from: start, to: start, gone: 0, turn: null });
  }

  grown(): PipeTree<Id> {
    return {
      runs: this.#runs,
      length: this.#length,
      heads: this.#heads,
      unreached: [...this.#open].map(({ id }) => id),
    };
  }

  /** Joins the nearest target; false where no more can be. */
  grow(): boolean {
    const found = this.#nearest();
    if (!found) return false;
    const { target, leap, turns, end, length } = found;
    const passed = turns.map((turn) => this.#ground.turns[turn]!.at);
    const before = [leap.from, ...(leap.via ? [leap.via] : [])];
    const points = [...before, ...passed, end];
    let gone = leap.gone;
    points.slice(1).forEach((to, i) => {
      const from = points[i]!;
      if (distance(from, to) > 0) this.#lay({ from, to, gone, turn: turns[i + 1 - before.length] ?? null });
      gone += distance(from, to);
    });
    if (length > 0) this.#runs.push(points.filter((at, i) => i === 0 || distance(at, points[i - 1]!) > 0));
    this.#heads.set(target.id, { at: end, along: gone });
    this.#length += length;
    this.#open.delete(target);
    this.#liftOff(end, gone, target.ring);
    return true;
  }

  /**
   * Turns about a round outline lie off it, and from where pipe touches it between two of them neither is seen: one goes
   * off the wall first, to the straight side between them.
   */
  #liftOff(from: Point, gone: number, ring: Ring): void {
    const solid = this.#ground.numberOf.get(ring);
    const own =
      solid === undefined ? [] : this.#ground.turnsOf[solid]!.map((turn) => this.#ground.turns[turn]!.at);
    const sides = own.map((at, i) => nearestOnSegment(from, at, own[(i + 1) % own.length]!));
    const via = sides.toSorted((a, b) => distance(a, from) - distance(b, from))[0];
    if (!via || distance(via, from) === 0 || !isClear(this.#ground, from, via)) return;
    this.#ground.turns.forEach(({ at }, turn) => {
      this.#leapToTurn(turn, { from, via, gone, length: distance(from, via) + distance(via, at) });
    });
  }

  /** From a piece of pipe one may go on where it comes nearest to what lies beside it, and from its end. */
  #lay(piece: Piece): void {
    const { from, to, turn: end } = piece;
    this.#ground.turns.forEach(({ at }, turn) => {
      const near = nearestOnSegment(at, from, to);
      const isBeside = !isSame(near, from) && !isSame(near, to);
      if (isBeside || turn === end || end === null) this.#leapToTurn(turn, leapAlong(piece, near, at));
      if (isBeside && end === null) this.#leapToTurn(turn, leapAlong(piece, to, at));
    });
    const box = boxOf([from, to]);
    for (const target of this.#open)
      this.#toTargets.get(target)!.push({ piece, length: boxDistance(box, boxOf(target.ring)) });
  }

  #leapToTurn(turn: number, leap: Leap): void {
    if (leap.length > this.#upper[turn]!) return;
    this.#toTurns[turn]!.push(leap);
    this.#least[turn] = Math.min(this.#least[turn]!, leap.length);
  }

  /** The leaps to a turn that may still be the shortest way to it. */
  #usefulTo(turn: number): readonly Leap[] {
    const useful = this.#toTurns[turn]!.filter(({ length }) => length <= this.#upper[turn]!);
    this.#toTurns[turn] = useful;
    this.#least[turn] = useful.reduce((least, { length }) => Math.min(least, length), Infinity);
    return useful;
  }

  /** Dijkstra's search from all of the pipe at once, until no target can be nearer than the best. */
  #nearest(): Found<Id> | null {
    const cameFrom = new Map<number, number | Leap>();
    const far = new Set<number>();
    const queue = new FlatQueue<{
      readonly turn: number;
      readonly from: number | Leap;
      readonly leg: number;
    }>();
    let best = this.#straight();
    const most = best?.length ?? Infinity;
    this.#least.forEach((least, turn) => {
      if (least >= most) return;
      for (const leap of this.#usefulTo(turn))
        if (leap.length < most) queue.push({ turn, from: leap, leg: -1 }, leap.length);
    });
    while (queue.length > 0) {
      const gone = queue.peekValue()!;
      if (best && gone >= best.length) break;
      const { turn, from, leg } = queue.pop()!;
      if (far.has(turn) || !this.#isClearTo(turn, from, leg)) continue;
      far.add(turn);
      cameFrom.set(turn, from);
      this.#upper[turn] = Math.min(this.#upper[turn]!, gone);
      best = this.#touched(turn, gone, cameFrom, best);
      const { to, length, clear } = this.#ground.legsFrom(turn);
      to.forEach((next, i) => {
        if (!far.has(next) && clear[i] !== BLOCKED)
          queue.push({ turn: next, from: turn, leg: i }, gone + length[i]!);
      });
    }
    return best;
  }

  /** The nearest target that is met straight from the pipe. */
  #straight(): Found<Id> | null {
    let best: Found<Id> | null = null;
    for (const target of this.#open) best = this.#straightTo(target, best);
    return best;
  }

  #straightTo(target: Target<Id>, best: Found<Id> | null): Found<Id> | null {
    const leaps = this.#toTargets.get(target)!;
    for (;;) {
      const shortest = shortestOf(leaps);
      const leap = leaps[shortest];
      const length = leap ? Math.max(0, leap.length - this.#short(target)) : Infinity;
      if (!leap || (best && length >= best.length)) return best;
      if ("piece" in leap) {
        leaps.splice(shortest, 1, ...leapsTo(target.ring, leap.piece));
        continue;
      }
      const end = this.#endOf(leap, target, length);
      if (this.#clear.has(leap) || isClear(this.#ground, leap.from, end)) {
        this.#clear.add(leap);
        return { target, leap, turns: [], end, length };
      }
      leaps.splice(shortest, 1);
    }
  }

  /** A pipe ends where it touches an outline, and at a place itself. */
  #short = ({ ring }: Target<Id>): number => (ring.length > 1 ? this.#ground.wanted : 0);

  #endOf({ from }: Leap, { ring }: Target<Id>, length: number): Point {
    const foot = ring.length > 1 ? gapBetween([from], ring).to : ring[0]!;
    const whole = distance(from, foot);
    if (whole === 0) return from;
    return [
      from[0] + ((foot[0] - from[0]) * length) / whole,
      from[1] + ((foot[1] - from[1]) * length) / whole,
    ];
  }

  #isClearTo(turn: number, from: number | Leap, leg: number): boolean {
    const { turns } = this.#ground;
    const { at } = turns[turn]!;
    if (typeof from === "number") {
      const { clear, inSight } = this.#ground.legsFrom(from);
      if (clear[leg] === UNTRIED)
        clear[leg] = isClear(this.#ground, turns[from]!.at, at, inSight) ? CLEAR : BLOCKED;
      return clear[leg] === CLEAR;
    }
    if (this.#clear.has(from)) return true;
    if (isClear(this.#ground, from.via ?? from.from, at)) {
      this.#clear.add(from);
      return true;
    }
    this.#toTurns[turn] = this.#toTurns[turn]!.filter((leap) => leap !== from);
    return false;
  }

  #touched(
    turn: number,
    gone: number,
    cameFrom: ReadonlyMap<number, number | Leap>,
    before: Found<Id> | null,
  ): Found<Id> | null {
    let best = before;
    const at = this.#ground.turns[turn]!;
    for (const target of this.#open) {
      const less = (best?.length ?? Infinity) - gone;
      if (awayFrom(target.ring, at.at) - this.#short(target) >= less) continue;
      const end = this.#endFrom(turn, target, less);
      if (end) best = { target, ...walkedBack(turn, cameFrom), end: end.at, length: gone + end.leg };
    }
    return best;
  }

  #endFrom(turn: number, { ring }: Target<Id>, less: number): End | null {
    const at = this.#ground.turns[turn]!;
    const { inSight } = this.#ground.legsFrom(turn);
    if (ring.length > 1) return touching(this.#ground, at.at, at, ring, less, inSight);
    const leg = distance(at.at, ring[0]!);
    return leg < less && isClear(this.#ground, at.at, ring[0]!, inSight) ? { at: ring[0]!, leg } : null;
  }
}

const isSame = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

const leapAlong = ({ from, gone }: Piece, near: Point, at: Point): Leap => ({
  from: near,
  gone: gone + distance(from, near),
  length: distance(near, at),
});

/** From where a piece comes nearest to an outline, and from its end if something is in the way of that. */
function leapsTo(ring: Ring, piece: Piece): Leap[] {
  const { from, width } = gapBetween([piece.from, piece.to], ring);
  const nearest: Leap = { from, gone: piece.gone + distance(piece.from, from), length: width };
  return isSame(from, piece.to)
    ? [nearest]
    : [nearest, leapAlong(piece, piece.to, gapBetween([piece.to], ring).to)];
}

function shortestOf(leaps: readonly { readonly length: number }[]): number {
  let shortest = 0;
  for (let i = 1; i < leaps.length; i++) if (leaps[i]!.length < leaps[shortest]!.length) shortest = i;
  return shortest;
}

function walkedBack(
  last: number,
  cameFrom: ReadonlyMap<number, number | Leap>,
): { readonly leap: Leap; readonly turns: readonly number[] } {
  const turns: number[] = [last];
  for (;;) {
    const from = cameFrom.get(turns[0]!)!;
    if (typeof from !== "number") return { leap: from, turns };
    turns.unshift(from);
  }
}

function awayFrom(ring: Ring, [x, y]: Point): number {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return Math.hypot(Math.max(0, minX - x, x - maxX), Math.max(0, minY - y, y - maxY));
}
