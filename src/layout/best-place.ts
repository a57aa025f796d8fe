import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { freshId, newItem } from "../garden/new-item.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import type { Shape } from "../geometry/shape.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { checkGarden } from "../rules/check-garden.ts";
import { RULES } from "../rules/index.ts";
import type { Rule, Snag } from "../rules/rule.ts";
import { shadedByBed } from "../rules/shaded-by-bed.ts";
import {
  apart,
  placesInSun,
  type SoundPlace,
  type SunnyPlace,
  searchPlane,
  soundPlaceNear,
} from "../rules/sunny-places.ts";
import { tooLittleSun } from "../rules/too-little-sun.ts";
import { bedShade } from "../sun/sun-hours.ts";
import type { SunGrid } from "../sun/sun-map.ts";
import { POSITION_RULES } from "./position-rules.ts";

/** Where a bed of some size gets the most sun and stands in order. */
export interface BestPlace {
  readonly at: Point;
  /** As the bed's own `turn`, degrees. */
  readonly turn: number;
  /** Mean on its soil there, hours a day over the season. */
  readonly hours: number;
  /** What it gets where it stands; null for a bed that is not in the garden yet. */
  readonly was: number | null;
  /** Its outline there. */
  readonly ring: Ring;
  /** What puts it there; for a bed that is not in the garden yet, what adds it there. */
  readonly ops: readonly Op[];
}

/** A bed is not moved for less than this, hours. */
const WORTH_MOVING = 0.1;
/** So many places with free ground are held to all rules. */
const MOST_CHECKED = 12;

/**
 * The place and turn in the yard with the most sun for a bed, where it has no must-fix or should-fix snag of position and
 * brings about none elsewhere, shade on another bed included. It may lie as it does now or a quarter turn round.
 *
 * @param what a bed of the garden, or the shape of one to come, which stands as tall as one out of the barrow
 * @returns null where there is no such place; for a bed of the garden, none with a tenth of an hour more sun than it has
 * @throws RangeError if there is no such bed
 */
export function bestPlace(garden: Garden, what: ItemId | Shape): BestPlace | null {
  if (typeof what !== "string") return placeForNew(garden, what);
  const was = bedShade(garden, what)?.hours;
  const bed = garden.items.find((item): item is Bed => item.id === what && item.kind === "bed");
  if (was === undefined || !bed) return null;
  const found = sunniest(garden, bed, was + WORTH_MOVING);
  return found && { ...whereIn(found, bed.id), was };
}

function placeForNew(garden: Garden, shape: Shape): BestPlace | null {
  const id = freshId(garden, "bed");
  const made = { ...newItem("bed", { id, at: centroid(garden.yard), units: garden.units }), shape } as Bed;
  const found = sunniest(applyOps(garden, [{ op: "add", item: made }]), made, 0);
  if (!found) return null;
  const item = found.after.items.find((one) => one.id === id);
  return item ? { ...whereIn(found, id), was: null, ops: [{ op: "add", item }] } : null;
}

function whereIn({ hours, ops, after }: SoundPlace, id: ItemId): Omit<BestPlace, "was"> {
  const moved = after.items.find((item): item is Bed => item.id === id && item.kind === "bed")!;
  return { at: moved.at, turn: moved.turn, hours, ops, ring: outlineOf(moved) };
}

function sunniest(garden: Garden, bed: Bed, atLeast: number): SoundPlace | null {
  const plane = searchPlane(garden, bed);
  if (!plane) return null;
  const places = placesInSun(bed, garden, plane, turnsOf(bed))
    .filter(({ hours }) => hours >= atLeast)
    .sort((a, b) => b.hours - a.hours);
  const sound = sunniestSound(garden, bed, plane, apart(places))
    .map((place) => ({ ...place, hours: bedShade(place.after, bed.id)?.hours ?? 0 }))
    .filter(({ hours }) => hours >= atLeast)
    .sort((a, b) => b.hours - a.hours);
  const without = { ...garden, items: garden.items.filter(({ id }) => id !== bed.id) };
  const [before, shaded] = [snagsToFix(without), snagsToFix(garden, SHADES)];
  return (
    sound.find(
      ({ after }) => isInOrder(after, bed.id, before) && isNothingNew(snagsToFix(after, SHADES), shaded),
    ) ?? null
  );
}

/** Places with free ground from the sunniest on: until there are enough with more sun than any that is left. */
function sunniestSound(
  garden: Garden,
  bed: Bed,
  plane: SunGrid,
  sorted: readonly SunnyPlace[],
): SoundPlace[] {
  const found: SoundPlace[] = [];
  for (const place of sorted) {
    const better = found.filter(({ hours }) => hours >= place.hours);
    if (better.length >= MOST_CHECKED) break;
    const sound = soundPlaceNear(garden, bed, plane, place);
    if (sound && standsWell(sound.after, bed.id)) found.push(sound);
  }
  return found.sort((a, b) => b.hours - a.hours).slice(0, MOST_CHECKED);
}

/** A round or square bed lies the same after a quarter turn. */
function turnsOf({ shape, turn }: Bed): number[] {
  const isSame = (shape.type === "rectangle" || shape.type === "oval") && shape.width === shape.length;
  return isSame ? [turn] : [turn, turn + 90];
}

const TO_FIX: readonly Rule[] = RULES.filter(({ grade }) => grade !== "note");
const SHADES: readonly Rule[] = [shadedByBed, tooLittleSun];
/** By all rules but those about the sun, unless others are given. */
const snagsToFix = (garden: Garden, rules?: readonly Rule[]): Snag[] =>
  checkGarden(garden, {}, rules ?? TO_FIX, rules ? "reading" : "look").filter(
    ({ grade }) => grade !== "note",
  );

const isNothingNew = (now: readonly Snag[], before: readonly Snag[]): boolean => {
  const were = new Set(before.map(({ key }) => key));
  return now.every(({ key }) => were.has(key));
};

/** Rules of position that are quick to ask: a place that fails one is not held to the others. */
const QUICK = TO_FIX.filter(({ id, needs }) => POSITION_RULES.has(id) && !needs.includes("access"));
const standsWell = (after: Garden, id: ItemId): boolean =>
  checkGarden(after, {}, QUICK, "look").every(
    ({ grade, itemIds }) => grade === "note" || !itemIds.includes(id),
  );

/** Whether a bed is in nobody's way: no snag of position of its own, and none of anything else that was not there without it. */
function isInOrder(after: Garden, id: ItemId, before: readonly Snag[]): boolean {
  const were = new Set(before.map(({ key }) => key));
  return snagsToFix(after).every(({ key, rule, itemIds }) =>
    itemIds.includes(id) ? !POSITION_RULES.has(rule) : were.has(key),
  );
}
