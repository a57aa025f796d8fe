import * as v from "valibot";
import { say } from "../words/say.ts";
import { CROP_IDS, type CropId } from "./crop-ids.ts";
import { monthDay } from "./date-fields.ts";
import { point, size } from "./fields.ts";
import type { DeepReadonly } from "./readonly.ts";

const MOST_PLANTINGS = 60;

/** The id of a row of the crop table. */
export const cropField = v.picklist(CROP_IDS, () => say`is not a crop of the crop table`);

/** Different crops, in the order given. */
export const cropsField = v.pipe(
  v.array(cropField, () => say`must be a list of crops`),
  v.maxLength(CROP_IDS.length, () => say`has more than ${CROP_IDS.length} crops`),
);

export const plantingField = v.strictObject({
  crop: cropField,
  /** The day it is sown or planted where it is to grow; null for the usual day by the site's frosts. */
  from: v.nullable(monthDay),
  /** Its last day in the bed; null for as long as it takes until it is picked. May lie in the next year. */
  until: v.nullable(monthDay),
  /** Rows with plants close in them, or a block of plants equally far from one another. */
  set: v.picklist(["rows", "block"], () => say`must be rows or block`),
  /** From plant to plant in a row or block, mm; null as the crop table says. */
  apart: v.nullable(size),
  /** From row to row, mm; null as the crop table says. Unused in a block. */
  rowsApart: v.nullable(size),
  /** Rows run along the bed's length, in its own frame, or across it. */
  run: v.picklist(["along", "across"], () => say`must be along or across`),
  /** The part of the bed it has, in the bed's own frame: its middle and its sides, mm; null for an even part of what is left. */
  patch: v.nullable(v.strictObject({ at: point, width: size, length: size })),
});

export type Planting = DeepReadonly<v.InferOutput<typeof plantingField>>;

export const plantingsField = v.pipe(
  v.array(plantingField, () => say`must be a list of plantings`),
  v.maxLength(MOST_PLANTINGS, () => say`has more than ${MOST_PLANTINGS} plantings`),
);

type Planted = { readonly plantings: readonly Planting[] };

/** A crop as it is put into a bed when nothing else has been said. */
export const newPlanting = (crop: CropId): Planting => ({
  crop,
  from: null,
  until: null,
  set: "rows",
  apart: null,
  rowsApart: null,
  run: "along",
  patch: null,
});

/** Plantings of these crops, nothing else said. */
export const growing = (...crops: readonly CropId[]): readonly Planting[] => crops.map(newPlanting);

/** The different crops of a bed in the order they are listed. */
export const cropIdsOf = ({ plantings }: Planted): readonly CropId[] => [
  ...new Set(plantings.map(({ crop }) => crop)),
];

/** The plantings without these crops. */
export const withoutCrops = ({ plantings }: Planted, crops: Iterable<string>): readonly Planting[] => {
  const out = new Set<string>(crops);
  return plantings.filter(({ crop }) => !out.has(crop));
};
