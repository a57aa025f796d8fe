import { type GateRoom, gateRooms } from "../access/gate-room.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { nameOf } from "../garden/name-of.ts";
import { published } from "../garden/source.ts";
import { scale, turned } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import type { Facts } from "./facts.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { soundlyChanged } from "./sound-change.ts";

/** Flags gates and doors before which a wheelchair has no room to open them. */
export const wheelchairGateRoom = defineRule({
  id: "wheelchair-gate-room",
  grade: "must",
  promise: "Before every gate and door there is room for a wheelchair to open it.",
  why: "Who sits in a chair draws up beside the latch, pulls, and backs away from the leaf. Guidance for a private yard.",
  source: published(
    "2010 ADA Standards for Accessible Design, Table 404.2.4.1, front approach: pull 60 in deep and 18 in beyond the latch, push 48 in; sliding from memory",
  ),
  needs: ["garden", "access", "gardener", "units"],

  check({ garden, access, gardener, units }) {
    if (!gardener.wheelchair) return [];
    return gateRooms(garden).flatMap((room) => {
      const { opening, needed, clear, taken } = room;
      if (!taken) return [];
      const by = garden.items.find(({ id }) => id === taken.by);
      const beyond =
        needed.beyondLatch > 0 ? ` and ${formatShort(needed.beyondLatch, units)} beyond its latch` : "";
      return [
        {
          itemIds: by ? [opening.id, by.id] : [opening.id],
          at: [taken.at],
          measured: clear,
          limit: needed.depth,
          unit: "mm" as const,
          title: `${nameOf(opening)}: ${formatShort(needed.depth - clear, units)} short of room for a wheelchair`,
          detail: `${by ? nameOf(by) : "The edge of the yard"} takes it; ${formatShort(needed.depth, units)} before it${beyond} are needed.`,
          get waysOut() {
            return clearing({ garden, access }, room);
          },
        },
      ];
    });
  },
});

/** The bed that takes the room, shifted straight out of it. */
function clearing(
  facts: Pick<Facts, "garden" | "access">,
  { opening, needed, clear, taken }: GateRoom,
): WayOut[] {
  const { garden } = facts;
  const bed = garden.items.find(({ id }) => id === taken?.by);
  if (bed?.kind !== "bed") return [];
  const straight = turned([0, 1], opening.turn);
  const out =
    straight[0] * (bed.at[0] - opening.at[0]) + straight[1] * (bed.at[1] - opening.at[1]) > 0 ? 1 : -1;
  const by = scale(straight, out * (needed.depth - clear));
  const ops = [{ op: "move" as const, id: bed.id, by }];
  const after = soundlyChanged(facts, ops, [bed.id]);
  if (!after || isStillTaken(after, opening.id, bed.id)) return [];
  const far = formatShort(needed.depth - clear, garden.units);
  return [{ label: `Shift ${nameOf(bed)} ${far} ${headingOf(by, garden.site.north)}`, ops }];
}

const isStillTaken = (garden: Garden, opening: string, by: string): boolean =>
  gateRooms(garden).some((room) => room.opening.id === opening && room.taken?.by === by);
