import type { Point } from "../geometry/types.ts";
import type { Boundary } from "./boundary.ts";
import { farFromPiece, nearestOnPiece, pieceWidth } from "./piece-gap.ts";
import { touching } from "./touching-disc.ts";
import { nextInTriangle, triangleOf, type WaysMesh } from "./ways-mesh.ts";

export interface Disc {
  readonly at: Point;
  readonly radius: number;
  /** Where it touches. */
  readonly touches: readonly [Point, Point, Point];
}

/**
 * The disc that touches the outlines about a triangle's three samples, not only the samples: what really fits there.
 * Where two of the three are one straight side, no disc is the one that touches all: then it is one that stands midway
 * between the two outlines.
 */
export function exactDisc(mesh: WaysMesh, t: number): Disc {
  const { boundary, triangles, discs } = mesh;
  settle(mesh, t);
  const at: Point = [discs[3 * t]!, discs[3 * t + 1]!];
  const touch = (corner: 0 | 1 | 2) => nearestOnPiece(boundary, triangles[3 * t + corner]!, at);
  return { at, radius: discs[3 * t + 2]!, touches: [touch(0), touch(1), touch(2)] };
}

/** Radius of a triangle's exact disc, mm. */
export function roomAt(mesh: WaysMesh, t: number): number {
  settle(mesh, t);
  return mesh.discs[3 * t + 2]!;
}

/**
 * Room of somebody in a triangle's exact disc who touches one of the triangle's outlines, mm across; 0 where it only
 * touches the others.
 */
export function roomTouching(mesh: WaysMesh, t: number, side: number): number {
  const { boundary, triangles, discs } = mesh;
  const radius = roomAt(mesh, t);
  const at: Point = [discs[3 * t]!, discs[3 * t + 1]!];
  for (let i = 3 * t; i < 3 * t + 3; i++) {
    const sample = triangles[i]!;
    if (boundary.owner[sample] !== side) continue;
    const [x, y] = nearestOnPiece(boundary, sample, at);
    if (Math.hypot(x - at[0], y - at[1]) <= radius + TOUCHING) return 2 * radius;
  }
  return 0;
}

/** Discs this near to an outline touch it, mm. */
const TOUCHING = 0.01;

/** Works a triangle's exact disc out, once. */
export function settle(mesh: WaysMesh, t: number): void {
  const { boundary, triangles, centres, discs } = mesh;
  if (!Number.isNaN(discs[3 * t + 2]!)) return;
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  middle.x = centres[2 * t]!;
  middle.y = centres[2 * t + 1]!;
  const { x, y, radius } = touching(boundary, a, b, c, middle);
  discs[3 * t] = x;
  discs[3 * t + 1] = y;
  discs[3 * t + 2] = Math.min(radius, roomBesideWall(mesh, t, a, b, c), fourth(mesh, t, x, y, radius));
}

/** How near to the disc's middle the outlines come that the triangles next to this one have: almost as near as its own. */
function fourth(
  { boundary, triangles, halfedges }: WaysMesh,
  t: number,
  x: number,
  y: number,
  radius: number,
): number {
  const { coords, step } = boundary;
  // An outline this near has a sample that is not much farther.
  const most = radius * radius + (step * step) / 4;
  let nearest = Infinity;
  for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
    const across = halfedges[edge]!;
    if (across < 0) continue;
    const p = triangles[edge]!;
    const q = triangles[nextInTriangle(edge)]!;
    if (boundary.next[p] === q || boundary.previous[p] === q) continue;
    const apex = triangles[nextInTriangle(nextInTriangle(across))]!;
    const dx = coords[2 * apex]! - x;
    const dy = coords[2 * apex + 1]! - y;
    if (dx * dx + dy * dy > most) continue;
    nearest = Math.min(nearest, farFromPiece(boundary, apex, x, y));
  }
  return nearest;
}

/** Where to begin: written in place, for it is asked for every triangle that may be narrow. */
const middle = { x: 0, y: 0 };

/**
 * A circle whose middle lies beyond one of the triangle's own walls is nowhere to stand: another outline comes so near
 * to that wall that there is only the strip between the two. Infinity for all other triangles.
 */
function roomBesideWall({ boundary, centres }: WaysMesh, t: number, a: number, b: number, c: number): number {
  const [x, y] = [centres[2 * t]!, centres[2 * t + 1]!];
  return Math.min(
    beside(boundary, a, b, c, x, y),
    beside(boundary, b, c, a, x, y),
    beside(boundary, c, a, b, x, y),
  );
}

function beside(boundary: Boundary, p: number, q: number, apex: number, x: number, y: number): number {
  const { coords, next, previous } = boundary;
  if (next[p] !== q && previous[p] !== q) return Infinity;
  // In a sharp corner of one outline the apex is the wall's neighbour, and shares an end with it.
  if (next[apex] === p || next[apex] === q || previous[apex] === p || previous[apex] === q) return Infinity;
  const [px, py] = [coords[2 * p]!, coords[2 * p + 1]!];
  const [ux, uy] = [coords[2 * q]! - px, coords[2 * q + 1]! - py];
  const ofApex = ux * (coords[2 * apex + 1]! - py) - uy * (coords[2 * apex]! - px);
  if (ofApex * (ux * (y - py) - uy * (x - px)) >= 0) return Infinity;
  return Math.min(pieceWidth(boundary, apex, p), pieceWidth(boundary, apex, q)) / 2;
}

/** Halvings of the way from one middle to the next: some metres come down to less than a micrometre. */
const HALVINGS = 34;

/**
 * The disc that touches the outlines about both ends of an edge and has a point on its rim.
 * @param edge of a triangle whose exact disc holds the point, while that of the triangle beyond does not
 */
export function discAtEdge(mesh: WaysMesh, edge: number, point: Point): Disc {
  const { boundary, triangles, halfedges, discs } = mesh;
  const [t, u] = [triangleOf(edge), triangleOf(halfedges[edge]!)];
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  settle(mesh, t);
  settle(mesh, u);
  const [wayX, wayY] = [discs[3 * u]! - discs[3 * t]!, discs[3 * u + 1]! - discs[3 * t + 1]!];
  let [low, high] = [0, 1];
  let best = { x: discs[3 * t]!, y: discs[3 * t + 1]!, radius: discs[3 * t + 2]! };
  for (let i = 0; i < HALVINGS; i++) {
    const share = (low + high) / 2;
    middle.x = discs[3 * t]! + share * wayX;
    middle.y = discs[3 * t + 1]! + share * wayY;
    const disc = touching(boundary, p, p, q, middle);
    if (Math.hypot(disc.x - point[0], disc.y - point[1]) <= disc.radius) {
      low = share;
      best = { ...disc };
    } else high = share;
  }
  const at: Point = [best.x, best.y];
  return {
    at,
    radius: best.radius,
    touches: [point, nearestOnPiece(boundary, p, at), nearestOnPiece(boundary, q, at)],
  };
}
