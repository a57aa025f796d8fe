import type { Point } from "../geometry/types.ts";
import { pieceGap, widthOnWay } from "./piece-gap.ts";
import { type Disc, discAtEdge, exactDisc } from "./ways-disc.ts";
import {
  type Begin,
  centreOf,
  type FirstSteps,
  nextInTriangle,
  triangleOf,
  type WaysMesh,
} from "./ways-mesh.ts";
import { widthThrough } from "./ways-width.ts";

/**
 * The first steps of a way: its walker touches the point where it begins, and may be of any width that fits there.
 *
 * Discs that touch the point and fit lie about the middles of the triangles whose exact disc holds it, and on the lines
 * from one of these to a triangle whose disc does not: there the point lies on the rim of one disc, and it may be the
 * roomiest.
 * @param begin is told of each of the first triangles and of the narrowest place up to its middle
 */
export function setOut(
  mesh: WaysMesh,
  at: Point,
  locate: (point: Point) => number,
  begin: (t: number, narrowest: Begin) => void,
): void {
  const known = mesh.carried?.firstSteps.get(at);
  const steps = known && isAsBefore(mesh, known) ? known : firstSteps(mesh, at, locate);
  if (steps !== known && isAsBefore(mesh, steps)) mesh.carried?.firstSteps.set(at, steps);
  for (const { t, narrowest } of steps.begun) begin(t, narrowest);
}

/** Whether what moves has no part in them. */
function isAsBefore({ carried }: WaysMesh, { about }: FirstSteps): boolean {
  if (!carried || about.size === 0) return false;
  for (const t of about) if (carried.touched[t] !== 0) return false;
  return true;
}

function firstSteps(mesh: WaysMesh, at: Point, locate: (point: Point) => number): FirstSteps {
  const isHeld = (t: number) => {
    const { at: middle, radius } = exactDisc(mesh, t);
    return Math.hypot(middle[0] - at[0], middle[1] - at[1]) <= radius;
  };
  const holding = about(mesh, at, locate);
  const looked = new Set(holding);
  const begun: FirstSteps["begun"][number][] = [];
  for (const t of holding) {
    const held = isHeld(t);
    if (held) begun.push({ t, narrowest: acrossDisc(mesh, t, exactDisc(mesh, t)) });
    for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
      const across = mesh.halfedges[edge]!;
      if (across < 0) continue;
      const u = triangleOf(across);
      looked.add(u);
      if (isShut(mesh, edge) || held === isHeld(u)) continue;
      const rim = held ? edge : across;
      begun.push({ t: triangleOf(mesh.halfedges[rim]!), narrowest: fromRim(mesh, rim, at) });
    }
  }
  return { about: looked, begun };
}

/**
 * The triangles whose circle holds a point, without stepping through an outline. Any disc that touches the point and
 * fits lies within one of them.
 */
function about(mesh: WaysMesh, at: Point, locate: (point: Point) => number): number[] {
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

/** Whether an edge is part of an outline, or the outlines about its ends touch where one would come through. */
const isShut = (mesh: WaysMesh, edge: number): boolean => widthThrough(mesh, edge) <= 0;

/** From the disc on an edge that has the point on its rim, to the middle of the triangle beyond. */
function fromRim(mesh: WaysMesh, edge: number, at: Point): Begin {
  const disc = discAtEdge(mesh, edge, at);
  const u = triangleOf(mesh.halfedges[edge]!);
  const beyond = exactDisc(mesh, u);
  const samples = [mesh.triangles[edge]!, mesh.triangles[nextInTriangle(edge)]!] as const;
  const [, from, to] = disc.touches;
  let narrowest: Begin = { width: 2 * disc.radius, samples, from, to };
  if (2 * beyond.radius < narrowest.width) narrowest = acrossDisc(mesh, u, beyond);
  const pinch = widthOnWay(mesh.boundary, ...samples, ...disc.at, ...beyond.at);
  if (pinch < narrowest.width) narrowest = { ...pieceGap(mesh.boundary, ...samples), samples };
  return narrowest;
}

/** The two places farthest apart that a triangle's disc touches. */
export function acrossDisc(mesh: WaysMesh, t: number, disc: Disc): Begin {
  const pairs = [
    [0, 1],
    [1, 2],
    [2, 0],
  ] as const;
  const apart = ([i, j]: readonly [0 | 1 | 2, 0 | 1 | 2]) =>
    Math.hypot(disc.touches[i][0] - disc.touches[j][0], disc.touches[i][1] - disc.touches[j][1]);
  const [i, j] = pairs.reduce((a, b) => (apart(b) > apart(a) ? b : a));
  return {
    width: 2 * disc.radius,
    samples: [mesh.triangles[3 * t + i]!, mesh.triangles[3 * t + j]!],
    from: disc.touches[i],
    to: disc.touches[j],
  };
}
