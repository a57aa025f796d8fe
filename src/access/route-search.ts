import FlatQueue from "flatqueue";
import { boxOf } from "../geometry/gap.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { isClear } from "./kept-off.ts";
import { takenBy } from "./roll.ts";
import type { RouteGround } from "./route-ground.ts";
import { BLOCKED, CLEAR, type Legs, legsFrom, UNTRIED } from "./route-sight.ts";
import type { Turn } from "./route-turns.ts";

/** Shortest walks from one place; the search goes on only as far as it is asked to. */
export interface RouteSearch {
  /**
   * Shortest walk until one touches an outline; null where there is none.
   * @throws RangeError for the outline of something that does not stand on this ground
   */
  readonly toOutline: (ring: Ring) => Walk | null;
  /** Shortest walk to a turn of this ground; null where there is none. */
  readonly toTurn: (turn: Turn) => Walk | null;
}

/** From the start, by the turns in order, to the end. */
export interface Walk {
  readonly start: Point;
  readonly turns: readonly Turn[];
  readonly end: Point;
  /** Along the sides drawn outside the outlines, mm; `tightened` gives the exact length. */
  readonly length: number;
}

/** Index of the start among the places one may come from. */
const START = -1;

/**
 * Dijkstra's search over the turns of the ground. Whether a turn is seen from another is looked at only when that would
 * be the shortest way to it, which spares most of the looking.
 * @param start on free ground
 * @source T. Lozano-Perez and M. Wesley, "An algorithm for planning collision-free paths among polyhedral obstacles",
 *   Communications of the ACM 22, 1979: shortest ways turn at corners only, and only where they touch them
 */
export function routeSearch(ground: RouteGround, start: Point): RouteSearch {
  const { turns } = ground;
  const count = turns.length;
  const nearest = new Float64Array(count).fill(Infinity);
  const cameFrom = new Int32Array(count).fill(START);
  // The turns from which each solid is in sight, the nearest first.
  const sightOf: number[][] = ground.solids.map(() => []);
  // A leg to try is written as the turn it starts at (the start as the turn after the last) and its number there.
  const queue = new FlatQueue<number>();
  const fromStart = legsFrom(ground, start, null);
  const legsAt = (from: number): Legs => (from === START ? fromStart : ground.legsFrom(from));
  let far = 0;
  look(START, 0);

  function look(from: number, gone: number): void {
    const { to, length, clear } = legsAt(from);
    const first = (from === START ? count : from) * count;
    for (let i = 0; i < to.length; i++) {
      if (nearest[to[i]!]! < Infinity || clear[i] === BLOCKED) continue;
      queue.push(first + i, gone + length[i]!);
    }
  }

  /** The next nearest turn, or null when all that can be reached have been. */
  function step(): number | null {
    while (queue.length > 0) {
      const gone = queue.peekValue()!;
      const coded = queue.pop()!;
      const leg = coded % count;
      const from = (coded - leg) / count === count ? START : (coded - leg) / count;
      const i = legsAt(from).to[leg]!;
      if (nearest[i]! < Infinity || !isLegClear(from, leg)) continue;
      nearest[i] = gone;
      cameFrom[i] = from;
      far = gone;
      for (const solid of ground.legsFrom(i).inSight) sightOf[solid]!.push(i);
      look(i, gone);
      return i;
    }
    far = Infinity;
    return null;
  }

  function isLegClear(from: number, leg: number): boolean {
    const { inSight, to, clear } = legsAt(from);
    if (clear[leg] === UNTRIED) {
      const at = from === START ? start : turns[from]!.at;
      clear[leg] = isClear(ground, at, turns[to[leg]!]!.at, inSight) ? CLEAR : BLOCKED;
    }
    return clear[leg] === CLEAR;
  }

  function walkTo(from: number, end: Point, length: number): Walk {
    const passed: Turn[] = [];
    for (let i = from; i !== START; i = cameFrom[i]!) passed.push(turns[i]!);
    return { start, turns: passed.reverse(), end, length };
  }

  function toOutline(ring: Ring): Walk | null {
    const solid = ground.numberOf.get(ring);
    if (solid === undefined)
      throw new RangeError("a walk leads to the outline of something that stands there");
    const box = boxOf(ring);
    const seenFrom = sightOf[solid]!;
    let best = fromStart.inSight.includes(solid)
      ? touching(ground, start, null, ring, Infinity, fromStart.inSight)
      : null;
    let from = START;
    let length = best ? best.leg : Infinity;
    for (let done = 0; ; ) {
      if (done === seenFrom.length) {
        if (far >= length || step() === null) break;
        continue;
      }
      const next = seenFrom[done++]!;
      if (nearest[next]! >= length) break;
      const turn = turns[next]!;
      if (nearest[next]! + awayFrom(box, turn.at) - ground.wanted >= length) continue;
      const { inSight } = ground.legsFrom(next);
      const end = touching(ground, turn.at, turn, ring, length - nearest[next]!, inSight);
      if (!end) continue;
      [best, from, length] = [end, next, nearest[next]! + end.leg];
    }
    return best && walkTo(from, best.at, length);
  }

  function toTurn(turn: Turn): Walk | null {
    const solid = ground.numberOf.get(turn.ring);
    const i = solid === undefined ? undefined : ground.turnsOf[solid]!.find((own) => turns[own] === turn);
    if (i === undefined) return null;
    while (nearest[i] === Infinity) if (step() === null) break;
    if (nearest[i] === Infinity) return null;
    return walkTo(cameFrom[i]!, turn.at, nearest[i]!);
  }

  return { toOutline, toTurn };
}

export interface End {
  readonly at: Point;
  readonly leg: number;
}

function awayFrom({ minX, minY, maxX, maxY }: Box, [x, y]: Point): number {
  const dx = Math.max(0, minX - x, x - maxX);
  const dy = Math.max(0, minY - y, y - maxY);
  return Math.sqrt(dx * dx + dy * dy);
}

/**
 * The straight end of a walk: to where the walker, half a width off, touches the outline; null if longer or not clear.
 * Straight at it is shortest. Where the turn that was just rounded is in the way of that, along one of its sides is.
 */
export function touching(
  ground: RouteGround,
  from: Point,
  turn: Turn | null,
  ring: Ring,
  less: number,
  inSight: readonly number[],
): End | null {
  const [foot, away] = nearestOn(ring, from);
  const leg = Math.max(0, away - ground.wanted);
  if (leg >= less) return null;
  const straight = along(from, foot, leg);
  if (isClear(ground, from, straight, inSight)) return { at: straight, leg };
  if (!turn) return null;
  const sides = [turn.after, [-turn.before[0], -turn.before[1]] as const].map(
    (side) => [side, firstTouch(ring, from, side, ground.wanted)] as const,
  );
  const ends = sides
    .filter(([, far]) => far < less)
    .map(([[x, y], far]): End => ({ at: [from[0] + far * x, from[1] + far * y], leg: far }))
    .filter(({ at }) => isClear(ground, from, at, inSight));
  return ends.reduce<End | null>((best, end) => (!best || end.leg < best.leg ? end : best), null);
}

function nearestOn(ring: Ring, [x, y]: Point): readonly [Point, number] {
  let [footX, footY, least] = [0, 0, Infinity];
  let [ax, ay] = ring.at(-1)!;
  for (let i = 0; i < ring.length; i++) {
    const bx = ring[i]![0];
    const by = ring[i]![1];
    const dx = bx - ax;
    const dy = by - ay;
    const square = dx * dx + dy * dy;
    const along = square === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / square;
    const t = along < 0 ? 0 : Math.min(along, 1);
    const offX = ax + t * dx - x;
    const offY = ay + t * dy - y;
    if (offX * offX + offY * offY < least) {
      least = offX * offX + offY * offY;
      footX = x + offX;
      footY = y + offY;
    }
    ax = bx;
    ay = by;
  }
  return [[footX, footY], Math.sqrt(least)];
}

function along(from: Point, to: Point, far: number): Point {
  const share = far / (distance(from, to) || 1);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

/** How far along a direction a walker first touches an outline, mm; Infinity if they pass it. */
function firstTouch(ring: Ring, [x, y]: Point, [ux, uy]: Point, half: number): number {
  const onward = { x, y, ux, uy, length: Infinity };
  let first = Infinity;
  let [ax, ay] = ring.at(-1)!;
  for (const [bx, by] of ring) {
    const near = takenBy(onward, ax, ay, bx, by, half);
    if (near && near[1] > 0) first = Math.min(first, Math.max(0, near[0]));
    ax = bx;
    ay = by;
  }
  return first;
}
