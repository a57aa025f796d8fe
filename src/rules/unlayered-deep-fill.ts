import { frameOf } from "../garden/frame.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShare } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { withFill } from "./fill-way-out.ts";
import { defineRule } from "./rule.ts";

/** Flags tall beds filled with bought mix from top to bottom, where wood below would do. */
export const unlayeredDeepFill = defineRule({
  id: "unlayered-deep-fill",
  grade: "should",
  promise: word("Tall beds are filled with wood below and mix on top."),
  why: word(
    "Fill is nearly all of what a garden costs, and below a foot of mix logs and branches serve the crops as well.",
  ),
  source: LIMITS.layeredFrom.source,
  limits: ["layeredFrom", "layeredMix"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    return beds.flatMap((bed) => {
      const { soilDepth } = frameOf(bed);
      if (bed.fill.way !== "mix" || soilDepth < limits.layeredFrom - SAME_LENGTH) return [];
      const saved = formatShare(1 - limits.layeredMix / soilDepth);
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: soilDepth,
          limit: limits.layeredFrom,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${formatShort(soilDepth, units)} of bought mix`,
          detail: say`With ${formatShort(limits.layeredMix, units)} of mix over logs, branches and leaves it takes ${saved} less. It sinks as the wood rots: top it up.`,
          // With no mix on top at all there is nothing to grow in: no way out.
          waysOut:
            limits.layeredMix > 0
              ? [
                  withFill(bed, say`Layer it, ${formatShort(limits.layeredMix, units)} of mix on top`, {
                    way: "layered",
                    mixDepth: limits.layeredMix,
                  }),
                ]
              : [],
        },
      ];
    });
  },
});
