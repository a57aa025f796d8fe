import Delaunator from "delaunator";
import type { Point } from "../geometry/types.ts";
import type { Boundary } from "./boundary.ts";
import { pieceWidth } from "./piece-gap.ts";

/**
 * Free ground as a graph: the Delaunay triangles of the boundary samples. The middle of a triangle's circle is where a
 * walker has most room (a corner of the Voronoi diagram), and its edges are what a walker squeezes through. A disc can
 * follow the Voronoi diagram wherever it can go at all.
 * @source C. O'Dunlaing and C. Yap, "A retraction method for planning the motion of a disc", J. Algorithms 6, 1985
 */
export interface WaysMesh {
  readonly boundary: Boundary;
  /** Samples of each triangle's corners, three a triangle; the half-edge of the same number runs from it to the next. */
  readonly triangles: Uint32Array;
  /** The same edge as seen from the other triangle, or -1 on the outside. */
  readonly halfedges: Int32Array;
  /** Middle and radius of each triangle's circle. */
  readonly centres: Float64Array;
  readonly radii: Float64Array;
  /** Clear width through an edge, worked out when first asked for; see `widthThrough`. */
  readonly widths: Float64Array;
}

/** The width of an outline: nobody gets through, not even as a last resort. */
export const WALL = -1;

export function meshOf(boundary: Boundary): WaysMesh {
  const { triangles, halfedges } = new Delaunator(boundary.coords);
  const count = triangles.length / 3;
  const centres = new Float64Array(2 * count);
  const radii = new Float64Array(count);
  for (let t = 0; t < count; t++) circumscribe(boundary.coords, triangles, t, centres, radii);
  const widths = new Float64Array(halfedges.length).fill(Number.NaN);
  return { boundary, triangles, halfedges, centres, radii, widths };
}

function circumscribe(
  coords: Float64Array,
  triangles: Uint32Array,
  t: number,
  centres: Float64Array,
  radii: Float64Array,
): void {
  const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
  const [ax, ay] = [coords[2 * a]!, coords[2 * a + 1]!];
  const [bx, by] = [coords[2 * b]! - ax, coords[2 * b + 1]! - ay];
  const [cx, cy] = [coords[2 * c]! - ax, coords[2 * c + 1]! - ay];
  const twice = 2 * (bx * cy - by * cx);
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * b2 - by * c2) / twice, (bx * c2 - cx * b2) / twice];
  const radius = Math.hypot(x, y);
  centres[2 * t] = ax + x;
  centres[2 * t + 1] = ay + y;
  // A triangle without area has no circle, and no room in it either.
  radii[t] = Number.isFinite(radius) ? radius : 0;
}

export const nextInTriangle = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);
export const triangleOf = (edge: number): number => (edge - (edge % 3)) / 3;
export const centreOf = ({ centres }: WaysMesh, t: number): Point => [centres[2 * t]!, centres[2 * t + 1]!];

/** Whether an edge is part of an outline: two neighbours of one ring. */
export function isWall({ boundary, triangles }: WaysMesh, edge: number): boolean {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  return boundary.next[p] === q || boundary.previous[p] === q;
}

/**
 * Clear width of the step from one triangle to the next, mm; `WALL` through an outline.
 *
 * Where the walker's line crosses the edge, the place is a narrowest one: its width is that between the outlines about
 * both samples, exactly. Where it does not, the room only grows or shrinks from one middle to the next.
 */
export function widthThrough(mesh: WaysMesh, edge: number): number {
  const known = mesh.widths[edge]!;
  if (!Number.isNaN(known)) return known;
  const width = measured(mesh, edge);
  mesh.widths[edge] = width;
  mesh.widths[mesh.halfedges[edge]!] = width;
  return width;
}

function measured(mesh: WaysMesh, edge: number): number {
  if (isWall(mesh, edge)) return WALL;
  const { boundary, triangles, radii, halfedges } = mesh;
  return crosses(mesh, edge)
    ? pieceWidth(boundary, triangles[edge]!, triangles[nextInTriangle(edge)]!)
    : 2 * Math.min(radii[triangleOf(edge)]!, radii[triangleOf(halfedges[edge]!)]!);
}

/** Whether the line between the middles of two neighbouring triangles crosses the edge they share. */
export function crosses(
  { boundary: { coords }, triangles, centres, halfedges }: WaysMesh,
  edge: number,
): boolean {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const [px, py] = [coords[2 * p]!, coords[2 * p + 1]!];
  const [ux, uy] = [coords[2 * q]! - px, coords[2 * q + 1]! - py];
  const sideOf = (x: number, y: number) => ux * (y - py) - uy * (x - px);
  const [t, u] = [triangleOf(edge), triangleOf(halfedges[edge]!)];
  const apex = triangles[nextInTriangle(nextInTriangle(edge))]!;
  const own = Math.sign(sideOf(coords[2 * apex]!, coords[2 * apex + 1]!));
  const here = own * sideOf(centres[2 * t]!, centres[2 * t + 1]!);
  const there = own * sideOf(centres[2 * u]!, centres[2 * u + 1]!);
  return here >= 0 && there <= 0;
}
