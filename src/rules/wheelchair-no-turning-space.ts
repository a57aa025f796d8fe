import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { defineRule } from "./rule.ts";

/** Flags beds near which a wheelchair has no room to turn, neither a circle nor a T. */
export const wheelchairNoTurningSpace = defineRule({
  id: "wheelchair-no-turning-space",
  grade: "must",
  promise: "Near every bed there is room for a wheelchair to turn.",
  why: "Without it, whoever has come to the bed must leave it backwards. Guidance for a private yard.",
  source: LIMITS.turningCircle.source,
  limits: ["turningCircle"],
  needs: ["garden", "access", "limits", "units"],

  check({ garden, access, limits, units }) {
    const { wheelchair } = access;
    if (!wheelchair) return [];
    return wheelchair.turningAt.flatMap(({ bed: id, space }) => {
      const bed = garden.items.find((item) => item.id === id);
      const ways = access.beds.find((found) => found.id === id);
      if (space || !bed || !ways) return [];
      // A bed that no wheelchair gets to has a snag of its own.
      const widths = [ways.fromGate?.width, ways.fromDoor?.width].filter((width) => width !== undefined);
      if (widths.length > 0 && Math.max(...widths) < limits.wheelchairPinch - SAME_LENGTH) return [];
      const across = formatShort(limits.turningCircle, units);
      return [
        {
          itemIds: [id],
          at: [bed.at],
          measured: 0,
          limit: 1,
          unit: "count" as const,
          title: `${nameOf(bed)}: no room near it for a wheelchair to turn`,
          detail: `Neither a circle ${across} across nor a T-shaped space of 60 by 60 in fits within 60 in of it.`,
          waysOut: [],
        },
      ];
    });
  },
});
