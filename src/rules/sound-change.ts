import { barriersOf, bars } from "../access/barriers.ts";
import { type GapWishes, narrowGapsFrom } from "../access/narrow-gaps.ts";
import { bedReach, type Gardening, reachOf } from "../access/reach.ts";
import { roomToStand, standingPieces, stretchesOf } from "../access/standing.ts";
import type { Stretch } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { liesWithin } from "../geometry/gap.ts";
import { overlapOf } from "../geometry/shift.ts";
import { distance } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";
import type { Facts } from "./facts.ts";

type Known = Pick<Facts, "garden" | "access">;

/** What the people of a garden ask of the ground beside a bed. */
export function wishesOf(garden: Garden): GapWishes & Gardening {
  const limits = limitsOf(garden);
  const room = roomToStand(garden.gardener, limits);
  return { asked: room, room, together: limits.together, reach: reachOf(garden.gardener, limits) };
}

/**
 * The garden after some changes to some beds, if they leave those beds in order: in the yard, in nothing's way, beside
 * no path that is narrow now and was not as narrow before, and with no more soil out of reach than before.
 * @returns null where they do not, or where no garden can hold the change
 */
export function soundlyChanged(
  facts: Pick<Known, "garden">,
  ops: readonly Op[],
  ids: readonly ItemId[],
): Garden | null {
  const after = tried(facts.garden, ops);
  if (!after) return null;
  return ids.every((id) => isSound(id, facts, after)) ? after : null;
}

/** Sizes come out of arithmetic: one that leaves nothing of a bed is no way out, and no fault either. */
function tried(garden: Garden, ops: readonly Op[]): Garden | null {
  try {
    return applyOps(garden, ops);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

const bedIn = (garden: Garden, id: ItemId): Bed | null => {
  const item = garden.items.find((candidate) => candidate.id === id);
  return item?.kind === "bed" ? item : null;
};

function isSound(id: ItemId, facts: Pick<Known, "garden">, after: Garden): boolean {
  const before = facts.garden;
  const [was, is] = [bedIn(before, id), bedIn(after, id)];
  if (!was || !is) return false;
  return (
    (liesWithin(outlineOf(is), after.yard) || !liesWithin(outlineOf(was), before.yard)) &&
    standsInNothingNew(is, after, was, before) &&
    hasNoNewNarrowGap(id, before, after) &&
    reachesAsMuch(is, after, was, facts)
  );
}

function standsInNothingNew(is: Bed, after: Garden, was: Bed, before: Garden): boolean {
  const stoodIn = new Set(barrierIds(was, before));
  return barrierIds(is, after).every((id) => stoodIn.has(id));
}

const barrierIds = (bed: Bed, garden: Garden): ItemId[] =>
  barriersOf(garden)
    .filter((barrier) => barrier.what !== "tap" && bars(barrier, bed, garden))
    .filter(({ ring }) => (overlapOf(outlineOf(bed), ring)?.depth ?? 0) > SAME_LENGTH)
    .map(({ id }) => id);

function hasNoNewNarrowGap(id: ItemId, before: Garden, after: Garden): boolean {
  const wishes = wishesOf(after);
  const were = new Map(narrowGapsFrom(id, before, wishes).map(({ between, width }) => [between[1], width]));
  return narrowGapsFrom(id, after, wishes).every(
    ({ between, width }) => width >= (were.get(between[1]) ?? Infinity) - SAME_LENGTH,
  );
}

function reachesAsMuch(is: Bed, after: Garden, was: Bed, { garden: before }: Pick<Known, "garden">): boolean {
  const wishes = wishesOf(after);
  const farthest = bedReach(is, after, wishes).farthest.distance;
  return farthest <= Math.max(wishes.reach + SAME_LENGTH, bedReach(was, before, wishes).farthest.distance);
}

/**
 * Whether all soil of a bed is within reach after a change that is sound.
 *
 * Where every edge with room could be got to before, it can be now: no gap has become narrower than a way. Where one
 * could not, this says no: the way to it has to be opened first.
 */
export function isWithinReach(id: ItemId, after: Garden, facts: Known): boolean {
  const [was, is] = [bedIn(facts.garden, id), bedIn(after, id)];
  if (!was || !is || isCutOff(was, facts)) return false;
  const wishes = wishesOf(after);
  return bedReach(is, after, wishes).farthest.distance <= wishes.reach + SAME_LENGTH;
}

/** Whether some edge of a bed has room in front of it that nobody can get to. */
function isCutOff(bed: Bed, { garden, access }: Known): boolean {
  const roomy = lengthOf(stretchesOf(standingPieces(bed, garden, wishesOf(garden).room)));
  const found = access.beds.find(({ id }) => id === bed.id);
  return !found || lengthOf(found.standing) < roomy - SAME_LENGTH;
}

const lengthOf = (lines: readonly Stretch[]): number =>
  lines.reduce(
    (sum, line) => line.reduce((along, point, i) => along + (i > 0 ? distance(line[i - 1]!, point) : 0), sum),
    0,
  );
