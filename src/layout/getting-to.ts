import { isFree, keptOff } from "../access/kept-off.ts";
import { once } from "../access/once.ts";
import { standingPieces } from "../access/standing.ts";
import { surroundingsOf } from "../access/surroundings.ts";
import { type Ways, waysOf } from "../access/ways.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";

/**
 * Tells where beds cannot be got to wherever the shifted ones come to stand, without working out the ways after the
 * shift: with a barrow where one is used, or else on foot, somebody must be able to touch the bed at a place to which
 * there is a way with none of the shifted beds in the garden.
 *
 * @returns whether a bed may be got to; true in a garden without gate or door
 */
export function gettingTo(garden: Garden, ids: ReadonlySet<ItemId>): (bed: Bed, after: Garden) => boolean {
  const { barrowWay, standingRoom } = limitsOf(garden);
  const width = garden.gardener.barrow ? Math.max(barrowWay, standingRoom) : standingRoom;
  const without = once((): Ways => {
    const items = garden.items.filter(({ id }) => !ids.has(id));
    return waysOf({ items, yard: garden.yard });
  });
  const canGetTo = once(() => without().reachableAt(width));
  return (bed, after) =>
    without().widest === null ||
    standingPieces(bed, after, width).some(({ body }) => canGetTo()(body)) ||
    bodiesAtCorners(bed, after, width).some((body) => canGetTo()(body));
}

/** Directions out of a corner that are looked into, between the two sides that meet there. */
const INTO = 8;

/** Where somebody can be who touches no side of a bed but only a corner. */
function bodiesAtCorners(bed: Bed, after: Garden, width: number): Point[] {
  const ring = outlineOf(bed);
  const half = (width - SAME_LENGTH) / 2;
  const { obstacles, near } = surroundingsOf(after);
  const rings = near(boxOf(ring), width).map((i) => obstacles[i]!.ring);
  const off = keptOff(after.yard, rings, half - SAME_LENGTH);
  return ring.flatMap((corner, i) => {
    const [from, to] = [outOf(ring, i - 1), outOf(ring, i)];
    const between = (to - from + 2 * Math.PI) % (2 * Math.PI);
    if (between >= Math.PI) return [];
    return Array.from({ length: INTO - 1 }, (_, k): Point => {
      const angle = from + (between * (k + 1)) / INTO;
      return [corner[0] + half * Math.cos(angle), corner[1] + half * Math.sin(angle)];
    }).filter((body) => isFree(off, body));
  });
}

/** The direction straight out of a side of a clockwise ring, in radians. */
function outOf(ring: Ring, side: number): number {
  const [ax, ay] = ring.at(side)!;
  const [bx, by] = ring[(((side + 1) % ring.length) + ring.length) % ring.length]!;
  return Math.atan2(-(bx - ax), by - ay);
}
