import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Point } from "../geometry/types.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import { type Boundary, boundaryOf } from "./boundary.ts";
import { type Entrance, entrancesOf } from "./entrances.ts";
import { pieceGap } from "./piece-gap.ts";
import type { Gap, Side, Way } from "./types.ts";
import { type Disc, exactDisc } from "./ways-disc.ts";
import { locator, reachable } from "./ways-locate.ts";
import { crosses, meshOf, nextInTriangle, triangleOf, type WaysMesh } from "./ways-mesh.ts";
import { NOWHERE, type WidestWays, widestWays } from "./ways-search.ts";

/**
 * A squeeze under 6 in is no way at all: it counts as closed, width 0. (Nobody gets through, and between samples the
 * mesh cannot tell such a squeeze from a joint.)
 */
export const NARROWEST_WAY = 6 * INCH;

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
  /** Width of the widest way from any entrance to each triangle of the mesh; null where there is no entrance. */
  readonly widest: Float64Array | null;
}

/** The widest ways from gates and doors to every bed. */
export function waysOf(garden: Pick<Garden, "items" | "yard">): Ways {
  const entrances = entrancesOf(garden);
  const mesh = meshOf(boundaryOf(garden));
  const locate = locator(mesh);
  const from = (kind: Entrance["kind"]) => {
    const some = entrances.filter((entrance) => entrance.kind === kind);
    return some.length > 0 ? searched(mesh, some, locate) : null;
  };
  const [gates, doors] = [from("gate"), from("door")];
  const widest = widestOf(gates?.found ?? null, doors?.found ?? null);
  return {
    mesh,
    entrances,
    toBed: (id) => ({ fromGate: gates?.wayTo(id) ?? null, fromDoor: doors?.wayTo(id) ?? null }),
    reachableAt: (width) => (widest ? reachable(mesh, widest, width - SAME_LENGTH, locate) : () => true),
    widest,
  };
}

function widestOf(gates: WidestWays | null, doors: WidestWays | null): Float64Array | null {
  if (!gates || !doors) return gates?.width ?? doors?.width ?? null;
  return gates.width.map((width, t) => Math.max(width, doors.width[t]!));
}

interface Searched {
  readonly found: WidestWays;
  readonly wayTo: (id: ItemId) => Way;
}

function searched(
  mesh: WaysMesh,
  entrances: readonly Entrance[],
  locate: (point: Point) => number,
): Searched {
  const origins = entrances.flatMap(({ starts }, index) => starts.map(({ at }) => ({ at, index })));
  const found = widestWays(mesh, origins, locate);
  const ends = bestEnds(mesh, found);
  return { found, wayTo: (id) => wayTo(mesh, found, entrances, ends, id) };
}

/** For each side: the triangle at it with the widest way that still lets a walker touch it. */
interface End {
  readonly triangle: number;
  readonly width: number;
}

function bestEnds(mesh: WaysMesh, { width }: WidestWays): ReadonlyMap<Side, End> {
  const { boundary, triangles, radii } = mesh;
  const best = new Float64Array(boundary.sides.length).fill(NOWHERE);
  const at = new Int32Array(boundary.sides.length).fill(-1);
  for (let corner = 0; corner < triangles.length; corner++) {
    const t = triangleOf(corner);
    const room = Math.min(width[t]!, 2 * radii[t]!);
    const side = boundary.owner[triangles[corner]!]!;
    if (room <= best[side]!) continue;
    best[side] = room;
    at[side] = t;
  }
  const ends = new Map<Side, End>();
  boundary.sides.forEach((side, i) => {
    if (at[i]! < 0) return;
    const end = exactEnd(mesh, width, i, at[i]!);
    const before = ends.get(side);
    if (!before || end.width > before.width) ends.set(side, end);
  });
  return ends;
}

/**
 * The circle of a pocket is the circle of its samples, a shade too large. Where it decides, the pockets are measured
 * exactly, the roomiest first, until none that is left can beat the best.
 */
function exactEnd(mesh: WaysMesh, width: Float64Array, side: number, first: number): End {
  const { boundary, triangles, radii } = mesh;
  if (width[first]! <= 2 * exactDisc(mesh, first).radius) return { triangle: first, width: width[first]! };
  const pockets = new Set<number>();
  for (let corner = 0; corner < triangles.length; corner++) {
    if (boundary.owner[triangles[corner]!] === side) pockets.add(triangleOf(corner));
  }
  const atMost = (t: number) => Math.min(width[t]!, 2 * radii[t]!);
  let best: End = { triangle: first, width: NOWHERE };
  for (const t of [...pockets].sort((a, b) => atMost(b) - atMost(a))) {
    if (atMost(t) <= best.width) break;
    const room = Math.min(width[t]!, 2 * exactDisc(mesh, t).radius);
    if (room > best.width) best = { triangle: t, width: room };
  }
  return best;
}

function wayTo(
  mesh: WaysMesh,
  found: WidestWays,
  entrances: readonly Entrance[],
  ends: ReadonlyMap<Side, End>,
  id: ItemId,
): Way {
  const end = ends.get(id);
  const entrance = end && entrances[found.origin[end.triangle]!];
  if (!end || !entrance) return blockedFrom(mesh.boundary, entrances, id, end !== undefined);
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
  if (narrowest < 0 || found.width[t]! <= end.width) return roomIn(mesh, t);
  const beyond = triangleOf(mesh.halfedges[narrowest]!);
  return crosses(mesh, narrowest) ? gapAt(mesh, narrowest) : roomIn(mesh, beyond);
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

/** The room of a pocket or of the place where the way begins: the two touching places farthest apart. */
function roomIn(mesh: WaysMesh, t: number): Gap {
  const disc: Disc = exactDisc(mesh, t);
  const pairs = [
    [0, 1],
    [1, 2],
    [2, 0],
  ] as const;
  const apart = ([i, j]: readonly [0 | 1 | 2, 0 | 1 | 2]) =>
    Math.hypot(disc.touches[i][0] - disc.touches[j][0], disc.touches[i][1] - disc.touches[j][1]);
  const [i, j] = pairs.reduce((a, b) => (apart(b) > apart(a) ? b : a));
  const side = (corner: number) => sideOf(mesh.boundary, mesh.triangles[3 * t + corner]!);
  return {
    between: [side(i), side(j)],
    width: 2 * disc.radius,
    from: disc.touches[i],
    to: disc.touches[j],
  };
}

const sideOf = ({ owner, sides }: Boundary, sample: number): Side => sides[owner[sample]!]!;
