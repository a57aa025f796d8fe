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
  /** Known to be needed at least, mm: a search that cannot come to anything is not begun. */
  readonly least?: number;
  /** Room to leave beside anything that stands, mm; it may be closed up to where that is 0. */
  readonly room?: number;
  /** More ground to keep off; the same rings for the same ground, so that the answer is found in memory. */
  readonly keepOff?: readonly Ring[];
}

/** The first search goes no farther than this: most shifts are small, and few things are in reach of a small one. */
const NEAR = 900;

/**
 * The smallest shift of a bed or shed after which it stands in the yard and in nothing's way: over no other thing, no
 * path, no ground kept clear, before no door, gate or tap. Everything else stays where it is.
 * @returns null where no shift of at most `most` will do, or where the thing is no bed or shed
 */
export function shiftIntoPlace(garden: Garden, id: ItemId, wishes: ShiftWishes): Shift | null {
  const { most, least = 0 } = wishes;
  const movable = placeOf(garden).movables.find((candidate) => candidate.id === id);
  if (!movable || least > most * Math.SQRT2) return null;
  if (least < NEAR && NEAR < most) {
    const near = search(garden, movable, { ...wishes, most: NEAR });
    // Nothing nearer can lie outside the square that was searched.
    if (near && Math.hypot(...near) <= NEAR) return near;
  }
  return search(garden, movable, wishes);
}

function search(
  garden: Garden,
  movable: Movable,
  { most, room = 0, keepOff = [] }: ShiftWishes,
): Shift | null {
  const outline = outlineOf(movable);
  const inReach = (ring: Ring) => isNear(outline, ring, most + room);
  const things = placeOf(garden).barriers.filter(
    (barrier) => inReach(barrier.ring) && bars(barrier, movable, garden),
  );
  const off = keepOff.filter(inReach);
  const question = [garden.yard, ...things.map(({ ring }) => ring), ...off];
  return remembered(outline, `${most} ${room}`, question, () => {
    const within = shiftsWithin(outline, garden.yard, most);
    if (within.length === 0) return null;
    return nearestShift(
      [
        ...things.map((barrier) => blockedBy(barrier, outline, room)),
        ...off.map((ring) => blockedShifts(outline, ring)),
      ],
      within,
    );
  });
}

function blockedBy({ what, ring }: Barrier, outline: Ring, room: number): Ring[] {
  if (what !== "thing" || room === 0) return blockedShifts(outline, ring);
  return offset([ring], room, "mitred").flatMap((wider) => blockedShifts(outline, wider));
}

interface Answer {
  readonly wishes: string;
  readonly question: readonly Ring[];
  readonly shift: Shift | null;
}
const answers = new WeakMap<Ring, Answer[]>();
/** A bed is asked about by a few rules, each with wishes of its own, and twice by each. */
const MOST_ANSWERS = 16;

/** The same outline among the same others gets the same answer, while something else is dragged about the yard. */
function remembered(
  outline: Ring,
  wishes: string,
  question: readonly Ring[],
  answer: () => Shift | null,
): Shift | null {
  const own = answers.get(outline) ?? [];
  answers.set(outline, own);
  const known = own.find((earlier) => earlier.wishes === wishes && sameList(earlier.question, question));
  if (known) return known.shift;
  const shift = answer();
  own.unshift({ wishes, question, shift });
  own.length = Math.min(own.length, MOST_ANSWERS);
  return shift;
}

const sameList = <T>(first: readonly T[], second: readonly T[]): boolean =>
  first.length === second.length && first.every((thing, i) => thing === second[i]);
