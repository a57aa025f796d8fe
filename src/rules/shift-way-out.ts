import { type ShiftWishes, shiftIntoPlace } from "../access/shift-into-place.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { FOOT, SAME_LENGTH } from "../units/length.ts";
import { say } from "../words/say.ts";
import type { WayOut } from "./rule.ts";

/** Farther than this a bed is put somewhere else, which is for the gardener to think out. */
const FARTHEST = 6 * FOOT;

interface Wishes extends Partial<ShiftWishes> {
  /** Says which of several things is to be shifted. */
  readonly named?: boolean;
}

/**
 * The smallest shift that puts a bed or shed in a place where it stands in nothing's way, as a way out.
 * @returns none where there is no such place near, or where it stands in one already
 */
export function shiftWayOut(garden: Garden, id: ItemId, wishes: Wishes = {}): WayOut[] {
  const by = shiftIntoPlace(garden, id, { most: FARTHEST, ...wishes });
  if (!by || Math.hypot(...by) < SAME_LENGTH) return [];
  const item = garden.items.find((candidate) => candidate.id === id);
  const far = formatShort(Math.hypot(...by), garden.units);
  const there = headingOf(by, garden.site.north);
  const label =
    wishes.named && item ? say`Shift ${nameOf(item)} ${far} ${there}` : say`Shift ${far} ${there}`;
  return [{ label, ops: [{ op: "move", id, by }] }];
}
