import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Tap } from "../garden/kinds/tap.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, distance, scale, turned } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import type { Entrance } from "./entrances.ts";
import { isFree } from "./kept-off.ts";
import { type RouteGround, routeGround } from "./route-ground.ts";
import { type RouteSearch, routeSearch, type Walk } from "./route-search.ts";
import { tightened } from "./route-tight.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { Route } from "./types.ts";

/** Walks and hoses of one garden, worked out bed by bed as they are asked for. */
export interface Routes {
  /** Shortest walk from any of the entrances to the bed's edge. */
  readonly walkTo: (bed: Bed) => Route | null;
}

/** Half the thickness of a hose, mm. */
const HOSE = 6;
/** How far out of a wall a start is looked for, and in what steps, mm. */
const OUT_OF_WALL = 1500;
const OUT_STEP = 25;

type Ground = Pick<Garden, "items" | "yard">;

/**
 * Shortest walks from entrances to beds.
 * @param width that the walker needs, mm
 */
export function walksFrom(entrances: readonly Entrance[], garden: Ground, width: number): Routes {
  const half = (width - SAME_LENGTH) / 2;
  const searches = searchesFrom(entrances, groundOf(garden, half));
  return { walkTo: (bed) => shortest(searches.map((from) => walked(from, bed, half))) };
}

interface From {
  readonly entrance: Entrance;
  readonly search: RouteSearch;
}

const searchesFrom = (entrances: readonly Entrance[], ground: RouteGround): From[] =>
  entrances.flatMap((entrance) =>
    entrance.starts.flatMap(({ into }) => {
      const start = stepOut(ground, entrance.opening, into);
      return start ? [{ entrance, search: searchFrom(ground, start) }] : [];
    }),
  );

const walked = ({ entrance, search }: From, bed: Bed, half: number): Route | null =>
  routeFrom(entrance.id, bed.id, entrance.opening, search.toOutline(outlineOf(bed)), half);

/** The hose runs of a garden: from the nearest tap, along the ground, to a bed's far corner. */
export const hosesOf = (garden: Ground): Routes =>
  hosesFrom(
    garden.items.filter((item) => item.kind === "tap"),
    garden,
  );

/** Where a tap is, or might be. */
export type TapPlace = Pick<Tap, "id" | "at" | "turn">;

/** Hose runs from some taps, which need not be in the garden yet. */
export function hosesFrom(taps: readonly TapPlace[], garden: Ground): Routes {
  const ground = groundOf(garden, HOSE);
  const searches = taps.flatMap((tap) => {
    const start = besideTap(ground, tap);
    return start ? [{ tap, search: searchFrom(ground, start) }] : [];
  });
  const walkTo = (bed: Bed): Route | null =>
    shortest(searches.map(({ tap, search }) => hoseTo(bed, tap, search, ground)));
  return { walkTo };
}

/** The ground that a hose, or a pipe as thick, can be laid on, with the corners it is led round. */
export const hoseGround = (garden: Ground): RouteGround => groundOf(garden, HOSE);

interface GroundKnown {
  readonly yard: Ring;
  readonly ground: RouteGround;
}
const grounds = new WeakMap<Garden["items"], GroundKnown[]>();

/** Remembered by the garden's things: what is seen from where is looked up by all who walk there, or may come to. */
function groundOf({ items, yard }: Ground, half: number): RouteGround {
  const before = (grounds.get(items) ?? []).filter((known) => known.yard === yard);
  const same = before.find(({ ground }) => ground.wanted === half);
  if (same) return same.ground;
  const rings = surroundingsOf({ items, yard }).obstacles.map(({ ring }) => ring);
  const ground = routeGround(yard, rings, half);
  grounds.set(items, [...before, { yard, ground }]);
  return ground;
}

const searches = new WeakMap<RouteGround, Map<string, RouteSearch>>();

/** A search goes on from where it was left when it was last asked. */
function searchFrom(ground: RouteGround, start: Point): RouteSearch {
  const known = searches.get(ground) ?? new Map<string, RouteSearch>();
  searches.set(ground, known);
  const key = start.join(" ");
  const search = known.get(key) ?? routeSearch(ground, start);
  known.set(key, search);
  return search;
}

const shortest = (routes: readonly (Route | null)[]): Route | null =>
  routes.reduce((best, route) => (route && (!best || route.length < best.length) ? route : best), null);

function routeFrom(from: ItemId, to: ItemId, opening: Point, walk: Walk | null, half: number): Route | null {
  if (!walk) return null;
  const { points, length } = tightened(walk, half);
  return { from, to, length: length + distance(opening, walk.start), points: [opening, ...points] };
}

/** The first free standing place straight out of an opening. */
function stepOut(ground: RouteGround, opening: Point, into: Point): Point | null {
  for (let far = 0; far <= OUT_OF_WALL; far += OUT_STEP) {
    const at = add(opening, scale(into, far));
    if (isFree(ground, at)) return at;
  }
  return null;
}

/** A tap hangs on a wall or stands free: the nearest free ground about it, before it first; null where there is none. */
export function besideTap(ground: RouteGround, { at, turn }: TapPlace): Point | null {
  for (let far = 0; far <= OUT_OF_WALL; far += OUT_STEP) {
    for (const side of [90, 270, 0, 180]) {
      const place = add(at, scale(turned([1, 0], turn + side), far));
      if (isFree(ground, place)) return place;
    }
  }
  return null;
}

/**
 * To the corner that takes the longest hose. Corners that lie against something else are watered from the nearest
 * place at the bed that the hose gets to.
 */
function hoseTo(bed: Bed, tap: TapPlace, search: RouteSearch, ground: RouteGround): Route | null {
  const outline = outlineOf(bed);
  const touch = search.toOutline(outline);
  if (!touch) return null;
  const own = ground.turnsOf[ground.numberOf.get(outline)!]!;
  const corners = own.map((i) => search.toTurn(ground.turns[i]!));
  const reached = [touch, ...corners.filter((walk) => walk !== null)];
  const ends = outline.map((corner) => {
    const nearest = reached.reduce((best, walk) =>
      distance(walk.end, corner) < distance(best.end, corner) ? walk : best,
    );
    return { walk: nearest, beyond: distance(nearest.end, corner), corner };
  });
  const farthest = ends.reduce((a, b) => (b.walk.length + b.beyond > a.walk.length + a.beyond ? b : a));
  const route = routeFrom(tap.id, bed.id, tap.at, farthest.walk, ground.wanted);
  if (!route) return null;
  return {
    ...route,
    length: route.length + farthest.beyond,
    points: [...route.points, farthest.corner],
  };
}
