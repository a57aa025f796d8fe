import type { Point } from "../geometry/types.ts";
import { nearestOnPiece } from "./piece-gap.ts";
import { centreOf, nextInTriangle, type WaysMesh } from "./ways-mesh.ts";

export interface Disc {
  readonly at: Point;
  readonly radius: number;
  /** Where it touches. */
  readonly touches: readonly [Point, Point, Point];
}

type Foot = (at: Point) => Point;

/**
 * The disc that touches the outlines about a triangle's three samples, not only the samples: what really fits there.
 * It is never taken to be larger than the triangle's own circle.
 */
export function exactDisc(mesh: WaysMesh, t: number): Disc {
  const { boundary, triangles, radii } = mesh;
  const foot = (corner: number): Foot => {
    const sample = triangles[3 * t + corner]!;
    return (at) => nearestOnPiece(boundary, sample, at);
  };
  const disc = touching([foot(0), foot(1), foot(2)], centreOf(mesh, t), boundary.step);
  return { ...disc, radius: Math.min(disc.radius, radii[t]!) };
}

/** The disc that touches a point and the outlines about both ends of an edge, or null if there is none. */
export function discAtEdge({ boundary, triangles }: WaysMesh, edge: number, point: Point): Disc | null {
  const { coords } = boundary;
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const first = circleThrough(
    point,
    [coords[2 * p]!, coords[2 * p + 1]!],
    [coords[2 * q]!, coords[2 * q + 1]!],
  );
  if (!first) return null;
  const feet: readonly [Foot, Foot, Foot] = [
    () => point,
    (at) => nearestOnPiece(boundary, p, at),
    (at) => nearestOnPiece(boundary, q, at),
  ];
  return touching(feet, first, boundary.step);
}

/** Newton steps until the disc touches all three; each doubles the digits, so four are plenty. */
const NEWTON_STEPS = 4;

function touching(feet: readonly [Foot, Foot, Foot], first: Point, step: number): Disc {
  const touchesFrom = (from: Point) => [feet[0](from), feet[1](from), feet[2](from)] as const;
  let at = first;
  for (let i = 0; i < NEWTON_STEPS; i++) {
    const better = equidistant(at, touchesFrom(at));
    // Far from where it began the pieces no longer speak for their outlines.
    if (!better || Math.hypot(better[0] - at[0], better[1] - at[1]) > step) break;
    at = better;
  }
  const touches = touchesFrom(at);
  return { at, radius: Math.min(...touches.map(([x, y]) => Math.hypot(x - at[0], y - at[1]))), touches };
}

/** Middle of the circle through three points; null where they lie in a line. */
function circleThrough([ax, ay]: Point, b: Point, c: Point): Point | null {
  const [bx, by, cx, cy] = [b[0] - ax, b[1] - ay, c[0] - ax, c[1] - ay];
  const twice = 2 * (bx * cy - by * cx);
  const [b2, c2] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * b2 - by * c2) / twice, (bx * c2 - cx * b2) / twice];
  return Number.isFinite(x) && Number.isFinite(y) ? [ax + x, ay + y] : null;
}

/** One Newton step towards the point equally far from three outlines, each taken as straight about its foot. */
function equidistant(at: Point, feet: readonly Point[]): Point | null {
  const rows = feet.map(([x, y]) => {
    const far = Math.hypot(at[0] - x, at[1] - y);
    return { far, nx: (at[0] - x) / far, ny: (at[1] - y) / far };
  });
  const [a, b, c] = rows;
  if (!a || !b || !c) return null;
  const [ux, uy, u] = [a.nx - b.nx, a.ny - b.ny, b.far - a.far];
  const [vx, vy, v] = [a.nx - c.nx, a.ny - c.ny, c.far - a.far];
  const determinant = ux * vy - uy * vx;
  const [x, y] = [(u * vy - v * uy) / determinant, (ux * v - vx * u) / determinant];
  return Number.isFinite(x) && Number.isFinite(y) ? [at[0] + x, at[1] + y] : null;
}
