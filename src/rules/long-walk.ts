import { kitchenWalks } from "../access/kitchen-walks.ts";
import type { BedAccess, Way } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Door } from "../garden/kinds/opening.ts";
import { LIMITS, limitsOf } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { formatDistance, formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { moveNearer } from "./move-nearer.ts";
import { openingShifts, sidesOf } from "./open-way.ts";
import { defineRule, type Finding } from "./rule.ts";

/**
 * Flags beds that are a long walk from the kitchen, measured along the way one really walks, and those that can be walked
 * to from a gate but not from the kitchen at all.
 */
export const longWalk = defineRule({
  id: "long-walk",
  grade: "should",
  promise: word("From the kitchen door every bed is a short walk."),
  why: word(
    "A bed near the kitchen is looked after and picked every day; a far one is forgotten when it rains.",
  ),
  source: LIMITS.kitchenWalk.source,
  limits: ["kitchenWalk", "standingRoom"],
  slow: true,
  needs: ["garden", "access", "beds", "limits", "units"],

  check({ garden, access, beds, limits, units }) {
    const limit = limits.kitchenWalk;
    const doors = garden.items.filter((item) => item.kind === "door");
    return access.beds.flatMap((found) => {
      const { id, kitchen } = found;
      const bed = beds.find((candidate) => candidate.id === id);
      if (!bed) return [];
      if (isOutOfDoors(found, doors, limits.standingRoom))
        return [noWay({ garden, access }, bed, found, doors)];
      if (!kitchen || kitchen.length <= limit + SAME_LENGTH) return [];
      return [
        {
          itemIds: [id],
          at: [kitchen.points.at(-1)!],
          measured: kitchen.length,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${formatDistance(kitchen.length, units)} walk from the kitchen`,
          detail: say`The shortest walk there is ${formatDistance(kitchen.length, units)}; within ${formatDistance(limit, units)} a garden is used daily.`,
          get waysOut() {
            return moveNearer({ garden, access }, bed, kitchen, {
              limit,
              label: say`Move to within ${formatDistance(limit, units)} of the kitchen door`,
              lengthOf: (after, moved) => kitchenWalks(after).walkTo(moved)?.length ?? Infinity,
            });
          },
        },
      ];
    });
  },
});

/** Whether a bed can be walked to, but not from the kitchen door (any door where none is marked as the kitchen's). */
function isOutOfDoors(bed: BedAccess, doors: readonly Door[], width: number): boolean {
  const { fromGate, fromDoor, kitchen } = bed;
  const isOpen = (way: Way | null) => way !== null && way.width >= width - SAME_LENGTH;
  if (doors.length === 0 || !(isOpen(fromGate) || isOpen(fromDoor))) return false;
  if (!isOpen(fromDoor)) return true;
  // By another door one may get there, and by the kitchen's not.
  return kitchen === null && new Set(doors.map((door) => door.kitchen)).size > 1;
}

function noWay(
  facts: Pick<Facts, "garden" | "access">,
  bed: Bed,
  ways: BedAccess,
  doors: readonly Door[],
): Finding {
  const { garden } = facts;
  const room = limitsOf(garden).standingRoom;
  const kitchen = doors.find((door) => door.kitchen) ?? doors[0]!;
  const narrow = ways.fromDoor && ways.fromDoor.width < room - SAME_LENGTH ? ways.fromDoor.narrowest : null;
  const where = narrow
    ? say`: the widest way from it narrows to ${formatShort(narrow.width, garden.units)} at ${sidesOf(narrow, garden)}`
    : "";
  return {
    itemIds: [bed.id, kitchen.id],
    at: narrow ? [narrow.from, narrow.to] : [kitchen.at],
    measured: narrow?.width ?? 0,
    limit: room,
    unit: "mm",
    title: say`${nameOf(bed)}: no way there from ${nameOf(kitchen)}`,
    detail: say`It can be walked to, but not from the kitchen${where}; somebody on foot needs ${formatShort(room, garden.units)}.`,
    get waysOut() {
      if (!narrow || !ways.fromDoor) return [];
      const bottleneck = { way: ways.fromDoor, gap: narrow, beds: [bed.id] };
      return openingShifts(facts, bottleneck, room).filter(({ ops }) =>
        opensFromKitchen(applyOps(garden, ops), bed.id),
      );
    },
  };
}

function opensFromKitchen(after: Garden, id: ItemId): boolean {
  const bed = after.items.find((item) => item.id === id);
  return bed?.kind === "bed" && kitchenWalks(after).walkTo(bed) !== null;
}
