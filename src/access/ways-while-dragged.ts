import type { Garden } from "../garden/garden.ts";
import type { Ring } from "../geometry/types.ts";
import { boundaryAlong, type Outlines, outlinesOf } from "./boundary.ts";
import type { Side } from "./types.ts";
import { meshOf, type WaysMesh } from "./ways-mesh.ts";
import { learn, meshOfRest, type RestMesh, withMoved } from "./ways-mesh-rest.ts";

/** The last mesh of a yard, and the mesh of all that did not move then. */
interface Last {
  readonly outlines: Outlines;
  readonly mesh: WaysMesh;
  /** What moved, and the mesh of all others; null before anything does. */
  readonly rest: Rest | null;
}

interface Rest extends RestMesh {
  readonly moved: Side;
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
  const other = before ? onlyOther(before.outlines, outlines) : null;
  if (before && other === -1) return before.mesh;
  if (!before || other === null) return kept(garden.yard, outlines, meshOf(boundaryAlong(outlines)), null);
  const moved = outlines.owners[other]!;
  const rest = before.rest?.moved === moved ? before.rest : restOf(outlines, moved);
  if (rest === before.rest) learn(rest.mesh, before.mesh);
  return kept(garden.yard, outlines, withMoved(rest, outlines), rest);
}

function kept(yard: Ring, outlines: Outlines, mesh: WaysMesh, rest: Last["rest"]): WaysMesh {
  lastOf.set(yard, { outlines, mesh, rest });
  return mesh;
}

const restOf = (outlines: Outlines, moved: Side): Rest => ({
  ...meshOfRest(outlines, (owner) => owner === moved),
  moved,
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
