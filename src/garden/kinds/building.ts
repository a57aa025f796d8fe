import * as v from "valibot";
import { say } from "../../words/say.ts";
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
  /**
   * The side of its own frame, before it is turned, that the roof falls towards: a single pitch towards that side alone,
   * a gabled roof towards it and the one across. Unused for a flat roof.
   */
  roofFalls: v.picklist(["up", "right", "down", "left"], () => say`must be up, right, down or left`),
  /** Walls painted before lead paint was given up. */
  oldPaint: v.boolean(() => say`must be true or false`),
};

export const houseSchema = v.strictObject({ kind: v.literal("house"), ...building });
export const shedSchema = v.strictObject({ kind: v.literal("shed"), ...building });

export type House = DeepReadonly<v.InferOutput<typeof houseSchema>>;
export type Shed = DeepReadonly<v.InferOutput<typeof shedSchema>>;
