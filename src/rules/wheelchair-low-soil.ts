import { soilHeightPasses } from "../access/wheelchair-standards.ts";
import { frameOf } from "../garden/frame.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { waysToDeepen } from "./deepen.ts";
import { defineRule } from "./rule.ts";

/** Flags soil that lies too low to be worked from a wheelchair. */
export const wheelchairLowSoil = defineRule({
  id: "wheelchair-low-soil",
  grade: "must",
  promise: word("All soil lies high enough to be worked from a wheelchair."),
  why: word(
    "Below the wheel's hub the hand does not get down without the body leaning out of the chair. Guidance for a private yard.",
  ),
  source: LIMITS.seatedSoil.source,
  limits: ["seatedSoil"],
  needs: ["beds", "gardener", "limits", "units"],

  check({ beds, gardener, limits, units }) {
    if (!gardener.wheelchair) return [];
    const limit = limits.seatedSoil;
    return beds.flatMap((bed) => {
      const legs = bed.legs ?? 0;
      const height = frameOf(bed).soilDepth + legs;
      if (soilHeightPasses(height, limits)) return [];
      return [
        {
          itemIds: [bed.id],
          at: [bed.at],
          measured: height,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: soil ${formatShort(limit - height, units)} too low for a seated gardener`,
          detail: say`It lies ${formatShort(height, units)} above the ground; from ${formatShort(limit, units)} it can be worked by a side reach.`,
          waysOut: waysToDeepen(bed, limit - legs, units),
        },
      ];
    });
  },
});
