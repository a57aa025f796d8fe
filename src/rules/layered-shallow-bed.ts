import { frameOf } from "../garden/frame.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { withFill } from "./fill-way-out.ts";
import { defineRule } from "./rule.ts";

/** Flags beds that are layered though too shallow for wood below and enough mix above it. */
export const layeredShallowBed = defineRule({
  id: "layered-shallow-bed",
  grade: "should",
  promise: word("Only tall beds are layered."),
  why: word(
    "In a shallow bed the wood lies among the roots, takes nitrogen while it rots and lets the soil sink away.",
  ),
  source: LIMITS.allMixTo.source,
  limits: ["layeredFrom", "allMixTo"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    return beds.flatMap((bed) => {
      const { soilDepth } = frameOf(bed);
      if (bed.fill.way !== "layered" || soilDepth >= limits.layeredFrom - SAME_LENGTH) return [];
      const [deep, from] = [formatShort(soilDepth, units), formatShort(limits.layeredFrom, units)];
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: soilDepth,
          limit: limits.layeredFrom,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: layered at ${deep} deep`,
          detail: say`Wood below pays from ${from} of depth; up to ${formatShort(limits.allMixTo, units)} it is mix throughout, and between the two mix is safer.`,
          waysOut: [withFill(bed, say`Fill it with mix throughout`, { way: "mix" })],
        },
      ];
    });
  },
});
