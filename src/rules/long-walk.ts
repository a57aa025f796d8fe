import { kitchenWalks } from "../access/kitchen-walks.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatDistance } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { moveNearer } from "./move-nearer.ts";
import { defineRule } from "./rule.ts";

/** Flags beds that are a long walk from the kitchen, measured along the way one really walks. */
export const longWalk = defineRule({
  id: "long-walk",
  grade: "should",
  promise: "From the kitchen door every bed is a short walk.",
  why: "A bed near the kitchen is looked after and picked every day; a far one is forgotten when it rains.",
  source: LIMITS.kitchenWalk.source,
  limits: ["kitchenWalk"],
  slow: true,
  needs: ["garden", "access", "beds", "limits", "units"],

  check({ garden, access, beds, limits, units }) {
    const limit = limits.kitchenWalk;
    return access.beds.flatMap(({ id, kitchen }) => {
      const bed = beds.find((candidate) => candidate.id === id);
      if (!bed || !kitchen || kitchen.length <= limit + SAME_LENGTH) return [];
      return [
        {
          itemIds: [id],
          at: [kitchen.points.at(-1)!],
          measured: kitchen.length,
          limit,
          unit: "mm" as const,
          title: `${nameOf(bed)}: ${formatDistance(kitchen.length, units)} walk from the kitchen`,
          detail: `The shortest walk there is ${formatDistance(kitchen.length, units)}; within ${formatDistance(limit, units)} a garden is used daily.`,
          get waysOut() {
            return moveNearer({ garden, access }, bed, kitchen, {
              limit,
              label: `Move to within ${formatDistance(limit, units)} of the kitchen door`,
              lengthOf: (after, moved) => kitchenWalks(after).walkTo(moved)?.length ?? Infinity,
            });
          },
        },
      ];
    });
  },
});
