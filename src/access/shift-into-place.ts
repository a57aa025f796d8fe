import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { outlineOf } from "../garden/outline.ts";
import { offset } from "../geometry/clip.ts";
import { blockedShifts, isNear, nearestShift, type Shift, shiftsWithin } from "../geometry/shift.ts";
import type { Ring } from "../geometry/types.ts";
import { type Barrier, bars, type Movable } from "./barriers.ts";
import { placeOf } from "./place.ts";

export interface ShiftWishes {
  /** Farthest shift of interest along x and along y, mm. */
  readonly most: number;
  /** Room to leave beside anything that stands, mm; it may be closed up to where that is 0. */
  readonly room?: number;
  /** More ground to keep off. */
  readonly keepOff?: readonly Ring[];
}

/**
 * The smallest shift of a bed or shed after which it stands in the yard and in nothing's way: over no other thing, no
 * path, no ground kept clear, before no door, gate or tap. Everything else stays where it is.
 * @returns null where no shift of at most `most` will do, or where the thing is no bed or shed
 */
export function shiftIntoPlace(
  garden: Garden,
  id: ItemId,
  { most, room = 0, keepOff = [] }: ShiftWishes,
): Shift | null {
  const { movables, barriers } = placeOf(garden);
  const movable = movables.find((candidate) => candidate.id === id);
  if (!movable) return null;
  const outline = outlineOf(movable);
  const within = shiftsWithin(outline, garden.yard, most);
  if (within.length === 0) return null;
  const inReach = (ring: Ring) => isNear(outline, ring, most + room);
  const blocked = barriers
    .filter((barrier) => inReach(barrier.ring) && bars(barrier, movable, garden))
    .map((barrier) => blockedBy(barrier, movable, room));
  const off = keepOff.filter(inReach).map((ring) => blockedShifts(outline, ring));
  return nearestShift([...blocked, ...off], within);
}

function blockedBy({ what, ring }: Barrier, movable: Movable, room: number): Ring[] {
  const outline = outlineOf(movable);
  if (what !== "thing" || room === 0) return blockedShifts(outline, ring);
  return offset([ring], room, "mitred").flatMap((wider) => blockedShifts(outline, wider));
}
