import * as v from "valibot";
import { size, sizeOrNone, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";
import { shapeField } from "../shape-field.ts";

const building = {
  ...standing,
  shape: shapeField,
  /** Ground to eaves, mm. */
  height: size,
  roof: v.picklist(["flat", "gabled", "single-pitch"]),
  /** Eaves to ridge, mm; 0 for a flat roof. */
  roofRise: sizeOrNone,
  /** Walls painted before lead paint was given up. */
  oldPaint: v.boolean("must be true or false"),
};

export const houseSchema = v.strictObject({ kind: v.literal("house"), ...building });
export const shedSchema = v.strictObject({ kind: v.literal("shed"), ...building });

export type House = DeepReadonly<v.InferOutput<typeof houseSchema>>;
export type Shed = DeepReadonly<v.InferOutput<typeof shedSchema>>;
