import FlatQueue from "flatqueue";
import { boxOf } from "../geometry/gap.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { isClear, type RouteGround, type Turn } from "./route-ground.ts";

/** Shortest walks from one place; the search goes on only as far as it is asked to. */
export interface RouteSearch {
  /** Shortest walk until one touches an outline; null where there is none. */
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
  const order: number[] = [];
  // A step from one turn to another as one number; the start is written as the turn after the last.
  const queue = new FlatQueue<number>();
  const indexOf = new Map(turns.map((turn, i) => [turn, i]));
  look(START, start, 0);

  function look(from: number, at: Point, far: number): void {
    const own = from === START ? null : turns[from]!;
    for (let i = 0; i < count; i++) {
      if (nearest[i]! < Infinity) continue;
      const turn = turns[i]!;
      const [dx, dy] = [turn.at[0] - at[0], turn.at[1] - at[1]];
      if (!touches(turn, dx, dy) || (own && !touches(own, dx, dy))) continue;
      queue.push((from === START ? count : from) * count + i, far + Math.sqrt(dx * dx + dy * dy));
    }
  }

  /** The next nearest turn, or null when all that can be reached have been. */
  function step(): number | null {
    while (queue.length > 0) {
      const far = queue.peekValue()!;
      const coded = queue.pop()!;
      const i = coded % count;
      if (nearest[i]! < Infinity) continue;
      const from = (coded - i) / count === count ? START : (coded - i) / count;
      if (!isClear(ground, from === START ? start : turns[from]!.at, turns[i]!.at)) continue;
      nearest[i] = far;
      cameFrom[i] = from;
      order.push(i);
      look(i, turns[i]!.at, far);
      return i;
    }
    return null;
  }

  function walkTo(from: number, end: Point, length: number): Walk {
    const passed: Turn[] = [];
    for (let i = from; i !== START; i = cameFrom[i]!) passed.push(turns[i]!);
    return { start, turns: passed.reverse(), end, length };
  }

  function toOutline(ring: Ring): Walk | null {
    const round = circleAbout(ring);
    let best = touching(ground, start, null, ring, Infinity);
    let from = START;
    let [length, done] = [best ? best.leg : Infinity, 0];
    for (;;) {
      const next = done < order.length ? order[done]! : step();
      done++;
      if (next === null || nearest[next]! >= length) break;
      const turn = turns[next]!;
      const atLeast = distance(turn.at, round.middle) - round.radius - ground.wanted;
      if (nearest[next]! + atLeast >= length) continue;
      const end = touching(ground, turn.at, turn, ring, length - nearest[next]!);
      if (!end) continue;
      [best, from, length] = [end, next, nearest[next]! + end.leg];
    }
    return best && walkTo(from, best.at, length);
  }

  function toTurn(turn: Turn): Walk | null {
    const i = indexOf.get(turn);
    if (i === undefined) return null;
    while (nearest[i] === Infinity) if (step() === null) break;
    if (nearest[i] === Infinity) return null;
    return walkTo(cameFrom[i]!, turn.at, nearest[i]!);
  }

  return { toOutline, toTurn };
}

/** Whether a line passes a turn without going through what is rounded: both sides lie to one side of it. */
function touches({ before, after }: Turn, dx: number, dy: number): boolean {
  const slack = 1e-9 * (Math.abs(dx) + Math.abs(dy));
  const back = dy * before[0] - dx * before[1];
  const on = dx * after[1] - dy * after[0];
  return (back >= -slack && on >= -slack) || (back <= slack && on <= slack);
}

interface End {
  readonly at: Point;
  readonly leg: number;
}

function circleAbout(ring: Ring): { readonly middle: Point; readonly radius: number } {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return { middle: [(minX + maxX) / 2, (minY + maxY) / 2], radius: Math.hypot(maxX - minX, maxY - minY) / 2 };
}

/**
 * The straight end of a walk: to where the walker, half a width off, touches the outline; null if longer or not clear.
 * Straight at it is shortest. Where the turn that was just rounded is in the way of that, along one of its sides is.
 */
function touching(ground: RouteGround, from: Point, turn: Turn | null, ring: Ring, less: number): End | null {
  const [foot, away] = nearestOn(ring, from);
  const leg = Math.max(0, away - ground.wanted);
  if (leg >= less) return null;
  const straight = along(from, foot, leg);
  if (isClear(ground, from, straight)) return { at: straight, leg };
  if (!turn) return null;
  const sides = [turn.after, [-turn.before[0], -turn.before[1]] as const].map(
    (side) => [side, firstTouch(ring, from, side, ground.wanted)] as const,
  );
  const ends = sides
    .filter(([, far]) => far < less)
    .map(([[x, y], far]): End => ({ at: [from[0] + far * x, from[1] + far * y], leg: far }))
    .filter(({ at }) => isClear(ground, from, at));
  return ends.reduce<End | null>((best, end) => (!best || end.leg < best.leg ? end : best), null);
}

function nearestOn(ring: Ring, from: Point): readonly [Point, number] {
  let foot = ring[0]!;
  let away = Infinity;
  let previous = ring.at(-1)!;
  for (const corner of ring) {
    const candidate = nearestOnSegment(from, previous, corner);
    const candidateAway = distance(from, candidate);
    if (candidateAway < away) [foot, away] = [candidate, candidateAway];
    previous = corner;
  }
  return [foot, away];
}

function along(from: Point, to: Point, far: number): Point {
  const share = far / (distance(from, to) || 1);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

/** A step that is never too long brings one to the outline: no nearer than half a width can be reached sooner. */
const NEARLY = 0.5;
const MOST_STEPS = 60;

/** How far along a direction a walker first touches an outline, mm; Infinity if they pass it. */
function firstTouch(ring: Ring, [x, y]: Point, [ux, uy]: Point, half: number): number {
  let far = 0;
  let nearest = Infinity;
  for (let i = 0; i < MOST_STEPS; i++) {
    const free = nearestOn(ring, [x + far * ux, y + far * uy])[1] - half;
    if (free <= NEARLY) return far;
    if (free > nearest + NEARLY) return Infinity;
    nearest = free;
    far += free;
  }
  return Infinity;
}
