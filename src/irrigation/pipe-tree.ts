import FlatQueue from "flatqueue";
import { isClear } from "../access/kept-off.ts";
import type { RouteGround } from "../access/route-ground.ts";
import { type End, touching } from "../access/route-search.ts";
import { BLOCKED, CLEAR, UNTRIED } from "../access/route-sight.ts";
import { boxOf, gapBetween } from "../geometry/gap.ts";
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
  /** Leaps from the pipe to each turn, in no order; what is known to be in the way of is thrown out. */
  readonly #toTurns: Leap[][];
  readonly #toTargets: Map<Target<Id>, Leap[]>;
  readonly #seen: Set<Leap> = new Set();
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
    this.#upper = new Float64Array(ground.turns.length).fill(Infinity);
    this.#lay({ from: start, to: start, gone: 0 });
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
    const points = [leap.from, ...(leap.via ? [leap.via] : []), ...passed, end];
    let gone = leap.gone;
    points.slice(1).forEach((to, i) => {
      const from = points[i]!;
      if (distance(from, to) > 0) this.#lay({ from, to, gone });
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
      const length = distance(from, via) + distance(via, at);
      if (length < this.#upper[turn]!) this.#toTurns[turn]!.push({ from, via, gone, length });
    });
  }

  /** From each piece of pipe one may go on where it comes nearest, and from its end if something is in the way of that. */
  #lay({ from, to, gone }: Piece): void {
    const leapTo = (at: Point, near: Point): Leap => ({
      from: near,
      gone: gone + distance(from, near),
      length: distance(near, at),
    });
    const isEnd = (near: Point) => near[0] === to[0] && near[1] === to[1];
    this.#ground.turns.forEach(({ at }, turn) => {
      const near = nearestOnSegment(at, from, to);
      const leaps = isEnd(near) ? [leapTo(at, near)] : [leapTo(at, near), leapTo(at, to)];
      this.#toTurns[turn]!.push(...leaps.filter(({ length }) => length < this.#upper[turn]!));
    });
    for (const target of this.#open) {
      const gap = gapBetween([from, to], target.ring);
      const leaps = this.#toTargets.get(target)!;
      leaps.push(leapTo(gap.to, gap.from));
      if (!isEnd(gap.from)) leaps.push(leapTo(gapBetween([to], target.ring).to, to));
    }
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
    this.#toTurns.forEach((leaps, turn) => {
      const useful = leaps.filter(({ length }) => length <= this.#upper[turn]!);
      this.#toTurns[turn] = useful;
      for (const leap of useful)
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
    for (const target of this.#open) {
      const leaps = this.#toTargets.get(target)!.sort((a, b) => a.length - b.length);
      for (const leap of leaps) {
        const length = Math.max(0, leap.length - this.#short(target));
        if (best && length >= best.length) break;
        const end = this.#endOf(leap, target, length);
        if (!isClear(this.#ground, leap.from, end)) continue;
        best = { target, leap, turns: [], end, length };
        break;
      }
    }
    return best;
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
    if (this.#seen.has(from)) return true;
    if (isClear(this.#ground, from.via ?? from.from, at)) {
      this.#seen.add(from);
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
