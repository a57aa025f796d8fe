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

/** Flags layered beds with too little mix above the wood. A bed too shallow for layers has a rule of its own. */
export const thinMixOnTop = defineRule({
  id: "thin-mix-on-top",
  grade: "should",
  promise: word("Layered beds have enough mix above the wood."),
  why: word(
    "Roots feed in the top foot; below it there is only rotting wood, which takes nitrogen at first.",
  ),
  source: LIMITS.layeredMix.source,
  limits: ["layeredMix", "layeredFrom"],
  needs: ["beds", "limits", "units"],

  check({ beds, limits, units }) {
    const limit = limits.layeredMix;
    return beds.flatMap((bed) => {
      const { way, mixDepth } = bed.fill;
      const tall = frameOf(bed).soilDepth >= limits.layeredFrom - SAME_LENGTH;
      if (way !== "layered" || !tall || mixDepth >= limit - SAME_LENGTH) return [];
      const [has, wants] = [formatShort(mixDepth, units), formatShort(limit, units)];
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: mixDepth,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: only ${has} of mix over the wood`,
          detail: say`At least the top ${wants} of a layered bed is mix.`,
          waysOut: [withFill(bed, say`Put ${wants} of mix on top`, { mixDepth: limit })],
        },
      ];
    });
  },
});
