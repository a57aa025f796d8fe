import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { bottlenecks, itemsOf, openingShifts, sidesOf } from "./open-way.ts";
import { defineRule } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Flags beds that nobody can walk to, and says what closes them off. */
export const sealedOffBed = defineRule({
  id: "sealed-off-bed",
  grade: "must",
  promise: word("Every bed can be walked to from a gate or a door."),
  why: word("A bed that cannot be got to is neither planted nor picked."),
  source: LIMITS.standingRoom.source,
  limits: ["standingRoom"],
  needs: ["garden", "access", "limits", "units"],

  check({ garden, access, limits, units }) {
    const limit = limits.standingRoom;
    const closed = bottlenecks(access.beds, ({ width }) => width < limit - SAME_LENGTH);
    return closed.map((bottleneck) => {
      const { beds, gap } = bottleneck;
      const names = beds.map((id) => nameOf(garden.items.find((item) => item.id === id)!));
      const widest =
        gap.width < SAME_LENGTH
          ? say`there is no way`
          : say`the widest way is ${formatShort(gap.width, units)}`;
      return {
        itemIds: itemsOf(bottleneck),
        at: [gap.from, gap.to],
        measured: gap.width,
        limit,
        unit: "mm" as const,
        title: say`No way to ${listedOrCounted(names, "beds")}`,
        detail: say`Closed off by ${sidesOf(gap, garden)}: ${widest}, and somebody on foot needs ${formatShort(limit, units)}.`,
        get waysOut() {
          return openingShifts({ garden, access }, bottleneck, limit);
        },
      };
    });
  },
});
