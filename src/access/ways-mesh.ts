import Delaunator from "delaunator";
import type { Point } from "../geometry/types.ts";
import type { Boundary } from "./boundary.ts";

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
  /** The corners of the outside, as samples: no two sides of it in line. */
  readonly hull: readonly number[];
  /** Middle and radius of each triangle's circle. */
  readonly centres: Float64Array;
  readonly radii: Float64Array;
  /** Middle and radius of each triangle's exact disc, NaN until first asked for; see `settle`. */
  readonly discs: Float64Array;
  /** Width of the samples of an edge, NaN until first asked for; see `widthOfSamples`. */
  readonly ofSamples: Float64Array;
  /** Clear width through an edge, worked out when first asked for; see `widthThrough` in `ways-width.ts`. */
  readonly widths: Float64Array;
  /** What still holds of the mesh before, while one thing moves; null where the mesh was worked out afresh. */
  readonly carried: Carried | null;
}

/** How much of a mesh is that of all that stays where it is, without the thing that moves. */
export interface Carried {
  /** Of each triangle: 0 where it and those next to it are as before, 1 where only it is, 2 where it is not. */
  readonly touched: Uint8Array;
  /** Ways out of places to stand, as far as nothing that moves takes part; see `reachable`. */
  readonly waysOut: WeakMap<Point, WaysOut>;
  /** First steps from where ways begin, likewise; see `setOut`. */
  readonly firstSteps: WeakMap<Point, FirstSteps>;
}

/** From a place on the line between two middles: whether somebody so wide gets to the one and to the other. */
export interface WaysOut {
  /** The half-edge whose two outlines the somebody comes to stand between; it starts at the nearest sample. */
  readonly edge: number;
  readonly width: number;
  readonly here: boolean;
  readonly beyond: boolean;
}

/** The narrowest place of somebody who sets out, and the samples whose outlines it lies between. */
export interface Begin {
  readonly width: number;
  readonly samples: readonly [number, number];
  readonly from: Point;
  readonly to: Point;
}

/** The first steps from one place, and all triangles that have a say in them. */
export interface FirstSteps {
  readonly about: ReadonlySet<number>;
  readonly begun: readonly { readonly t: number; readonly narrowest: Begin }[];
}

/** The width of an outline: nobody gets through, not even as a last resort. */
export const WALL = -1;

export function meshOf(boundary: Boundary): WaysMesh {
  const { triangles, halfedges, hull } = new Delaunator(boundary.coords);
  const count = triangles.length / 3;
  const centres = new Float64Array(2 * count);
  const radii = new Float64Array(count);
  for (let t = 0; t < count; t++) circumscribe(boundary.coords, triangles, t, centres, radii);
  const widths = new Float64Array(halfedges.length).fill(Number.NaN);
  const ofSamples = widths.slice();
  const discs = new Float64Array(3 * count).fill(Number.NaN);
  const corners = cornersOf(hull, boundary.coords);
  return {
    boundary,
    triangles,
    halfedges,
    hull: corners,
    centres,
    radii,
    discs,
    ofSamples,
    widths,
    carried: null,
  };
}

function cornersOf(hull: Uint32Array, coords: Float64Array): number[] {
  const corners: number[] = [];
  hull.forEach((b, i) => {
    const [a, c] = [hull[i === 0 ? hull.length - 1 : i - 1]!, hull[i + 1 === hull.length ? 0 : i + 1]!];
    const [ux, uy] = [coords[2 * b]! - coords[2 * a]!, coords[2 * b + 1]! - coords[2 * a + 1]!];
    const [vx, vy] = [coords[2 * c]! - coords[2 * b]!, coords[2 * c + 1]! - coords[2 * b + 1]!];
    if (ux * vy !== uy * vx) corners.push(b);
  });
  return corners;
}

/** Whether a point lies within the outside of the mesh, or on it. */
export function isInMesh({ boundary: { coords }, hull }: WaysMesh, [x, y]: Point): boolean {
  let previous = hull.at(-1);
  let turn = 0;
  for (const corner of hull) {
    const [ax, ay] = [coords[2 * previous!]!, coords[2 * previous! + 1]!];
    const side = (coords[2 * corner]! - ax) * (y - ay) - (coords[2 * corner + 1]! - ay) * (x - ax);
    if (side * turn < 0) return false;
    if (side !== 0) turn = side;
    previous = corner;
  }
  return hull.length > 2;
}

/** Writes the middle and the radius of a triangle's circle down. */
export function circumscribe(
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
  const radius = Math.sqrt(x * x + y * y);
  centres[2 * t] = ax + x;
  centres[2 * t + 1] = ay + y;
  // A triangle without area has no circle, and no room in it either.
  radii[t] = Number.isFinite(radius) ? radius : 0;
}

export const nextInTriangle = (edge: number): number => (edge % 3 === 2 ? edge - 2 : edge + 1);
export const triangleOf = (edge: number): number => (edge / 3) | 0;
export const centreOf = ({ centres }: WaysMesh, t: number): Point => [centres[2 * t]!, centres[2 * t + 1]!];

/** Whether an edge is part of an outline: two neighbours of one ring. */
export function isWall({ boundary, triangles }: WaysMesh, edge: number): boolean {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  return boundary.next[p] === q || boundary.previous[p] === q;
}

/**
 * Clear width of the step from one triangle to the next by the samples alone, which is never less than the exact one: at most so much by half a step each way (see `isSurelyOpen`).
 */
export function widthOfSamples(mesh: WaysMesh, edge: number): number {
  const known = mesh.ofSamples[edge]!;
  if (!Number.isNaN(known)) return known;
  const width = betweenSamples(mesh, edge);
  mesh.ofSamples[edge] = width;
  mesh.ofSamples[mesh.halfedges[edge]!] = width;
  return width;
}

function betweenSamples(mesh: WaysMesh, edge: number): number {
  if (isWall(mesh, edge)) return WALL;
  const {
    boundary: { coords },
    triangles,
    radii,
    halfedges,
  } = mesh;
  if (!crosses(mesh, edge))
    return 2 * Math.min(radii[triangleOf(edge)]!, radii[triangleOf(halfedges[edge]!)]!);
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const [dx, dy] = [coords[2 * q]! - coords[2 * p]!, coords[2 * q + 1]! - coords[2 * p + 1]!];
  return Math.sqrt(dx * dx + dy * dy);
}

/**
 * Whether somebody gets through for sure, told by the samples alone. A place that is `d` from the nearest outline is
 * within half a step more, square to it, of a sample.
 */
export const isSurelyOpen = ({ boundary: { step } }: WaysMesh, ofSamples: number, width: number): boolean =>
  ofSamples >= 0 && ofSamples * ofSamples >= width * width + step * step;

/**
 * Whether the line between the middles of two neighbouring triangles crosses the edge they share. All triangles run the
 * same way round, so that each lies on the same side of its own edges.
 */
export function crosses(
  { boundary: { coords }, triangles, centres, halfedges }: WaysMesh,
  edge: number,
): boolean {
  const p = triangles[edge]!;
  const q = triangles[nextInTriangle(edge)]!;
  const px = coords[2 * p]!;
  const py = coords[2 * p + 1]!;
  const ux = coords[2 * q]! - px;
  const uy = coords[2 * q + 1]! - py;
  const t = triangleOf(edge);
  const u = triangleOf(halfedges[edge]!);
  return (
    ux * (centres[2 * t + 1]! - py) - uy * (centres[2 * t]! - px) <= 0 &&
    ux * (centres[2 * u + 1]! - py) - uy * (centres[2 * u]! - px) >= 0
  );
}
