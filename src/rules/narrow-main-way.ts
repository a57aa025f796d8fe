import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { bottlenecks, itemsOf, openingShifts, sidesOf } from "./open-way.ts";
import { defineRule } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Flags beds that no barrow gets to, at the place where it sticks. */
export const narrowMainWay = defineRule({
  id: "narrow-main-way",
  grade: "should",
  promise: word("A barrow gets from a gate or a door to every bed."),
  why: word("Filling a bed takes dozens of barrow loads, and compost comes every year."),
  source: LIMITS.barrowWay.source,
  limits: ["barrowWay"],
  needs: ["garden", "access", "gardener", "limits", "units"],

  check({ garden, access, gardener, limits, units }) {
    if (!gardener.barrow) return [];
    const limit = limits.barrowWay;
    // A bed that cannot even be walked to has its own snag.
    const narrow = bottlenecks(
      access.beds,
      ({ width }) => width >= limits.standingRoom - SAME_LENGTH && width < limit - SAME_LENGTH,
    );
    return narrow.map((bottleneck) => {
      const { beds, gap } = bottleneck;
      const names = beds.map((id) => nameOf(garden.items.find((item) => item.id === id)!));
      return {
        itemIds: itemsOf(bottleneck),
        at: [gap.from, gap.to],
        measured: gap.width,
        limit,
        unit: "mm" as const,
        title: say`Way to ${listedOrCounted(names, "beds")}: ${formatShort(limit - gap.width, units)} too narrow for a barrow`,
        detail: say`The widest way narrows to ${formatShort(gap.width, units)} at ${sidesOf(gap, garden)}; a barrow needs ${formatShort(limit, units)}.`,
        get waysOut() {
          return openingShifts({ garden, access }, bottleneck, limit);
        },
      };
    });
  },
});
