import type { Point } from "../geometry/types.ts";
import { widthOnWay } from "./piece-gap.ts";
import { settle } from "./ways-disc.ts";
import { isInMesh, nextInTriangle, triangleOf, type WaysMesh, type WaysOut } from "./ways-mesh.ts";

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

  const hasArea = (t: number): boolean => {
    const [a, b, c] = [triangles[3 * t]!, triangles[3 * t + 1]!, triangles[3 * t + 2]!];
    const [ax, ay] = [coords[2 * a]!, coords[2 * a + 1]!];
    const [ux, uy] = [coords[2 * b]! - ax, coords[2 * b + 1]! - ay];
    return Math.abs(ux * (coords[2 * c + 1]! - ay) - uy * (coords[2 * c]! - ax)) > SLIVER;
  };

  /** Walks to the triangle; -1 where the walk ends at a sliver, or at the outside. */
  const walkTo = (point: Point): number => {
    // In a Delaunay triangulation a walk towards the point never turns in circles; the count only guards the loop.
    for (let steps = 0; steps <= count; steps++) {
      const edge = edgeTowards(current, point);
      if (edge < 0) return hasArea(current) ? current : -1;
      const beyond = halfedges[edge]!;
      if (beyond < 0) return -1;
      current = triangleOf(beyond);
    }
    return -1;
  };

  return (point) => {
    if (count === 0) return -1;
    const walked = walkTo(point);
    if (walked >= 0 || !isInMesh(mesh, point)) return walked;
    // Along a straight outline rounding leaves slivers with hardly an inside, which lead the walk astray.
    for (let t = 0; t < count; t++) {
      if (edgeTowards(t, point) < 0 && hasArea(t)) {
        current = t;
        return t;
      }
    }
    return -1;
  };
}

/** Twice the area of a triangle that is nothing but rounding, mm². */
const SLIVER = 1e-3;

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
export function reachable(mesh: WaysMesh, widest: Float64Array, least: number): (point: Point) => boolean {
  // Whoever asks about a place asks about the one next to it next.
  let nearest = 0;
  return (point) => {
    const known = mesh.carried?.waysOut.get(point);
    if (known?.width === least && isAsBefore(mesh, known)) {
      nearest = known.edge;
      return leadsOn(mesh, widest, known);
    }
    if (!isInMesh(mesh, point)) return false;
    nearest = nearestSample(mesh, nearest, point);
    const between = backingAway(mesh, nearest, point);
    if (!between) return false;
    const { edge } = between;
    const found: WaysOut = {
      edge,
      width: least,
      here: comesFrom(mesh, least, between, triangleOf(edge)),
      beyond: comesFrom(mesh, least, between, triangleOf(mesh.halfedges[edge]!)),
    };
    if (mesh.carried && isAsBefore(mesh, found)) mesh.carried.waysOut.set(point, found);
    return leadsOn(mesh, widest, found);
  };
}

const leadsOn = (
  { halfedges }: WaysMesh,
  widest: Float64Array,
  { edge, width, here, beyond }: WaysOut,
): boolean =>
  (here && widest[triangleOf(edge)]! >= width) || (beyond && widest[triangleOf(halfedges[edge]!)]! >= width);

/**
 * Whether what moves has no part in the ways out of a place. A sample nearer to the place than the one before takes the
 * line beyond it over as well, with one of its ends at least.
 */
const isAsBefore = ({ carried, halfedges }: WaysMesh, { edge }: WaysOut): boolean =>
  carried?.touched[triangleOf(edge)] === 0 && carried.touched[triangleOf(halfedges[edge]!)] === 0;

/** Whether somebody so wide can come from a triangle's middle to a place between two outlines. */
function comesFrom(mesh: WaysMesh, least: number, { edge, at: [x, y] }: Between, t: number): boolean {
  const { boundary, triangles, discs } = mesh;
  settle(mesh, t);
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  return widthOnWay(boundary, p, q, x, y, discs[3 * t]!, discs[3 * t + 1]!) >= least;
}

/**
 * From a sample on to ever nearer neighbours: in a Delaunay triangulation this ends at the nearest of all.
 * @param from, returns half-edges that start at the sample
 */
function nearestSample(mesh: WaysMesh, from: number, [x, y]: Point): number {
  const { triangles, halfedges, boundary } = mesh;
  const { coords } = boundary;
  let best = from;
  let least = awayFrom(coords, triangles[from]!, x, y);
  for (let around = -1; around !== best; ) {
    around = best;
    let edge = around;
    let turnedBack = false;
    for (;;) {
      const next = nextInTriangle(edge);
      const far = awayFrom(coords, triangles[next]!, x, y);
      if (far < least) {
        best = next;
        least = far;
      }
      const across = halfedges[edge]!;
      if (across >= 0) edge = nextInTriangle(across);
      else if (turnedBack) break;
      else {
        edge = outermost(halfedges, around);
        const last = nextInTriangle(nextInTriangle(edge));
        const farLast = awayFrom(coords, triangles[last]!, x, y);
        if (farLast < least) {
          best = last;
          least = farLast;
        }
        turnedBack = true;
      }
      if (edge === around && !turnedBack) break;
    }
  }
  return best;
}

function awayFrom(coords: Float64Array, sample: number, x: number, y: number): number {
  const dx = coords[2 * sample]! - x;
  const dy = coords[2 * sample + 1]! - y;
  return dx * dx + dy * dy;
}

/** Of the half-edges that start where this one does, at a corner of the outside: the one that the round begins with. */
function outermost(halfedges: Int32Array, edge: number): number {
  for (let first = edge; ; ) {
    const before = halfedges[nextInTriangle(nextInTriangle(first))]!;
    if (before < 0) return first;
    first = before;
  }
}

interface Between {
  readonly edge: number;
  readonly at: Point;
}

/** Where one comes to stand between two outlines who backs away from a sample through a point. */
function backingAway(mesh: WaysMesh, from: number, point: Point): Between | null {
  const { triangles, halfedges, centres, boundary } = mesh;
  const sample = triangles[from]!;
  const x = boundary.coords[2 * sample]!;
  const y = boundary.coords[2 * sample + 1]!;
  const ux = point[0] - x;
  const uy = point[1] - y;
  for (let edge = from, turnedBack = false; ; ) {
    const across = halfedges[edge]!;
    if (across < 0) {
      if (turnedBack) return null;
      edge = outermost(halfedges, from);
      turnedBack = true;
      continue;
    }
    const t = triangleOf(edge);
    const u = triangleOf(across);
    const one = ux * (centres[2 * t + 1]! - y) - uy * (centres[2 * t]! - x);
    const other = ux * (centres[2 * u + 1]! - y) - uy * (centres[2 * u]! - x);
    if (one > 0 !== other > 0) {
      const share = one / (one - other);
      const hitX = centres[2 * t]! + share * (centres[2 * u]! - centres[2 * t]!);
      const hitY = centres[2 * t + 1]! + share * (centres[2 * u + 1]! - centres[2 * t + 1]!);
      if (ux * (hitX - x) + uy * (hitY - y) > 0) return { edge, at: [hitX, hitY] };
    }
    edge = nextInTriangle(across);
    if (edge === from && !turnedBack) return null;
  }
}
