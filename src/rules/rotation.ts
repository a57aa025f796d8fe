import { type Crop, cropById } from "../crops/crop-table.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { cropIdsOf } from "../garden/plantings.ts";
import { isPerennial } from "../planting/sowing-table.ts";

/**
 * Last year's crops of the family of a crop that it would follow. Perennials that stand on have their own place in the bed:
 * they follow nobody, and nobody follows them.
 */
export function kinLastYear(crop: Crop, bed: Pick<Bed, "lastYear" | "plantings">): readonly CropId[] {
  const here = cropIdsOf(bed);
  const standsOn = (id: CropId) => isPerennial(id) && here.includes(id);
  if (standsOn(crop.id) && bed.lastYear.includes(crop.id)) return [];
  return bed.lastYear.filter((id) => !standsOn(id) && cropById(id)?.family === crop.family);
}

/** Whether a crop would follow last year's of its own family. */
export const followsItsFamily = (crop: Crop, bed: Pick<Bed, "lastYear" | "plantings">): boolean =>
  kinLastYear(crop, bed).length > 0;
