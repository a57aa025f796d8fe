import FlatQueue from "flatqueue";
import type { Point } from "../geometry/types.ts";
import { midpoint } from "../geometry/vector.ts";
import { pieceGap, pieceWidth } from "./piece-gap.ts";
import { type Disc, discAtEdge, exactDisc } from "./ways-disc.ts";
import {
  centreOf,
  crosses,
  isWall,
  nextInTriangle,
  triangleOf,
  WALL,
  type WaysMesh,
  widthThrough,
} from "./ways-mesh.ts";

/** A place to set out from. */
export interface Origin {
  readonly at: Point;
  /** Whatever the caller knows it by; comes back as `origin`. */
  readonly index: number;
}

/** The widest ways from some places to every triangle. */
export interface WidestWays {
  /**
   * Width of the widest way to each triangle, mm; `NOWHERE` where there is none, and after `throughOutlines` `WALL` where
   * there is one through an outline only.
   */
  readonly width: Float64Array;
  /** The edge each triangle was entered by (of the triangle before it), or -1 where the way begins. */
  readonly enteredBy: Int32Array;
  /** Of each triangle: index of the place its way begins at. */
  readonly origin: Int32Array;
  /**
   * Goes on through outlines, for a way to what is sealed off: half of all triangles lie inside of things, and few
   * gardens have need of them.
   */
  readonly throughOutlines: () => void;
}

export const NOWHERE = -2;

/**
 * Widest ways by Dijkstra's search, with the narrowest place in the role of the length.
 * @param locate the triangle a point lies in, or -1
 * @source the best bottleneck path: T. C. Hu, "The maximum capacity route problem", Operations Research 9, 1961
 */
export function widestWays(
  mesh: WaysMesh,
  origins: readonly Origin[],
  locate: (point: Point) => number,
): WidestWays {
  const { halfedges } = mesh;
  const count = mesh.radii.length;
  const width = new Float64Array(count).fill(NOWHERE);
  const enteredBy = new Int32Array(count).fill(-1);
  const origin = new Int32Array(count).fill(-1);
  const queue = new FlatQueue<number>();
  // Most steps are no narrower than the way so far, and nothing in the queue is wider: they need no place in it. Each
  // triangle comes here once at most, and first come first served keeps ways short.
  const asWide = new Int32Array(count);
  let [next, last] = [0, 0];

  const begin = (t: number, room: number, index: number) => {
    if (room <= width[t]!) return;
    width[t] = room;
    origin[t] = index;
    queue.push(t, -room);
  };

  for (const { at, index } of origins) {
    const held = holding(mesh, at, locate);
    for (const t of held) begin(t, 2 * exactDisc(mesh, t).radius, index);
    for (const edge of rimOf(mesh, held)) {
      const disc = discAtEdge(mesh, edge, at);
      if (disc) setOut(mesh, edge, disc, (t, room) => begin(t, room, index));
    }
  }
  search(0);
  return { width, enteredBy, origin, throughOutlines: () => search(WALL) };

  /** Over all ways at least so wide, the widest first. */
  function search(least: number): void {
    while (next < last || (queue.length > 0 && -queue.peekValue()! >= least)) {
      if (next < last) leave(asWide[next++]!);
      else {
        const reached = -queue.peekValue()!;
        const t = queue.pop()!;
        if (reached === width[t]) leave(t);
      }
    }
  }

  function leave(t: number): void {
    const reached = width[t]!;
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const across = halfedges[edge]!;
      if (across < 0) continue;
      const u = triangleOf(across);
      if (width[u]! >= reached) continue;
      const room = Math.min(reached, widthThrough(mesh, edge));
      if (room <= width[u]!) continue;
      width[u] = room;
      enteredBy[u] = edge;
      origin[u] = origin[t]!;
      if (room === reached) asWide[last++] = u;
      else queue.push(u, -room);
    }
  }
}

/**
 * The triangles whose circle holds a point, without stepping through an outline. Any disc that touches the point and
 * fits lies within one of them.
 */
function holding(mesh: WaysMesh, at: Point, locate: (point: Point) => number): number[] {
  const first = locate(at);
  if (first < 0) return [];
  const found = [first];
  const seen = new Set(found);
  for (let i = 0; i < found.length; i++) {
    const t = found[i]!;
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const across = mesh.halfedges[edge]!;
      if (across < 0 || isShut(mesh, edge)) continue;
      const u = triangleOf(across);
      if (seen.has(u)) continue;
      const [x, y] = centreOf(mesh, u);
      if (Math.hypot(x - at[0], y - at[1]) > mesh.radii[u]!) continue;
      seen.add(u);
      found.push(u);
    }
  }
  return found;
}

/** Whether an edge is part of an outline, or the outlines about its ends cross or touch. */
const isShut = (mesh: WaysMesh, edge: number): boolean =>
  isWall(mesh, edge) ||
  pieceWidth(mesh.boundary, mesh.triangles[edge]!, mesh.triangles[nextInTriangle(edge)]!) === 0;

/** The edges by which one leaves a set of triangles, outlines excepted. */
function rimOf(mesh: WaysMesh, set: readonly number[]): number[] {
  const inside = new Set(set);
  return set
    .flatMap((t) => [3 * t, 3 * t + 1, 3 * t + 2])
    .filter((edge) => {
      const across = mesh.halfedges[edge]!;
      return across >= 0 && !inside.has(triangleOf(across)) && !isShut(mesh, edge);
    });
}

/** Pieces of outline reach back by a sample at either side: after so many edges they lie ahead altogether. */
const SET_OUT = 4;

/**
 * Room of somebody who sets out across an edge while still touching the point they start from. Between the triangles
 * that hold the point and those that do not lies a disc with the point on its rim, and it may be the roomiest. Where
 * the way widens, what is narrower behind that disc is not passed.
 * @param begin is told of each of the first triangles ahead and of the room one has up to there
 */
function setOut(mesh: WaysMesh, first: number, disc: Disc, begin: (t: number, room: number) => void): void {
  const { boundary, triangles, halfedges, radii } = mesh;
  step(first, 2 * disc.radius, SET_OUT);

  function step(edge: number, roomSoFar: number, left: number): void {
    const u = triangleOf(halfedges[edge]!);
    const room = Math.min(roomSoFar, 2 * radii[u]!, roomAhead(edge, centreOf(mesh, u)));
    begin(u, room);
    if (left === 0) return;
    for (const next of [3 * u, 3 * u + 1, 3 * u + 2]) {
      if (next === halfedges[edge] || halfedges[next]! < 0 || isShut(mesh, next)) continue;
      step(next, room, left - 1);
    }
  }

  function roomAhead(edge: number, onward: Point): number {
    const isNarrow = edge === first ? !sameSide(mesh, edge, disc.at, onward) : crosses(mesh, edge);
    if (!isNarrow) return Infinity;
    const gap = pieceGap(boundary, triangles[edge]!, triangles[nextInTriangle(edge)]!);
    return isBetween(midpoint(gap.from, gap.to), disc.at, onward) ? gap.width : Infinity;
  }
}

/** Whether one comes past a point on the way from one place to another. */
function isBetween([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): boolean {
  const [ux, uy] = [bx - ax, by - ay];
  const along = ux * (x - ax) + uy * (y - ay);
  return along > 0 && along < ux * ux + uy * uy;
}

function sameSide({ boundary: { coords }, triangles }: WaysMesh, edge: number, a: Point, b: Point): boolean {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const [px, py] = [coords[2 * p]!, coords[2 * p + 1]!];
  const [ux, uy] = [coords[2 * q]! - px, coords[2 * q + 1]! - py];
  return (ux * (a[1] - py) - uy * (a[0] - px)) * (ux * (b[1] - py) - uy * (b[0] - px)) > 0;
}
