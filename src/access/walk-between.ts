import FlatQueue from "flatqueue";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { offset } from "../geometry/clip.ts";
import { gapBetween } from "../geometry/gap.ts";
import { properCrossing } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { isClear, isFree } from "./kept-off.ts";
import { type RouteGround, routeGround } from "./route-ground.ts";
import { type End, touching, type Walk } from "./route-search.ts";
import { tightened } from "./route-tight.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Route } from "./types.ts";

/**
 * The shortest walk from one bed to another: from wherever one can stand at the edge of the first to wherever one can
 * stand at the edge of the second.
 *
 * @param width that the walker needs, mm
 * @returns its points are those of the walker's middle; length 0 where one stands at both; null where there is no way
 *   so wide
 * @throws RangeError for an id that is no bed of this garden
 */
export function walkBetween(
  garden: Pick<Garden, "items" | "yard">,
  from: ItemId,
  to: ItemId,
  width: number,
): Route | null {
  const [first, second] = [from, to].map((id) => outlineOf(bedOf(garden, id)));
  const half = (width - SAME_LENGTH) / 2;
  const rings = surroundingsOf(garden).obstacles.map(({ ring }) => ring);
  const ground = routeGround(garden.yard, rings, half);
  if (!first || !second) return null;
  const stands = standsAtBoth(ground, first, second);
  if (stands) return { from, to, length: 0, points: [stands] };
  const straight = straightAcross(ground, first, second);
  const round = walkRound(ground, first, second, straight?.length ?? Infinity);
  if (!round) return straight && { from, to, ...straight };
  return { from, to, ...tightened(round, half) };
}

function bedOf({ items }: Pick<Garden, "items">, id: ItemId): Bed {
  const item = items.find((candidate) => candidate.id === id);
  if (item?.kind !== "bed") throw new RangeError(`"${id}" is no bed of this garden`);
  return item;
}

/** A free place at which somebody touches both. */
function standsAtBoth(ground: RouteGround, first: Ring, second: Ring): Point | null {
  if (gapBetween(first, second).width > 2 * ground.wanted) return null;
  const round = (ring: Ring) => offset([ring], ground.wanted, "round");
  const places = round(first).flatMap((a) => round(second).flatMap((b) => crossings(a, b)));
  return places.find((at) => isFree(ground, at)) ?? null;
}

function crossings(first: Ring, second: Ring): Point[] {
  return first.flatMap((a, i) =>
    second.flatMap((c, j) => {
      const crossing = properCrossing(a, first[(i + 1) % first.length]!, c, second[(j + 1) % second.length]!);
      return crossing ? [crossing] : [];
    }),
  );
}

/** Straight from one outline to the other where they come nearest. */
function straightAcross(
  ground: RouteGround,
  first: Ring,
  second: Ring,
): { points: readonly Point[]; length: number } | null {
  const { from, to, width } = gapBetween(first, second);
  const length = width - 2 * ground.wanted;
  if (length < 0) return null;
  const at = (far: number): Point => [
    from[0] + ((to[0] - from[0]) * far) / width,
    from[1] + ((to[1] - from[1]) * far) / width,
  ];
  const points = [at(ground.wanted), at(width - ground.wanted)];
  const [start, end] = points as [Point, Point];
  return isFree(ground, start) && isFree(ground, end) && isClear(ground, start, end)
    ? { points, length }
    : null;
}

/**
 * Dijkstra's search over the turns of the ground, from all that can be walked to straight from the first outline.
 * @param less only a walk shorter than this, mm
 */
function walkRound(ground: RouteGround, first: Ring, second: Ring, less: number): Walk | null {
  const { turns } = ground;
  const [nearest, cameFrom, starts] = [
    new Map<number, number>(),
    new Map<number, number>(),
    new Map<number, End>(),
  ];
  const queue = new FlatQueue<{ readonly turn: number; readonly from: number | null }>();
  const legTo = (turn: number, ring: Ring, most: number) =>
    touching(ground, turns[turn]!.at, turns[turn]!, ring, most, ground.legsFrom(turn).inSight);

  turns.forEach((_, turn) => {
    const start = legTo(turn, first, less);
    if (!start) return;
    starts.set(turn, start);
    queue.push({ turn, from: null }, start.leg);
  });

  let best: { readonly turn: number; readonly end: End; readonly length: number } | null = null;
  while (queue.length > 0) {
    const gone = queue.peekValue()!;
    if (gone >= (best?.length ?? less)) break;
    const { turn, from } = queue.pop()!;
    if (nearest.has(turn)) continue;
    if (from !== null && !isClear(ground, turns[from]!.at, turns[turn]!.at, ground.legsFrom(from).inSight))
      continue;
    nearest.set(turn, gone);
    if (from !== null) cameFrom.set(turn, from);
    const end = legTo(turn, second, (best?.length ?? less) - gone);
    if (end) best = { turn, end, length: gone + end.leg };
    const { to, length } = ground.legsFrom(turn);
    to.forEach((next, i) => {
      if (!nearest.has(next)) queue.push({ turn: next, from: turn }, gone + length[i]!);
    });
  }
  if (!best) return null;
  const passed = [best.turn];
  for (let back = cameFrom.get(best.turn); back !== undefined; back = cameFrom.get(back))
    passed.unshift(back);
  return {
    start: starts.get(passed[0]!)!.at,
    turns: passed.map((turn) => turns[turn]!),
    end: best.end.at,
    length: best.length,
  };
}
