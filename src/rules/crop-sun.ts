import { type Crop, cropById } from "../crops/crop-table.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import { cropIdsOf } from "../garden/plantings.ts";

/**
 * Hours this near to a limit are taken as it: the sun is looked at every ten minutes of twelve days, which is three minutes
 * off at the worst, and hours are shown to a tenth.
 */
export const SAME_HOURS = 0.05;

/** Hours a day a crop asks for. Leaf and root crops that bear part sun crop with the least that any vegetable needs. */
export const sunAskedBy = ({ sun }: Crop, limits: Limits): number =>
  sun === "full" ? limits.sun : Math.min(limits.sun, limits.sunLeast);

export const cropsOf = (bed: Bed): Crop[] =>
  cropIdsOf(bed)
    .map(cropById)
    .filter((crop) => crop !== null);

/** Hours a day a bed asks for: those of its hungriest crop; full sun while nothing is sown. */
export function sunWanted(bed: Bed, limits: Limits): number {
  const crops = cropsOf(bed);
  return crops.length === 0
    ? Math.max(limits.sun, limits.sunLeast)
    : Math.max(limits.sunLeast, ...crops.map((crop) => sunAskedBy(crop, limits)));
}
