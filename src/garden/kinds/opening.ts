import * as v from "valibot";
import { say } from "../../words/say.ts";
import { size, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";

/**
 * Gates and doors. In its own frame the opening lies along x, centred; the leaf hangs at the left (-x) or
 * right (+x) end and swings towards +y ("out", away from the house for a door) or -y ("in").
 */
const opening = {
  ...standing,
  /** Clear opening, mm. */
  width: size,
  hinge: v.picklist(["left", "right"]),
  swing: v.picklist(["out", "in", "sliding"]),
};

export const gateSchema = v.strictObject({ kind: v.literal("gate"), ...opening });
export const doorSchema = v.strictObject({
  kind: v.literal("door"),
  ...opening,
  /** The door that lettuce is carried to. */
  kitchen: v.boolean(() => say`must be true or false`),
});

export type Gate = DeepReadonly<v.InferOutput<typeof gateSchema>>;
export type Door = DeepReadonly<v.InferOutput<typeof doorSchema>>;
