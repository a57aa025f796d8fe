import { type Direction, type GateRoom, gateRooms, type Taken } from "../access/gate-room.ts";
import { GATE_SOURCE } from "../access/wheelchair-gates.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { nameOf } from "../garden/name-of.ts";
import { scale } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { say, told, word } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { soundlyChanged } from "./sound-change.ts";

/** Flags gates and doors before which a wheelchair has no room to open them. */
export const wheelchairGateRoom = defineRule({
  id: "wheelchair-gate-room",
  grade: "must",
  promise: word("Before every gate and door there is room for a wheelchair to open it."),
  why: word(
    "Who sits in a chair draws up beside the latch, pulls, and backs away from the leaf. Guidance for a private yard.",
  ),
  source: GATE_SOURCE,
  needs: ["garden", "access", "gardener", "units"],

  check({ garden, access, gardener, units }) {
    if (!gardener.wheelchair) return [];
    return gateRooms(garden).flatMap((room) => {
      const { opening, taken } = room;
      if (!taken) return [];
      const by = garden.items.find(({ id }) => id === taken.by);
      const short = formatShort(taken.needed - taken.clear, units);
      return [
        {
          itemIds: by ? [opening.id, by.id] : [opening.id],
          at: [taken.at],
          measured: taken.clear,
          limit: taken.needed,
          unit: "mm" as const,
          title: say`${nameOf(opening)}: ${short} short of room for a wheelchair`,
          detail: say`${by ? nameOf(by) : say`The edge of the yard`} takes it ${told(WHERE[taken.in])}. ${neededWords(room, units)}`,
          get waysOut() {
            return clearing({ garden, access }, opening, taken);
          },
        },
      ];
    });
  },
});

const WHERE: Readonly<Record<Direction, string>> = {
  depth: word("in front"),
  latch: word("beside the latch"),
  hinge: word("beside the hinges"),
};

const APPROACH: Readonly<Record<GateRoom["approach"], string>> = {
  front: word("from the front"),
  "latch side": word("from the latch side"),
  "hinge side": word("from the hinge side"),
};

const HOW: Readonly<Record<GateRoom["opens"], string>> = {
  pull: word("pulled open"),
  push: word("pushed open"),
  slide: word("slid open"),
};

function neededWords({ needed, opens, approach }: GateRoom, units: Units): string {
  const { depth, beyondLatch, beyondHinge } = needed;
  const beside =
    beyondLatch > 0
      ? say` and ${formatShort(beyondLatch, units)} beside its latch`
      : beyondHinge > 0
        ? say` and ${formatShort(beyondHinge, units)} beside its hinges`
        : "";
  const from = told(APPROACH[approach]);
  return say`Held to the approach ${from}, ${told(HOW[opens])}, which comes nearest: ${formatShort(depth, units)} before it${beside}.`;
}

/** The bed that takes the room, shifted straight out of it. */
function clearing(
  facts: Pick<Facts, "garden" | "access">,
  opening: GateRoom["opening"],
  taken: Taken,
): WayOut[] {
  const { garden } = facts;
  const bed = garden.items.find(({ id }) => id === taken.by);
  if (bed?.kind !== "bed") return [];
  const short = taken.needed - taken.clear;
  const by = scale(taken.away, short);
  const ops = [{ op: "move" as const, id: bed.id, by }];
  const after = soundlyChanged(facts, ops, [bed.id]);
  if (!after || isStillTaken(after, opening.id, bed.id)) return [];
  const far = formatShort(short, garden.units);
  return [{ label: say`Shift ${nameOf(bed)} ${far} ${headingOf(by, garden.site.north)}`, ops }];
}

const isStillTaken = (garden: Garden, opening: string, by: string): boolean =>
  gateRooms(garden).some((room) => room.opening.id === opening && room.taken?.by === by);
