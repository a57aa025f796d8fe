import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatRatio } from "../units/format-figure.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** What a slope may exceed its limit by and still count as it: a slope is measured with a level and a tape. */
const SAME_SLOPE = 1e-4;

/** Flags beds on ground steeper than can be evened out under a frame. There is no way out but the spade. */
export const slopingBed = defineRule({
  id: "sloping-bed",
  grade: "note",
  promise: word("Beds stand on ground that is near enough level."),
  why: word("Water and soil run to the low end, and the low wall holds more than it looks."),
  source: LIMITS.bedSlope.source,
  limits: ["bedSlope"],
  needs: ["beds", "grounds", "limits"],

  check({ beds, grounds, limits }) {
    const limit = limits.bedSlope;
    return beds.flatMap((bed) => {
      const steepest = (grounds.get(bed.id) ?? []).toSorted((a, b) => b.ground.slope - a.ground.slope)[0];
      if (!steepest || bed.legs !== null || steepest.ground.slope <= limit + SAME_SLOPE) return [];
      const slope = formatRatio(steepest.ground.slope);
      return [
        {
          itemIds: [bed.id],
          at: [steepest.at],
          measured: steepest.ground.slope,
          limit,
          unit: "ratio" as const,
          title: say`${nameOf(bed)}: on a slope of ${slope}`,
          detail: say`Cut the bed in or step its frame, and set every rim level; up to ${formatRatio(limit)} it is evened out by hand.`,
          waysOut: [],
        },
      ];
    });
  },
});
