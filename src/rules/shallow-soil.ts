import { type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import { rootRun } from "../crops/root-run.ts";
import { frameOf } from "../garden/frame.ts";
import { type GroundUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Cover } from "../garden/kinds/ground.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { cropIdsOf, withoutCrops } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { waysToDeepen } from "./deepen.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** What roots meet below the soil of a bed. */
interface Below {
  readonly words: string;
  readonly at: Point;
  /** Soil asked for whatever is grown. */
  readonly least: number;
  readonly asks: (crop: Crop) => number;
}

/**
 * Flags beds whose soil is too shallow for their crops, or for any vegetable at all.
 *
 * Paving, a deck, a roof, a sheet, and contaminated ground (which roots must not enter) stop roots: there a crop asks
 * for its whole root run, and no bed is shallower than the limit. Mesh does not stop them, but for long roots, which
 * have a rule of their own. A table bed is watered and fed like a pot, so it is held to the bed depth of its crops only.
 */
export const shallowSoil = defineRule({
  id: "shallow-soil",
  grade: "must",
  promise: "The soil of every bed is as deep as its crops' roots run.",
  why: "Where roots cannot go down they dry out in a day, and the crop is small.",
  source: LIMITS.hardDepth.source,
  limits: ["hardDepth", "openDepth"],
  needs: ["beds", "grounds", "limits", "units"],

  check({ beds, grounds, limits, units }) {
    return beds.flatMap((bed) => {
      const below = belowOf(bed, grounds.get(bed.id) ?? [], limits);
      const { soilDepth } = frameOf(bed);
      const crops = cropIdsOf(bed)
        .map(cropById)
        .filter((crop) => crop !== null);
      const need = Math.max(below.least, ...crops.map(below.asks));
      if (soilDepth >= need - SAME_LENGTH) return [];
      const tooDeep = crops.filter((crop) => below.asks(crop) > soilDepth + SAME_LENGTH);
      const [has, wants, short] = [soilDepth, need, need - soilDepth].map((depth) =>
        formatShort(depth, units),
      );
      const forWhat =
        tooDeep.length > 0 ? `for ${listedOrCounted(tooDeep.map(cropWord), "crops")}` : below.words;
      return [
        {
          itemIds: [bed.id],
          at: [below.at],
          measured: soilDepth,
          limit: need,
          unit: "mm" as const,
          title: `${nameOf(bed)}: soil ${short} too shallow ${forWhat}`,
          detail: `It holds ${has} of soil ${below.words}; ${wants} ${tooDeep.length > 0 ? "is what the roots ask for" : "is the least"}.`,
          waysOut: [...waysToDeepen(bed, need, units), ...leaveOut(bed, tooDeep, soilDepth, below)],
        },
      ];
    });
  },
});

const COVER_WORDS: Partial<Record<Cover, string>> = {
  paving: "over paving",
  deck: "on a deck",
  roof: "on a roof",
};

function belowOf(bed: Bed, grounds: readonly GroundUnder[], limits: Limits): Below {
  const middle = centroid(outlineOf(bed));
  const whole = (crop: Crop) => rootRun(crop, "hard");
  const open = (crop: Crop) => rootRun(crop, "soil");
  const stopped = (words: string, at: Point): Below => ({
    words,
    at,
    least: limits.hardDepth,
    asks: whole,
  });
  if (bed.legs !== null) return { words: "in a table bed", at: middle, least: 0, asks: open };
  const hard = grounds.find(({ ground }) => isHard(ground.cover));
  if (hard) return stopped(COVER_WORDS[hard.ground.cover] ?? "over hard ground", hard.at);
  if (bed.bottom.liner === "sheet") return stopped("over a sheet", middle);
  const bad = grounds.find(({ ground }) => ground.contaminated);
  if (bad) return stopped("over contaminated ground", bad.at);
  return { words: "over open ground", at: middle, least: limits.openDepth, asks: open };
}

/** Leaving out what is too deep-rooted helps only where the rest has soil enough. */
function leaveOut(bed: Bed, tooDeep: readonly Crop[], soilDepth: number, below: Below): WayOut[] {
  if (tooDeep.length === 0 || soilDepth < below.least - SAME_LENGTH) return [];
  const left = withoutCrops(
    bed,
    tooDeep.map(({ id }) => id),
  );
  return [
    {
      label: `Leave out ${listedOrCounted(tooDeep.map(cropWord), "crops")}`,
      ops: [{ op: "set", id: bed.id, changes: { plantings: left } }],
    },
  ];
}
