import { frameOf } from "../garden/frame.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { longestSide } from "./frame-bow.ts";
import { defineRule } from "./rule.ts";

/** Flags tall board walls without ties across: stakes alone lean outwards. Sides no longer than one span need none. */
export const untiedFrame = defineRule({
  id: "untied-frame",
  grade: "should",
  promise: word("Tall frames are tied across."),
  why: word("Soil pushes with the square of its height; what holds a low wall lets a tall one lean out."),
  source: LIMITS.tiesFrom.source,
  limits: ["tiesFrom", "stakeEvery"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    return beds.flatMap((bed) => {
      const { wall } = bed;
      const { soilDepth, outside } = frameOf(bed);
      if (wall.made !== "boards" || wall.bracing === "stakes-and-ties") return [];
      if (soilDepth < limits.tiesFrom - SAME_LENGTH) return [];
      const side = longestSide(outside);
      if (side.length <= limits.stakeEvery + SAME_LENGTH) return [];
      return [
        {
          itemIds: [bed.id],
          at: [side.at],
          measured: soilDepth,
          limit: limits.tiesFrom,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${formatShort(soilDepth, units)} of soil and no ties across`,
          detail: say`From ${formatShort(limits.tiesFrom, units)} of soil long sides are tied to each other, not only staked.`,
          waysOut: [
            {
              label: say`Tie the long sides across`,
              ops: [
                {
                  op: "set" as const,
                  id: bed.id,
                  changes: { wall: { ...wall, bracing: "stakes-and-ties" } },
                },
              ],
            },
          ],
        },
      ];
    });
  },
});
