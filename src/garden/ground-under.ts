import { difference, intersection } from "../geometry/clip.ts";
import { boundsOf, centroid, signedArea } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import type { ItemId } from "./fields.ts";
import type { Garden } from "./garden.ts";
import type { Bed } from "./kinds/bed.ts";
import type { Cover, GroundFacts, GroundPatch } from "./kinds/ground.ts";
import { outlineOf } from "./outline.ts";

/** One kind of ground that a bed stands on. */
export interface GroundUnder {
  readonly ground: GroundFacts;
  /** The patch it belongs to; null for the yard at large. */
  readonly patch: ItemId | null;
  readonly areaMm2: number;
  /** Of the bed's outline, 0 to 1. */
  readonly share: number;
  /** The middle of its largest piece. */
  readonly at: Point;
}

type Yard = Pick<Garden, "items" | "site">;

/** Covers that let neither water nor roots through to soil below. */
export const isHard = (cover: Cover): boolean => cover === "paving" || cover === "deck" || cover === "roof";

/**
 * What the beds of a garden stand on. Where patches overlap, the one in front counts; slivers thinner than
 * `SAME_LENGTH` do not.
 * @returns for each bed at least one kind of ground, those that lie in front first and the yard at large last
 */
export function groundsUnder({ items, site }: Yard): ReadonlyMap<ItemId, readonly GroundUnder[]> {
  const patches = items.filter((item) => item.kind === "ground").toReversed();
  const beds = items.filter((item) => item.kind === "bed");
  return new Map(beds.map((bed) => [bed.id, remembered(bed, patches, site.ground)]));
}

interface Remembered {
  readonly patches: readonly GroundPatch[];
  readonly yard: GroundFacts;
  readonly grounds: readonly GroundUnder[];
}

const memory = new WeakMap<Bed, Remembered>();

/** A bed that has not moved over ground that has not changed answers from memory. */
function remembered(bed: Bed, patches: readonly GroundPatch[], yard: GroundFacts): readonly GroundUnder[] {
  const near = patches.filter((patch) => meet(boundsOf(outlineOf(bed)), boundsOf(outlineOf(patch))));
  const known = memory.get(bed);
  if (known && known.yard === yard && sameList(known.patches, near)) return known.grounds;
  const grounds = groundUnder(outlineOf(bed), near, yard);
  memory.set(bed, { patches: near, yard, grounds });
  return grounds;
}

function groundUnder(outline: Ring, patches: readonly GroundPatch[], yard: GroundFacts): GroundUnder[] {
  const whole = area([outline]);
  const grounds: GroundUnder[] = [];
  let rest: readonly Ring[] = [outline];
  const stand = (ground: GroundFacts, patch: ItemId | null, pieces: readonly Ring[]) => {
    const largest = pieces.toSorted((a, b) => signedArea(b) - signedArea(a))[0];
    if (!largest || isSliver(largest)) return false;
    grounds.push({
      ground,
      patch,
      areaMm2: area(pieces),
      share: area(pieces) / whole,
      at: centroid(largest),
    });
    return true;
  };
  for (const patch of patches) {
    const under = [outlineOf(patch)];
    if (stand(patch, patch.id, intersection(rest, under))) rest = difference(rest, under);
  }
  stand(yard, null, rest);
  return grounds;
}

// Outer rings count up and holes count down.
const area = (rings: readonly Ring[]): number => rings.reduce((sum, ring) => sum + signedArea(ring), 0);

function isSliver(ring: Ring): boolean {
  const { minX, minY, maxX, maxY } = boundsOf(ring);
  return signedArea(ring) <= SAME_LENGTH * Math.hypot(maxX - minX, maxY - minY);
}

const meet = (a: Box, b: Box): boolean =>
  a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

const sameList = <T>(first: readonly T[], second: readonly T[]): boolean =>
  first.length === second.length && first.every((thing, i) => thing === second[i]);
