import { CROP_SOURCES, type Crop } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { cropsOf } from "./crop-sun.ts";
import { holdsUp, trellisAskedBy } from "./crop-support.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { defineRule } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Flags beds with crops that climb and cannot do without, and no trellis, or one that is too low for them. */
export const noTrellis = defineRule({
  id: "no-trellis",
  grade: "should",
  promise: word("Every crop that has to climb has a trellis to climb."),
  why: word("Without one, vines lie on the wet soil and over their neighbours, and most of the crop rots."),
  source: CROP_SOURCES.support,
  needs: ["garden", "beds", "units"],

  check({ garden, beds, units }) {
    return beds.flatMap((bed) => {
      const climbing = cropsOf(bed).filter((crop) => !holdsUp(bed, crop));
      if (climbing.length === 0) return [];
      const need = Math.max(...climbing.map(trellisAskedBy));
      const [names, height] = [listedOrCounted(climbing.map(cropWord), "crops"), formatShort(need, units)];
      const has = bed.trellis;
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: has ?? 0,
          limit: need,
          unit: "mm" as const,
          title:
            has === null
              ? say`${nameOf(bed)}: no trellis for ${names}`
              : say`${nameOf(bed)}: trellis too low for ${names}`,
          detail: say`They climb ${height} at least; ${has === null ? say`there is nothing to climb` : say`the trellis stands ${formatShort(has, units)} above the soil`}.`,
          get waysOut() {
            const ids = new Set(climbing.map(({ id }) => id));
            const out = bed.plantings.filter(({ crop }) => ids.has(crop));
            const isFree = (crop: Crop) => trellisAskedBy(crop) === 0;
            return [
              {
                label:
                  has === null ? say`Put up a trellis ${height} high` : say`Make the trellis ${height} high`,
                ops: [{ op: "set" as const, id: bed.id, changes: { trellis: need } }],
              },
              ...otherCrop(garden, bed, out, { also: isFree }),
              ...otherBed(garden, bed, out),
            ];
          },
        },
      ];
    });
  },
});
