import { withPoints } from "../geometry/delaunay-insert.ts";
import { type Boundary, boundaryAlong, type Outlines } from "./boundary.ts";
import type { Side } from "./types.ts";
import { type Carried, circumscribe, meshOf, triangleOf, type WaysMesh } from "./ways-mesh.ts";

/** The mesh of all that stays, into which what moves is put anew at every place it comes to. */
export interface RestMesh {
  readonly mesh: WaysMesh;
  readonly isMoved: (owner: Side) => boolean;
  readonly places: Pick<Carried, "waysOut" | "firstSteps">;
}

/** @param isMoved whether it is an outline of what moves */
export const meshOfRest = (outlines: Outlines, isMoved: (owner: Side) => boolean): RestMesh => ({
  mesh: meshOf(boundaryAlong(only(outlines, (owner) => !isMoved(owner)))),
  isMoved,
  places: { waysOut: new WeakMap(), firstSteps: new WeakMap() },
});

function only({ rings, owners, step }: Outlines, wanted: (owner: Side) => boolean): Outlines {
  const isWanted = (_: unknown, i: number) => wanted(owners[i]!);
  return { rings: rings.filter(isWanted), owners: owners.filter(isWanted), step };
}

/**
 * The mesh of all outlines: that of those that stay, with the samples of the others put in behind them, so that the
 * samples of what stays keep their numbers.
 * @param outlines as closely sampled as those of the rest
 */
export function withMoved(rest: RestMesh, outlines: Outlines): WaysMesh {
  const moved = only(outlines, rest.isMoved);
  const stays = only(outlines, (owner) => !rest.isMoved(owner));
  const boundary = boundaryAlong({
    rings: [...stays.rings, ...moved.rings],
    owners: [...stays.owners, ...moved.owners],
    step: rest.mesh.boundary.step,
  });
  return withSamples(rest, boundary) ?? meshOf(boundary);
}

/** Takes note of what was found out in a mesh about things that stay. */
export function learn(rest: WaysMesh, { carried, discs, ofSamples, widths, halfedges }: WaysMesh): void {
  if (!carried) return;
  const { touched } = carried;
  for (let t = 0; t < rest.radii.length; t++) {
    if (touched[t] !== 0) continue;
    for (let i = 3 * t; i < 3 * t + 3; i++) {
      rest.discs[i] = discs[i]!;
      rest.ofSamples[i] = ofSamples[i]!;
      const across = halfedges[i]!;
      if (across >= 0 && touched[triangleOf(across)] === 0) rest.widths[i] = widths[i]!;
    }
  }
}

function withSamples({ mesh: rest, places }: RestMesh, boundary: Boundary): WaysMesh | null {
  const more = withPoints(rest, boundary.coords, rest.boundary.coords.length / 2);
  if (!more) return null;
  const { triangles, halfedges, changed } = more;
  const count = changed.length;
  const mesh: WaysMesh = {
    boundary,
    triangles,
    halfedges,
    hull: rest.hull,
    centres: grown(rest.centres, 2 * count),
    radii: grown(rest.radii, count),
    discs: grown(rest.discs, 3 * count),
    ofSamples: grown(rest.ofSamples, 3 * count),
    widths: grown(rest.widths, 3 * count),
    carried: { touched: new Uint8Array(count), ...places },
  };
  for (let t = 0; t < count; t++) {
    if (changed[t] === 0) continue;
    circumscribe(boundary.coords, triangles, t, mesh.centres, mesh.radii);
    touch(mesh, t);
  }
  return mesh;
}

function grown(values: Float64Array, length: number): Float64Array {
  const more = new Float64Array(length);
  more.set(values);
  return more;
}

/** A triangle that is not as before: nor are its disc, the discs next to it, and the widths between any of these. */
function touch(mesh: WaysMesh, t: number): void {
  const { halfedges, carried } = mesh;
  forget(mesh, t);
  if (carried) carried.touched[t] = 2;
  for (let edge = 3 * t; edge < 3 * t + 3; edge++) {
    const across = halfedges[edge]!;
    if (across < 0) continue;
    const u = triangleOf(across);
    forget(mesh, u);
    if (carried?.touched[u] === 0) carried.touched[u] = 1;
  }
}

function forget({ discs, ofSamples, widths, halfedges }: WaysMesh, t: number): void {
  for (let i = 3 * t; i < 3 * t + 3; i++) {
    discs[i] = Number.NaN;
    widths[i] = Number.NaN;
    ofSamples[i] = Number.NaN;
    const across = halfedges[i]!;
    if (across < 0) continue;
    widths[across] = Number.NaN;
    ofSamples[across] = Number.NaN;
  }
}
