import { type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import { ROOT_RUN_SOURCES, rootRun } from "../crops/root-run.ts";
import { frameOf } from "../garden/frame.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { cropIdsOf, withoutCrops } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { waysToDeepen } from "./deepen.ts";
import { stoppedByMesh } from "./long-roots.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { defineRule } from "./rule.ts";
import { listed } from "./words.ts";

/**
 * Flags long-rooted crops in beds with mesh nearer than their roots run. Other roots are thin where they meet the
 * mesh and pass it.
 */
export const longRootsOverMesh = defineRule({
  id: "long-roots-over-mesh",
  grade: "should",
  promise: word("Long roots have their whole run above the mesh."),
  why: word("A carrot or parsnip that meets wire forks or grows into it, and lifting it tears the mesh."),
  source: ROOT_RUN_SOURCES.hard,
  needs: ["garden", "beds", "units"],

  check({ garden, beds, units }) {
    return beds.flatMap((bed) => {
      const { soilDepth } = frameOf(bed);
      const run = (crop: Crop) => rootRun(crop, "hard");
      const tooLong = cropIdsOf(bed)
        .map(cropById)
        .filter((crop) => crop !== null)
        .filter((crop) => stoppedByMesh(crop, bed));
      if (tooLong.length === 0) return [];
      const need = Math.max(...tooLong.map(run));
      const names = listed(tooLong.map(cropWord));
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: soilDepth,
          limit: need,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: mesh stops the roots of ${names}`,
          detail: say`The mesh lies below ${formatShort(soilDepth, units)} of soil; their roots run ${formatShort(need, units)}. Short-rooted sorts do with less.`,
          get waysOut() {
            const left = withoutCrops(
              bed,
              tooLong.map(({ id }) => id),
            );
            const out = bed.plantings.filter((planting) => !left.includes(planting));
            return [
              ...waysToDeepen(bed, need, units),
              ...otherCrop(garden, bed, out),
              ...otherBed(garden, bed, out),
              {
                label: say`Leave out ${names}`,
                ops: [{ op: "set" as const, id: bed.id, changes: { plantings: left } }],
              },
            ];
          },
        },
      ];
    });
  },
});
