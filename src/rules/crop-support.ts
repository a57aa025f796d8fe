import type { Crop } from "../crops/crop-table.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { SAME_LENGTH } from "../units/length.ts";

/** Crops that lie on the ground and rot without a trellis; others that climb do better on one, but stand without. */
const NEED_TRELLIS: ReadonlySet<CropId> = new Set<CropId>(["bean-pole", "pea"]);
/** Crops that are grown up a trellis where there is one. */
const TAKE_TRELLIS: ReadonlySet<CropId> = new Set<CropId>([
  ...NEED_TRELLIS,
  "tomato",
  "cucumber",
  "bean-lima",
  "squash-winter",
  "cantaloupe",
]);

/** The least trellis a crop asks for, mm; 0 for one that stands without. */
export const trellisAskedBy = (crop: Crop): number =>
  NEED_TRELLIS.has(crop.id) ? (crop.supportHeight?.least ?? 0) : 0;

/** Whether it is grown up the trellis of its bed where there is one. */
export const climbs = ({ id }: Pick<Crop, "id">): boolean => TAKE_TRELLIS.has(id);

/** Whether a bed holds a crop up. */
export const holdsUp = (bed: Pick<Bed, "trellis">, crop: Crop): boolean =>
  (bed.trellis ?? 0) >= trellisAskedBy(crop) - SAME_LENGTH;

/** How tall a crop stands in a bed in summer, mm above the soil: as its trellis where it climbs one, else as it grows. */
export const standsTall = (crop: Crop, { trellis }: Pick<Bed, "trellis">): number =>
  climbs(crop) && trellis !== null ? trellis : (crop.matureHeight.least + crop.matureHeight.most) / 2;
