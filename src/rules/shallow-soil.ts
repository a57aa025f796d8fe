import { type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { cropIdsOf, withoutCrops } from "../garden/plantings.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { type Below, belowBed } from "./below-bed.ts";
import { waysToDeepen } from "./deepen.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/**
 * Flags beds whose soil is too shallow for their crops, or for any vegetable at all.
 *
 * Over what stops roots no bed is shallower than the limit. Mesh does not stop them, but for long roots, which have a rule
 * of their own.
 */
export const shallowSoil = defineRule({
  id: "shallow-soil",
  grade: "must",
  promise: word("The soil of every bed is as deep as its crops' roots run."),
  why: word("Where roots cannot go down they dry out in a day, and the crop is small."),
  source: LIMITS.hardDepth.source,
  limits: ["hardDepth", "openDepth"],
  needs: ["garden", "beds", "grounds", "limits", "units"],

  check({ garden, beds, grounds, limits, units }) {
    return beds.flatMap((bed) => {
      const below = belowBed(bed, grounds.get(bed.id) ?? [], limits);
      const { soilDepth } = frameOf(bed);
      const crops = cropIdsOf(bed)
        .map(cropById)
        .filter((crop) => crop !== null);
      const need = Math.max(below.least, ...crops.map(below.asks));
      if (soilDepth >= need - SAME_LENGTH) return [];
      const tooDeep = crops.filter((crop) => below.asks(crop) > soilDepth + SAME_LENGTH);
      const shown = (depth: number) => formatShort(depth, units);
      const [has, wants, short] = [shown(soilDepth), shown(need), shown(need - soilDepth)];
      const forWhat =
        tooDeep.length > 0 ? say`for ${listedOrCounted(tooDeep.map(cropWord), "crops")}` : below.words;
      return [
        {
          itemIds: [bed.id],
          at: [below.at],
          measured: soilDepth,
          limit: need,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: soil ${short} too shallow ${forWhat}`,
          detail:
            tooDeep.length > 0
              ? say`It holds ${has} of soil ${below.words}; ${wants} is what the roots ask for.`
              : say`It holds ${has} of soil ${below.words}; ${wants} is the least.`,
          get waysOut() {
            return [...waysToDeepen(bed, need, units), ...growOthers(garden, bed, tooDeep, soilDepth, below)];
          },
        },
      ];
    });
  },
});

/** Doing without what is too deep-rooted helps only where there is soil enough for anything. */
function growOthers(
  garden: Garden,
  bed: Bed,
  tooDeep: readonly Crop[],
  soilDepth: number,
  below: Below,
): WayOut[] {
  if (tooDeep.length === 0 || soilDepth < below.least - SAME_LENGTH) return [];
  const left = withoutCrops(
    bed,
    tooDeep.map(({ id }) => id),
  );
  const out = bed.plantings.filter((planting) => !left.includes(planting));
  return [
    ...otherCrop(garden, bed, out),
    ...otherBed(garden, bed, out),
    {
      label: say`Leave out ${listedOrCounted(tooDeep.map(cropWord), "crops")}`,
      ops: [{ op: "set", id: bed.id, changes: { plantings: left } }],
    },
  ];
}
