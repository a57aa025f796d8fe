import { INCH } from "../units/length.ts";
import { widthOnWay } from "./piece-gap.ts";
import { settle } from "./ways-disc.ts";
import { crosses, nextInTriangle, triangleOf, WALL, type WaysMesh, widthOfSamples } from "./ways-mesh.ts";

/**
 * Clear width of the step from one triangle to the next, mm; `WALL` through an outline.
 *
 * The walker goes midway between the outlines about both ends of the edge, from the one triangle's exact disc to the
 * other's. Where the outlines come nearest to each other in between, their distance there is the width, exactly; where
 * they do not, the room only grows or shrinks on the way.
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
  const most = widthOfSamples(mesh, edge);
  if (most === WALL) return WALL;
  const { boundary, discs, halfedges } = mesh;
  const pinch = pinchThrough(mesh, edge);
  const room = 2 * Math.min(discs[3 * triangleOf(edge) + 2]!, discs[3 * triangleOf(halfedges[edge]!) + 2]!);
  const least = Math.sqrt(Math.max(0, most * most - boundary.step * boundary.step));
  return Math.max(least, Math.min(room, pinch));
}

/** A squeeze so narrow that it is shut wherever on the way it lies, mm: outlines about to touch leave no room to look. */
const SHUT = 3 * INCH;

/** Width of the narrowest place on the step from one triangle to the next, if it has one of its own; else Infinity. */
export function pinchThrough(mesh: WaysMesh, edge: number): number {
  const { boundary, triangles, halfedges, discs } = mesh;
  const t = triangleOf(edge);
  const u = triangleOf(halfedges[edge]!);
  settle(mesh, t);
  settle(mesh, u);
  return widthOnWay(
    boundary,
    triangles[edge]!,
    triangles[nextInTriangle(edge)]!,
    discs[3 * t]!,
    discs[3 * t + 1]!,
    discs[3 * u]!,
    discs[3 * u + 1]!,
    crosses(mesh, edge) ? SHUT : 0,
  );
}
