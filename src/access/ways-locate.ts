import type { Point } from "../geometry/types.ts";
import { centreOf, nextInTriangle, triangleOf, type WaysMesh, widthThrough } from "./ways-mesh.ts";

/** The triangle a point lies in, or -1 outside all of them. Found by walking from where the last one was. */
export function locator(mesh: WaysMesh): (point: Point) => number {
  const { boundary, triangles, halfedges } = mesh;
  const { coords } = boundary;
  const count = triangles.length / 3;
  let current = 0;

  /** The edge of a triangle beyond which the point lies, or -1 if it lies inside. */
  const edgeTowards = (t: number, [x, y]: Point): number => {
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
      const apex = triangles[nextInTriangle(nextInTriangle(edge))]!;
      const [px, py] = [coords[2 * p]!, coords[2 * p + 1]!];
      const [ux, uy] = [coords[2 * q]! - px, coords[2 * q + 1]! - py];
      const inside = ux * (coords[2 * apex + 1]! - py) - uy * (coords[2 * apex]! - px);
      const side = ux * (y - py) - uy * (x - px);
      if (side * inside < 0) return edge;
    }
    return -1;
  };

  return (point) => {
    if (count === 0) return -1;
    // In a Delaunay triangulation a walk towards the point never turns in circles; the count only guards the loop.
    for (let steps = 0; steps <= count; steps++) {
      const edge = edgeTowards(current, point);
      if (edge < 0) return current;
      const beyond = halfedges[edge]!;
      if (beyond < 0) return -1;
      current = triangleOf(beyond);
    }
    return -1;
  };
}

/**
 * For a way of a given width: whether somebody of that width, standing at a point, can have come there.
 *
 * Whoever backs away from the nearest outline gains room until they stand between two outlines, on the line between
 * the middles of two triangles; from there they go to one of these middles, unless the outlines pinch in between.
 *
 * @param widest width of the widest way to each triangle
 * @param least width needed, mm
 * @returns false too for a point outside the mesh
 */
export function reachable(
  mesh: WaysMesh,
  widest: Float64Array,
  least: number,
  locate: (point: Point) => number,
): (point: Point) => boolean {
  return (point) => {
    const t = locate(point);
    if (t < 0) return false;
    const between = backingAway(mesh, nearestSample(mesh, t, point), point);
    if (!between) return false;
    const pinched = widthThrough(mesh, between.edge) < least;
    return [between.edge, mesh.halfedges[between.edge]!]
      .map(triangleOf)
      .some((end) => widest[end]! >= least && !(pinched && pinchOnWay(mesh, between, end)));
  };
}

interface NearestSample {
  /** A half-edge that starts at the sample. */
  readonly edge: number;
  readonly at: Point;
}

/** From the corners of a triangle on to ever nearer neighbours: in a Delaunay triangulation this ends at the nearest. */
function nearestSample(mesh: WaysMesh, t: number, [x, y]: Point): NearestSample {
  const { triangles, boundary, halfedges } = mesh;
  const away = (edge: number) => {
    const sample = triangles[edge]!;
    return Math.hypot(boundary.coords[2 * sample]! - x, boundary.coords[2 * sample + 1]! - y);
  };
  let best = [3 * t, 3 * t + 1, 3 * t + 2].reduce((a, b) => (away(b) < away(a) ? b : a));
  for (;;) {
    let nearer = best;
    for (const edge of edgesFrom(halfedges, best)) {
      const neighbour = nextInTriangle(edge);
      if (away(neighbour) < away(nearer)) nearer = neighbour;
    }
    if (nearer === best) break;
    best = nearer;
  }
  const sample = triangles[best]!;
  return { edge: best, at: [boundary.coords[2 * sample]!, boundary.coords[2 * sample + 1]!] };
}

/** All half-edges that start at the same sample as this one. */
function edgesFrom(halfedges: Int32Array, first: number): number[] {
  const found = [first];
  for (let edge = first; ; ) {
    const across = halfedges[edge]!;
    if (across < 0) break;
    edge = nextInTriangle(across);
    if (edge === first) return found;
    found.push(edge);
  }
  // An end of the outside was met: the rest lies the other way round.
  for (let edge = first; ; ) {
    edge = halfedges[nextInTriangle(nextInTriangle(edge))]!;
    if (edge < 0) return found;
    found.push(edge);
  }
}

interface Between {
  readonly edge: number;
  readonly at: Point;
}

/** Where one comes to stand between two outlines who backs away from a sample through a point. */
function backingAway(mesh: WaysMesh, { edge: first, at }: NearestSample, point: Point): Between | null {
  const [ux, uy] = [point[0] - at[0], point[1] - at[1]];
  for (const edge of edgesFrom(mesh.halfedges, first)) {
    const across = mesh.halfedges[edge]!;
    if (across < 0) continue;
    const [c, d] = [centreOf(mesh, triangleOf(edge)), centreOf(mesh, triangleOf(across))];
    const aside = ux * (c[1] - at[1]) - uy * (c[0] - at[0]);
    const asideNext = ux * (d[1] - at[1]) - uy * (d[0] - at[0]);
    if (aside > 0 === asideNext > 0) continue;
    const share = aside / (aside - asideNext);
    const hit: Point = [c[0] + share * (d[0] - c[0]), c[1] + share * (d[1] - c[1])];
    if (ux * (hit[0] - at[0]) + uy * (hit[1] - at[1]) > 0) return { edge, at: hit };
  }
  return null;
}

/** Whether the narrowest place between the two outlines lies between where one stands and the middle of a triangle. */
function pinchOnWay(
  { boundary: { coords }, triangles, centres }: WaysMesh,
  { edge, at }: Between,
  end: number,
): boolean {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const [px, py, qx, qy] = [coords[2 * p]!, coords[2 * p + 1]!, coords[2 * q]!, coords[2 * q + 1]!];
  const along = (x: number, y: number) => (qy - py) * (x - (px + qx) / 2) - (qx - px) * (y - (py + qy) / 2);
  return along(at[0], at[1]) * along(centres[2 * end]!, centres[2 * end + 1]!) < 0;
}
