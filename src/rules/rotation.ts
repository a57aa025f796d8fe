import { type Crop, cropById } from "../crops/crop-table.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { isPerennial } from "../planting/sowing-table.ts";

/** Whether a crop would follow last year's of its own family. Perennials that stand on follow nobody. */
export function followsItsFamily(crop: Crop, { lastYear }: Pick<Bed, "lastYear">): boolean {
  if (isPerennial(crop.id) && lastYear.includes(crop.id)) return false;
  return lastYear.some((id) => cropById(id)?.family === crop.family);
}

/** Last year's crops of the family of a crop. */
export const kinLastYear = (crop: Crop, { lastYear }: Pick<Bed, "lastYear">): readonly CropId[] =>
  lastYear.filter((id) => cropById(id)?.family === crop.family);
