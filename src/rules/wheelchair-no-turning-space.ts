import { TURNING_NEAR } from "../access/turning-spaces.ts";
import { tSpaceOf } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags beds near which a wheelchair has no room to turn, neither a circle nor a T. */
export const wheelchairNoTurningSpace = defineRule({
  id: "wheelchair-no-turning-space",
  grade: "must",
  promise: word("Near every bed there is room for a wheelchair to turn."),
  why: word("Without it, whoever has come to the bed must leave it backwards. Guidance for a private yard."),
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
      const circle = say`circle ${formatShort(limits.turningCircle, units)} across`;
      const tee = tSpaceOf(garden.gardener.edition);
      const square = tee && formatShort(tee.arm + tee.baseClear, units);
      const room = square
        ? say`Neither a ${circle} nor a T-shaped space ${square} square`
        : say`No ${circle}`;
      return [
        {
          itemIds: [id],
          at: [bed.at],
          measured: 0,
          limit: 1,
          unit: "count" as const,
          title: say`${nameOf(bed)}: no room near it for a wheelchair to turn`,
          detail: say`${room} fits within ${formatShort(TURNING_NEAR, units)} of it.`,
          waysOut: [],
        },
      ];
    });
  },
});
