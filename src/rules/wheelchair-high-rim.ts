import { frameOf } from "../garden/frame.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";
import { lowerWall } from "./tall-wall.ts";

/** Flags rims that a seated gardener cannot reach over. */
export const wheelchairHighRim = defineRule({
  id: "wheelchair-high-rim",
  grade: "must",
  promise: word("Every rim is low enough to be reached over from a wheelchair."),
  why: word("Over a higher rim the arm does not come down to the soil. Guidance for a private yard."),
  source: LIMITS.seatedRim.source,
  limits: ["seatedRim"],
  needs: ["beds", "gardener", "limits", "units"],

  check({ beds, gardener, limits, units }) {
    if (!gardener.wheelchair) return [];
    const limit = limits.seatedRim;
    return beds.flatMap((bed) => {
      const { rim } = frameOf(bed);
      if (rim <= limit + SAME_LENGTH) return [];
      const lower = lowerWall(bed.wall, limit - (bed.legs ?? 0), units);
      return [
        {
          itemIds: [bed.id],
          at: [bed.at],
          measured: rim,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: rim ${formatShort(rim - limit, units)} too high for a seated gardener`,
          detail: say`It stands ${formatShort(rim, units)} above the ground; ${formatShort(limit, units)} at most can be reached over.`,
          waysOut: lower
            ? [
                {
                  label: lower.label,
                  ops: [{ op: "set" as const, id: bed.id, changes: { wall: lower.wall } }],
                },
              ]
            : [],
        },
      ];
    });
  },
});
