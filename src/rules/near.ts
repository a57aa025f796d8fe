import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { offset } from "../geometry/clip.ts";
import { boxDistance, boxOf, type Clearance, gapBetween } from "../geometry/gap.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";

/** The narrowest place between a bed and an outline or a point, where that is nearer than `limit`; null otherwise. */
export function nearerThan(limit: number, bed: Bed, what: Ring): Clearance | null {
  const outline = outlineOf(bed);
  if (boxDistance(boxOf(outline), boxOf(what)) >= limit - SAME_LENGTH) return null;
  const gap = gapBetween(outline, what);
  return gap.width < limit - SAME_LENGTH ? gap : null;
}

const points = new WeakMap<Point, Ring>();

/** A point as a ring that is kept, so that what is remembered about rings is remembered about it. */
export function pointRing(at: Point): Ring {
  let ring = points.get(at);
  if (!ring) {
    ring = [at];
    points.set(at, ring);
  }
  return ring;
}

const widened = new WeakMap<Ring, Map<number, readonly Ring[]>>();

/** The ground within `far` mm of an outline; the same rings for the same outline and distance. */
export function roundTo(ring: Ring, far: number): readonly Ring[] {
  const byDistance = widened.get(ring) ?? new Map<number, readonly Ring[]>();
  widened.set(ring, byDistance);
  let rings = byDistance.get(far);
  if (!rings) {
    rings = offset([ring], far, "round");
    byDistance.set(far, rings);
  }
  return rings;
}
