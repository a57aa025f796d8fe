import type { Garden } from "../garden/garden.ts";
import { withPoints } from "../geometry/delaunay-insert.ts";
import type { Ring } from "../geometry/types.ts";
import { type Boundary, boundaryAlong, type Outlines, outlinesOf } from "./boundary.ts";
import { type Carried, circumscribe, meshOf, triangleOf, type WaysMesh } from "./ways-mesh.ts";

/** The last mesh of a yard, and the mesh of all that did not move then. */
interface Last {
  readonly outlines: Outlines;
  readonly mesh: WaysMesh;
  /** Which of the outlines moved, and the mesh of all others; null before anything does. */
  readonly rest: Rest | null;
}

interface Rest {
  readonly moved: number;
  readonly mesh: WaysMesh;
  readonly places: Pick<Carried, "waysOut" | "firstSteps">;
}

const lastOf = new WeakMap<Ring, Last>();

/**
 * The mesh of a garden in which one thing moves: that of all others is kept, and only the samples of the one are put in.
 *
 * What was found out between things that stay (discs, widths) is carried from move to move.
 */
export function meshWhileDragged(garden: Pick<Garden, "items" | "yard">): WaysMesh {
  const outlines = outlinesOf(garden, "dragged");
  const before = lastOf.get(garden.yard);
  const moved = before ? onlyOther(before.outlines, outlines) : null;
  if (before && moved === -1) return before.mesh;
  if (!before || moved === null) return kept(garden.yard, outlines, meshOf(boundaryAlong(outlines)), null);
  const rest = before.rest?.moved === moved ? before.rest : restOf(outlines, moved);
  if (rest === before.rest) learn(rest.mesh, before.mesh);
  const boundary = boundaryAlong(withLast(outlines, moved));
  return kept(garden.yard, outlines, withMoved(rest, boundary) ?? meshOf(boundary), rest);
}

function kept(yard: Ring, outlines: Outlines, mesh: WaysMesh, rest: Last["rest"]): WaysMesh {
  lastOf.set(yard, { outlines, mesh, rest });
  return mesh;
}

const restOf = (outlines: Outlines, moved: number): Rest => ({
  moved,
  mesh: meshOf(boundaryAlong(without(outlines, moved))),
  places: { waysOut: new WeakMap(), firstSteps: new WeakMap() },
});

/** Index of the one outline that is another, -1 for none; null where more is different. */
function onlyOther(before: Outlines, now: Outlines): number | null {
  if (before.step !== now.step || before.rings.length !== now.rings.length) return null;
  let other = -1;
  for (let i = 0; i < now.rings.length; i++) {
    if (before.owners[i] !== now.owners[i]) return null;
    if (before.rings[i] === now.rings[i]) continue;
    if (other >= 0) return null;
    other = i;
  }
  return other;
}

const without = ({ rings, owners, step }: Outlines, index: number): Outlines => ({
  rings: rings.filter((_, i) => i !== index),
  owners: owners.filter((_, i) => i !== index),
  step,
});

/** The same with one of them behind all others, so that the samples of these keep their numbers. */
function withLast(outlines: Outlines, index: number): Outlines {
  const { rings, owners, step } = without(outlines, index);
  return { rings: [...rings, outlines.rings[index]!], owners: [...owners, outlines.owners[index]!], step };
}

/** Takes note of what was found out in a mesh about things that stay. */
function learn(rest: WaysMesh, { carried, discs, ofSamples, widths, halfedges }: WaysMesh): void {
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

function withMoved({ mesh: rest, places }: Rest, boundary: Boundary): WaysMesh | null {
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
