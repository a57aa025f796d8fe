import type { Gap, Way } from "../access/types.ts";
import { waysOf } from "../access/ways.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { nameOf } from "../garden/name-of.ts";
import { centroid } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { scale, subtract } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { listed } from "../words/phrases.ts";
import { say } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import type { WayOut } from "./rule.ts";
import { soundlyChanged } from "./sound-change.ts";

/** The wider of the ways to a bed from a gate and from a door; null in a garden that has neither. */
export function bestWay({ fromGate, fromDoor }: { fromGate: Way | null; fromDoor: Way | null }): Way | null {
  if (!fromGate || !fromDoor) return fromGate ?? fromDoor;
  return fromGate.width >= fromDoor.width ? fromGate : fromDoor;
}

/** One place that is too narrow, and the beds that are all the worse for it. */
export interface Bottleneck {
  readonly way: Way;
  readonly gap: Gap;
  readonly beds: readonly ItemId[];
}

interface BedWays {
  readonly id: ItemId;
  readonly fromGate: Way | null;
  readonly fromDoor: Way | null;
}

/** The places that keep the best way to some bed narrower than a width, those that cut off most beds first. */
export function bottlenecks(beds: readonly BedWays[], isNarrow: (way: Way) => boolean): Bottleneck[] {
  const found = new Map<string, { way: Way; gap: Gap; beds: ItemId[] }>();
  for (const bed of beds) {
    const way = bestWay(bed);
    if (!way?.narrowest || !isNarrow(way)) continue;
    const key = [...way.narrowest.between].sort().join(" ");
    const known = found.get(key);
    if (known) known.beds.push(bed.id);
    else found.set(key, { way, gap: way.narrowest, beds: [bed.id] });
  }
  return [...found.values()].sort((a, b) => b.beds.length - a.beds.length);
}

/** Names of what stands on both sides of a gap: "Beans and Squash", "Fence". */
export function sidesOf({ between }: Gap, { items }: Pick<Garden, "items">): string {
  const names = between.map((side) => {
    const item = items.find(({ id }) => id === side);
    return item ? nameOf(item) : say`the edge of the yard`;
  });
  return listed([...new Set(names)]);
}

/**
 * Shifts of a bed beside a bottleneck that open the way to all the beds behind it, and put no bed in a worse place.
 * @param limit width that the way is to have, mm
 */
export function openingShifts(
  facts: Pick<Facts, "garden" | "access">,
  { gap, beds }: Bottleneck,
  limit: number,
): WayOut[] {
  const { garden } = facts;
  return gap.between.flatMap((side, i) => {
    const bed = garden.items.find(({ id }) => id === side);
    if (bed?.kind !== "bed" || gap.between[0] === gap.between[1]) return [];
    const away = awayFrom(gap, i, garden);
    if (!away) return [];
    const by = scale(away, limit - gap.width);
    const ops = [{ op: "move" as const, id: bed.id, by }];
    const after = soundlyChanged(facts, ops, [bed.id]);
    if (!after || !beds.every((id) => isOpen(after, id, limit))) return [];
    const far = formatShort(Math.hypot(...by), garden.units);
    return [{ label: say`Shift ${nameOf(bed)} ${far} ${headingOf(by, garden.site.north)}`, ops }];
  });
}

export function isOpen(garden: Garden, id: ItemId, limit: number): boolean {
  const way = bestWay(waysOf(garden).toBed(id));
  return way !== null && way.width >= limit - SAME_LENGTH;
}

/** Unit vector along which a side of a gap draws back from the other; null where there is nothing to draw back from. */
function awayFrom({ from, to, width, between }: Gap, side: number, { items }: Garden): Point | null {
  if (width > SAME_LENGTH) return scale(subtract(from, to), (side === 0 ? 1 : -1) / width);
  const [own, other] = [between[side], between[1 - side]].map((id) => {
    const item = items.find((candidate) => candidate.id === id);
    return item && "points" in item ? centroid([item.at, ...item.points]) : item?.at;
  });
  if (!own || !other) return null;
  const apart = subtract(own, other);
  const length = Math.hypot(...apart);
  return length > 0 ? scale(apart, 1 / length) : null;
}

/** What a bottleneck is about: the beds behind it, and what stands beside it. */
export function itemsOf({ beds, gap }: Bottleneck): ItemId[] {
  const sides = gap.between.filter((side): side is ItemId => side !== "yard");
  return [...new Set([...beds, ...sides])];
}
