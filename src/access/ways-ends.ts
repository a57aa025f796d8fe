import { INCH } from "../units/length.ts";
import type { Side } from "./types.ts";
import { roomTouching } from "./ways-disc.ts";
import { triangleOf, WALL, type WaysMesh } from "./ways-mesh.ts";
import { NOWHERE, type WidestWays } from "./ways-search.ts";

/** Ways at least so wide are looked for first, mm: what somebody on foot needs. Few beds have only a narrower one. */
export const FIRST_LOOK = 18 * INCH;

/** Where a way comes to a bed: the triangle at it with the widest way that still lets a walker touch it. */
export interface End {
  readonly triangle: number;
  readonly width: number;
}

/** The triangles at each side, by the side's number: `list[first[side]]` to `list[first[side + 1]]`. */
export interface TrianglesAtSides {
  readonly numberOf: ReadonlyMap<Side, number>;
  readonly first: Uint32Array;
  readonly list: Uint32Array;
}

export function trianglesAtSides({ boundary: { owner, sides }, triangles }: WaysMesh): TrianglesAtSides {
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

const pocketsAt = ({ first, list }: TrianglesAtSides, side: number): Uint32Array =>
  list.subarray(first[side]!, first[side + 1]!);

/** Whether somebody so wide, mm, can have come to touch a side. */
export function isOpenTo(
  mesh: WaysMesh,
  found: WidestWays,
  at: TrianglesAtSides,
  side: number,
  width: number,
): boolean {
  found.lookDownTo(width);
  const most = width - ROOMIER * mesh.boundary.step;
  return pocketsAt(at, side).some(
    (t) => found.width[t]! >= width && 2 * mesh.radii[t]! >= most && roomTouching(mesh, t, side) >= width,
  );
}

export function bestEnd(mesh: WaysMesh, found: WidestWays, at: TrianglesAtSides, side: number): End | null {
  const triangles = pocketsAt(at, side);
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
