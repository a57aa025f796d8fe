import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Point } from "../geometry/types.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import { type Boundary, boundaryOf, type Detail } from "./boundary.ts";
import { type Entrance, entrancesOf } from "./entrances.ts";
import { pieceGap } from "./piece-gap.ts";
import { acrossDisc } from "./set-out.ts";
import type { Gap, Side, Way } from "./types.ts";
import { exactDisc, roomAt, roomTouching } from "./ways-disc.ts";
import { locator, reachable } from "./ways-locate.ts";
import {
  type Begin,
  meshOf,
  nextInTriangle,
  triangleOf,
  WALL,
  type WaysMesh,
  widthOfSamples,
} from "./ways-mesh.ts";
import { NOWHERE, type WidestWays, widestWays } from "./ways-search.ts";
import { meshWhileDragged } from "./ways-while-dragged.ts";
import { pinchThrough, widthThrough } from "./ways-width.ts";

/**
 * A squeeze under 6 in is no way at all: it counts as closed, width 0. (Nobody gets through, and between samples the
 * mesh cannot tell such a squeeze from a joint.)
 */
export const NARROWEST_WAY = 6 * INCH;

/** Ways at least so wide are looked for first, mm: what somebody on foot needs. Few beds have only a narrower one. */
const FIRST_LOOK = 18 * INCH;

/** Two measures of one width are the same within this, mm. */
const SAME_WIDTH = 1e-6;

/** What is known of the ways of one garden. */
export interface Ways {
  readonly mesh: WaysMesh;
  readonly entrances: readonly Entrance[];
  /** The widest way from any gate and from any door to a bed; null where the garden has none of the kind. */
  readonly toBed: (id: ItemId) => { readonly fromGate: Way | null; readonly fromDoor: Way | null };
  /**
   * For a way so many mm wide: whether somebody standing at a point can have come there from a gate or a door. True
   * everywhere in a garden that has neither.
   */
  readonly reachableAt: (width: number) => (point: Point) => boolean;
  /** All places on the widest way to a bed that are narrower than a width, from the bed back to where the way begins. */
  readonly pinchesTo: (id: ItemId, width: number) => readonly Gap[];
  /** Width of the widest way from any entrance to each triangle of the mesh; null where there is no entrance. */
  readonly widest: Float64Array | null;
}

interface Known {
  readonly yard: Garden["yard"];
  readonly detail: Detail;
  readonly ways: Ways;
}
const known = new WeakMap<Garden["items"], Known>();

/** The widest ways from gates and doors to every bed; remembered by the garden's things. */
export function waysOf(garden: Pick<Garden, "items" | "yard">, detail: Detail = "settled"): Ways {
  const before = known.get(garden.items);
  if (before?.yard === garden.yard && before.detail === detail) return before.ways;
  const ways = workedOut(garden, detail);
  known.set(garden.items, { yard: garden.yard, detail, ways });
  return ways;
}

function workedOut(garden: Pick<Garden, "items" | "yard">, detail: Detail): Ways {
  const entrances = entrancesOf(garden);
  const mesh = detail === "dragged" ? meshWhileDragged(garden) : meshOf(boundaryOf(garden, detail));
  const locate = locator(mesh);
  const atSides = trianglesAtSides(mesh);
  const from = (kind: Entrance["kind"]) => {
    const some = entrances.filter((entrance) => entrance.kind === kind);
    return some.length > 0 ? searched(mesh, some, locate, atSides) : null;
  };
  const [gates, doors] = [from("gate"), from("door")];
  const widestDownTo = (least: number) => {
    gates?.found.lookDownTo(least);
    doors?.found.lookDownTo(least);
    return widestOf(gates?.found ?? null, doors?.found ?? null);
  };
  return {
    mesh,
    entrances,
    toBed: (id) => ({ fromGate: gates?.wayTo(id) ?? null, fromDoor: doors?.wayTo(id) ?? null }),
    pinchesTo: (id, width) => {
      const found = [gates, doors].filter((from) => from !== null).map((from) => from.endAt(id));
      const best = found.filter((end) => end !== null).sort((a, b) => b.end.width - a.end.width)[0];
      return best ? pinchesOn(mesh, best.found, best.end, width) : [];
    },
    reachableAt: (width) => {
      const least = width - SAME_LENGTH;
      const widest = widestDownTo(Math.min(least, FIRST_LOOK));
      return widest ? reachable(mesh, widest, least) : () => true;
    },
    get widest() {
      return widestDownTo(0);
    },
  };
}

function widestOf(gates: WidestWays | null, doors: WidestWays | null): Float64Array | null {
  if (!gates || !doors) return gates?.width ?? doors?.width ?? null;
  const widest = gates.width.slice();
  for (let t = 0; t < widest.length; t++) if (doors.width[t]! > widest[t]!) widest[t] = doors.width[t]!;
  return widest;
}

interface Searched {
  readonly found: WidestWays;
  readonly endAt: (id: ItemId) => { readonly found: WidestWays; readonly end: End } | null;
  readonly wayTo: (id: ItemId) => Way;
}

function searched(
  mesh: WaysMesh,
  entrances: readonly Entrance[],
  locate: (point: Point) => number,
  atSides: TrianglesAtSides,
): Searched {
  const origins = entrances.flatMap(({ starts }, index) => starts.map(({ at }) => ({ at, index })));
  const found = widestWays(mesh, origins, locate);
  const endWithWays = (id: ItemId) => {
    const end = endAt(id);
    return end && { found, end };
  };
  return { found, endAt: endWithWays, wayTo: (id) => wayTo(mesh, found, entrances, endAt(id), id) };

  function endAt(id: ItemId): End | null {
    const side = atSides.numberOf.get(id);
    return side === undefined ? null : bestEnd(mesh, found, atSides, side);
  }
}

/** Where a way comes to a bed: the triangle at it with the widest way that still lets a walker touch it. */
interface End {
  readonly triangle: number;
  readonly width: number;
}

/** The triangles at each side, by the side's number: `list[first[side]]` to `list[first[side + 1]]`. */
interface TrianglesAtSides {
  readonly numberOf: ReadonlyMap<Side, number>;
  readonly first: Uint32Array;
  readonly list: Uint32Array;
}

function trianglesAtSides({ boundary: { owner, sides }, triangles }: WaysMesh): TrianglesAtSides {
  const first = new Uint32Array(sides.length + 1);
  for (let i = 0; i < triangles.length; i++) first[owner[triangles[i]!]! + 1]!++;
  for (let side = 0; side < sides.length; side++) first[side + 1]! += first[side]!;
  const free = first.slice();
  const list = new Uint32Array(triangles.length);
  for (let i = 0; i < triangles.length; i++) list[free[owner[triangles[i]!]!]!++] = triangleOf(i);
  // A thing that stands as several rings is known by the first of them.
  const numberOf = new Map(sides.map((side, i): [Side, number] => [side, i]).reverse());
  return { numberOf, first, list };
}

function bestEnd(mesh: WaysMesh, found: WidestWays, at: TrianglesAtSides, side: number): End | null {
  const triangles = at.list.subarray(at.first[side]!, at.first[side + 1]!);
  for (const least of [FIRST_LOOK, 0, WALL]) {
    found.lookDownTo(least);
    const end = roomiestPocket(mesh, found, triangles, side);
    if (end && end.width >= least) return end;
  }
  return null;
}

/** The triangle with most room for a walker who has come there, as far as samples tell, or -1. */
function roomiest(mesh: WaysMesh, { width }: WidestWays, triangles: Uint32Array): number {
  let [best, room] = [-1, NOWHERE];
  for (let i = 0; i < triangles.length; i++) {
    const t = triangles[i]!;
    const roomHere = Math.min(width[t]!, 2 * mesh.radii[t]!);
    if (roomHere > room) [best, room] = [t, roomHere];
  }
  return best;
}

/** How much more room than its samples tell an exact disc may have, for each mm of the step between samples. */
const ROOMIER = 0.5;

/**
 * The circle of a pocket is the circle of its samples, which the exact disc there may be a shade smaller or larger than:
 * every pocket that might be the best is measured, the one that looks roomiest first.
 */
function roomiestPocket(mesh: WaysMesh, found: WidestWays, pockets: Uint32Array, side: number): End | null {
  const first = roomiest(mesh, found, pockets);
  if (first < 0) return null;
  let best: End = { triangle: first, width: Math.min(found.width[first]!, roomTouching(mesh, first, side)) };
  for (let i = 0; i < pockets.length; i++) {
    const t = pockets[i]!;
    const most = Math.min(found.width[t]!, 2 * mesh.radii[t]! + ROOMIER * mesh.boundary.step);
    if (most <= best.width) continue;
    const room = Math.min(found.width[t]!, roomTouching(mesh, t, side));
    if (room > best.width) best = { triangle: t, width: room };
  }
  return best.width > NOWHERE ? best : null;
}

function wayTo(
  mesh: WaysMesh,
  found: WidestWays,
  entrances: readonly Entrance[],
  end: End | null,
  id: ItemId,
): Way {
  const entrance = end && entrances[found.origin[end.triangle]!];
  // A bed is seen from nowhere where nobody gets in at all: then it is not to blame.
  const shutOut = entrances.every(({ starts }) => starts.length === 0);
  if (!end || !entrance) return blockedFrom(mesh.boundary, entrances, id, shutOut || end !== null);
  const narrowest = narrowestOn(mesh, found, end);
  return {
    entrance: entrance.id,
    width: end.width < NARROWEST_WAY ? 0 : end.width,
    narrowest,
  };
}

/** No way begins at all: something stands against every entrance, or the bed lies under something else. */
function blockedFrom(
  { coords, owner, sides }: Boundary,
  entrances: readonly Entrance[],
  id: ItemId,
  bedSeen: boolean,
): Way {
  const entrance = entrances.find(({ starts }) => starts.length === 0) ?? entrances[0];
  if (!entrance) throw new RangeError("a way needs an entrance to begin at");
  const own = owner.findIndex((side) => sides[side] === id);
  const at: Point = bedSeen || own < 0 ? entrance.opening : [coords[2 * own]!, coords[2 * own + 1]!];
  const between: readonly [Side, Side] = bedSeen ? [entrance.id, entrance.id] : [id, id];
  return { entrance: entrance.id, width: 0, narrowest: { between, width: 0, from: at, to: at } };
}

function narrowestOn(mesh: WaysMesh, found: WidestWays, end: End): Gap {
  if (end.width < found.width[end.triangle]!) return roomIn(mesh, end.triangle);
  let t = end.triangle;
  let narrowest = -1;
  // Back along the way for as long as nothing wider is met: the last edge of this width is where the way narrows first.
  while (found.width[t]! <= end.width) {
    const edge = found.enteredBy[t]!;
    if (edge < 0) break;
    narrowest = edge;
    t = triangleOf(edge);
  }
  if (narrowest < 0 || found.width[t]! <= end.width) {
    const begin = found.begun.get(t);
    return begin ? told(mesh, begin) : roomIn(mesh, t);
  }
  if (pinchThrough(mesh, narrowest) <= end.width + SAME_WIDTH) return gapAt(mesh, narrowest);
  // One of the two middles is narrower than anything between them.
  const beyond = triangleOf(mesh.halfedges[narrowest]!);
  return roomIn(mesh, roomAt(mesh, t) < roomAt(mesh, beyond) ? t : beyond);
}

/** One for each stretch of way between the same two things, at its narrowest. */
function pinchesOn(mesh: WaysMesh, found: WidestWays, end: End, width: number): Gap[] {
  const pinches: Gap[] = [];
  for (let edge = found.enteredBy[end.triangle]!; edge >= 0; edge = found.enteredBy[triangleOf(edge)]!) {
    if (widthOfSamples(mesh, edge) === WALL || pinchThrough(mesh, edge) === Infinity) continue;
    if (widthThrough(mesh, edge) >= width - SAME_LENGTH) continue;
    const gap = gapAt(mesh, edge);
    const last = pinches.at(-1);
    if (!last || !isSamePlace(last, gap, mesh.boundary.step)) pinches.push(gap);
    else if (gap.width < last.width) pinches[pinches.length - 1] = gap;
  }
  return pinches;
}

function isSamePlace(a: Gap, b: Gap, step: number): boolean {
  const sides = new Set([...a.between, ...b.between]);
  const apart =
    Math.hypot(a.from[0] + a.to[0] - b.from[0] - b.to[0], a.from[1] + a.to[1] - b.from[1] - b.to[1]) / 2;
  return sides.size === new Set(a.between).size || apart <= 2 * step;
}

function gapAt({ boundary, triangles }: WaysMesh, edge: number): Gap {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const between: readonly [Side, Side] = [sideOf(boundary, p), sideOf(boundary, q)];
  // Neighbours of one outline: an outline that closes the bed off on its own.
  if (boundary.next[p] === q || boundary.previous[p] === q) {
    const at: Point = [boundary.coords[2 * p]!, boundary.coords[2 * p + 1]!];
    return { between, width: 0, from: at, to: at };
  }
  return { between, ...pieceGap(boundary, p, q) };
}

/** The room of a pocket: the two touching places farthest apart. */
const roomIn = (mesh: WaysMesh, t: number): Gap => told(mesh, acrossDisc(mesh, t, exactDisc(mesh, t)));

const told = ({ boundary }: WaysMesh, { samples: [p, q], width, from, to }: Begin): Gap => ({
  between: [sideOf(boundary, p), sideOf(boundary, q)],
  width,
  from,
  to,
});

const sideOf = ({ owner, sides }: Boundary, sample: number): Side => sides[owner[sample]!]!;
