import type { ItemId } from "../garden/fields.ts";
import type { Point } from "../geometry/types.ts";
import { INCH, SAME_LENGTH } from "../units/length.ts";
import type { Boundary } from "./boundary.ts";
import type { Entrance } from "./entrances.ts";
import { pieceGap } from "./piece-gap.ts";
import { acrossDisc } from "./set-out.ts";
import type { Gap, Side, Way } from "./types.ts";
import { exactDisc, roomAt } from "./ways-disc.ts";
import type { End } from "./ways-ends.ts";
import { type Begin, nextInTriangle, triangleOf, WALL, type WaysMesh, widthOfSamples } from "./ways-mesh.ts";
import type { WidestWays } from "./ways-search.ts";
import { pinchThrough, widthThrough } from "./ways-width.ts";

/**
 * A squeeze under 6 in is no way at all: it counts as closed, width 0. (Nobody gets through, and between samples the
 * mesh cannot tell such a squeeze from a joint.)
 */
export const NARROWEST_WAY = 6 * INCH;

/** Two measures of one width are the same within this, mm. */
const SAME_WIDTH = 1e-6;

/** What is told of the way to a bed. */
export function wayTo(
  mesh: WaysMesh,
  found: WidestWays,
  entrances: readonly Entrance[],
  end: End | null,
  id: ItemId,
): Way {
  const entrance = end && entrances[found.origin[end.triangle]!];
  // A bed is seen from nowhere where nobody gets in at all: then it is not to blame.
  const shutOut = entrances.every(({ starts }) => starts.length === 0);
  if (!end || !entrance) return blockedFrom(mesh.boundary, entrances, id, shutOut || end !== null);
  const narrowest = narrowestOn(mesh, found, end);
  return {
    entrance: entrance.id,
    width: end.width < NARROWEST_WAY ? 0 : end.width,
    narrowest,
  };
}

/** No way begins at all: something stands against every entrance, or the bed lies under something else. */
function blockedFrom(
  { coords, owner, sides }: Boundary,
  entrances: readonly Entrance[],
  id: ItemId,
  bedSeen: boolean,
): Way {
  const entrance = entrances.find(({ starts }) => starts.length === 0) ?? entrances[0];
  if (!entrance) throw new RangeError("a way needs an entrance to begin at");
  const own = owner.findIndex((side) => sides[side] === id);
  const at: Point = bedSeen || own < 0 ? entrance.opening : [coords[2 * own]!, coords[2 * own + 1]!];
  const between: readonly [Side, Side] = bedSeen ? [entrance.id, entrance.id] : [id, id];
  return { entrance: entrance.id, width: 0, narrowest: { between, width: 0, from: at, to: at } };
}

function narrowestOn(mesh: WaysMesh, found: WidestWays, end: End): Gap {
  if (end.width < found.width[end.triangle]!) return roomIn(mesh, end.triangle);
  let t = end.triangle;
  let narrowest = -1;
  // Back along the way for as long as nothing wider is met: the last edge of this width is where the way narrows first.
  while (found.width[t]! <= end.width) {
    const edge = found.enteredBy[t]!;
    if (edge < 0) break;
    narrowest = edge;
    t = triangleOf(edge);
  }
  if (narrowest < 0 || found.width[t]! <= end.width) {
    const begin = found.begun.get(t);
    return begin ? told(mesh, begin) : roomIn(mesh, t);
  }
  if (pinchThrough(mesh, narrowest) <= end.width + SAME_WIDTH) return gapAt(mesh, narrowest);
  // One of the two middles is narrower than anything between them.
  const beyond = triangleOf(mesh.halfedges[narrowest]!);
  return roomIn(mesh, roomAt(mesh, t) < roomAt(mesh, beyond) ? t : beyond);
}

/** One for each stretch of way between the same two things, at its narrowest. */
export function pinchesOn(mesh: WaysMesh, found: WidestWays, end: End, width: number): Gap[] {
  const pinches: Gap[] = [];
  for (let edge = found.enteredBy[end.triangle]!; edge >= 0; edge = found.enteredBy[triangleOf(edge)]!) {
    if (widthOfSamples(mesh, edge) === WALL || pinchThrough(mesh, edge) === Infinity) continue;
    if (widthThrough(mesh, edge) >= width - SAME_LENGTH) continue;
    const gap = gapAt(mesh, edge);
    const last = pinches.at(-1);
    if (!last || !isSamePlace(last, gap, mesh.boundary.step)) pinches.push(gap);
    else if (gap.width < last.width) pinches[pinches.length - 1] = gap;
  }
  return pinches;
}

function isSamePlace(a: Gap, b: Gap, step: number): boolean {
  const sides = new Set([...a.between, ...b.between]);
  const apart =
    Math.hypot(a.from[0] + a.to[0] - b.from[0] - b.to[0], a.from[1] + a.to[1] - b.from[1] - b.to[1]) / 2;
  return sides.size === new Set(a.between).size || apart <= 2 * step;
}

function gapAt({ boundary, triangles }: WaysMesh, edge: number): Gap {
  const [p, q] = [triangles[edge]!, triangles[nextInTriangle(edge)]!];
  const between: readonly [Side, Side] = [sideOf(boundary, p), sideOf(boundary, q)];
  // Neighbours of one outline: an outline that closes the bed off on its own.
  if (boundary.next[p] === q || boundary.previous[p] === q) {
    const at: Point = [boundary.coords[2 * p]!, boundary.coords[2 * p + 1]!];
    return { between, width: 0, from: at, to: at };
  }
  return { between, ...pieceGap(boundary, p, q) };
}

/** The room of a pocket: the two touching places farthest apart. */
const roomIn = (mesh: WaysMesh, t: number): Gap => told(mesh, acrossDisc(mesh, t, exactDisc(mesh, t)));

const told = ({ boundary }: WaysMesh, { samples: [p, q], width, from, to }: Begin): Gap => ({
  between: [sideOf(boundary, p), sideOf(boundary, q)],
  width,
  from,
  to,
});

const sideOf = ({ owner, sides }: Boundary, sample: number): Side => sides[owner[sample]!]!;
