import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { boxOf, type Clearance, gapBetween, gapOfOutlines, outlinesCross } from "../geometry/gap.ts";
import { contains } from "../geometry/ring.ts";
import type { Ring } from "../geometry/types.ts";
import type { Obstacle } from "./obstacles.ts";
import { type Surroundings, surroundingsOf } from "./surroundings.ts";
import { GAP_SIGHT, type Gap, type Side } from "./types.ts";

/**
 * The gaps of a garden: from every bed to everything that stands within `GAP_SIGHT` of it, and to the yard's outline.
 *
 * Distances are exact, between outlines turned and rounded as they are drawn. Each pair is told once, the thing that is
 * farther back first (a bed before anything that is none), in the order of the garden.
 *
 * @returns width 0 for things that touch or overlap, and to the yard for a bed that lies outside it or across its outline
 */
export function gapsOf(garden: Pick<Garden, "items" | "yard">): Gap[] {
  const surroundings = surroundingsOf(garden);
  return surroundings.obstacles.flatMap((obstacle, i) =>
    obstacle.kind === "bed"
      ? gapsAround(surroundings, i, (other) => other > i || surroundings.obstacles[other]!.kind !== "bed")
      : [],
  );
}

/** The gaps of one thing, itself the first of each pair; empty where nothing in the way has this id. */
export function gapsFrom(id: ItemId, garden: Pick<Garden, "items" | "yard">): Gap[] {
  const surroundings = surroundingsOf(garden);
  const at = surroundings.obstacles.findIndex((obstacle) => obstacle.id === id);
  return at < 0 ? [] : gapsAround(surroundings, at, () => true);
}

function gapsAround(
  { obstacles, yard, near }: Surroundings,
  index: number,
  wanted: (other: number) => boolean,
): Gap[] {
  const { id, ring } = obstacles[index]!;
  const found = new Map<Side, Clearance>();
  for (const i of near(boxOf(ring), GAP_SIGHT)) {
    const other = obstacles[i]!;
    if (other.id === id || !wanted(i)) continue;
    keepNarrowest(found, other.id, between(ring, other));
  }
  keepNarrowest(found, "yard", toYard(ring, yard));
  return Array.from(found, ([side, { width, from, to }]) => ({ between: [id, side], width, from, to }));
}

// A fence with a gate in it stands as several rings; its gap is that of the nearest.
function keepNarrowest(found: Map<Side, Clearance>, side: Side, gap: Clearance): void {
  if (gap.width >= GAP_SIGHT) return;
  const before = found.get(side);
  if (!before || gap.width < before.width) found.set(side, gap);
}

// While one thing is dragged every other pair keeps both its rings, and its answer with them.
const pairs = new WeakMap<Ring, WeakMap<Ring, Clearance>>();

function remembered(first: Ring, second: Ring, measure: (first: Ring, second: Ring) => Clearance): Clearance {
  let ofFirst = pairs.get(first);
  if (!ofFirst) {
    ofFirst = new WeakMap();
    pairs.set(first, ofFirst);
  }
  let gap = ofFirst.get(second);
  if (!gap) {
    gap = measure(first, second);
    ofFirst.set(second, gap);
  }
  return gap;
}

const between = (ring: Ring, other: Obstacle): Clearance => remembered(ring, other.ring, gapBetween);
const toYard = (ring: Ring, yard: Ring): Clearance => remembered(ring, yard, gapToYard);

function gapToYard(ring: Ring, yard: Ring): Clearance {
  const crossing = outlinesCross(ring, yard);
  if (crossing) return { width: 0, from: crossing, to: crossing };
  const gap = gapOfOutlines(ring, yard);
  return ring[0] && contains(yard, ring[0]) ? gap : { ...gap, width: 0 };
}
