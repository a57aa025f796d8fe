import * as v from "valibot";
import { say } from "../words/say.ts";
import type { DeepReadonly } from "./readonly.ts";

/** Cover crops there is a row for in the table of cover crops. */
export const COVER_CROP_IDS = [
  "rye",
  "winter-wheat",
  "oats",
  "crimson-clover",
  "hairy-vetch",
  "field-pea",
  "buckwheat",
  "white-clover",
  "red-clover",
  "mustard",
  "phacelia",
] as const;

export type CoverCropId = (typeof COVER_CROP_IDS)[number];

/** What the gardener has chosen of the year's work. */
export const upkeepField = v.strictObject({
  /** Topped up by the habit of 2 to 3 in, or by the advice of about 1 in. */
  topUp: v.picklist(["habit", "advice"], () => say`must be habit or advice`),
  topUpsAYear: v.picklist([1, 2], () => say`must be 1 or 2`),
  /** The cover crop of beds that have one in winter; null for the one that suits the winter. */
  cover: v.nullable(v.picklist(COVER_CROP_IDS, () => say`is not a cover crop of the table`)),
  /** The year in which the first beds are built; null while it is open. */
  firstYear: v.nullable(
    v.pipe(
      v.number(() => say`must be a number`),
      v.integer(() => say`must be a whole year`),
      v.minValue(1900, () => say`must be 1900 or later`),
      v.maxValue(2200, () => say`must be 2200 or earlier`),
    ),
  ),
});

export type Upkeep = DeepReadonly<v.InferOutput<typeof upkeepField>>;

/** What lies or grows on a bed in winter. */
export const winterField = v.picklist(
  ["cover-crop", "mulch", "sheet", "nothing"],
  () => say`must be cover-crop, mulch, sheet or nothing`,
);

export const USUAL_UPKEEP: Upkeep = { topUp: "habit", topUpsAYear: 1, cover: null, firstYear: null };
