import * as v from "valibot";
import { standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";
import { shapeField } from "../shape-field.ts";

/** Ground where nothing may be built: a manhole, a buried line, the turning place of a car. It can be walked on. */
export const keepClearSchema = v.strictObject({
  kind: v.literal("keep-clear"),
  ...standing,
  shape: shapeField,
});

export type KeepClear = DeepReadonly<v.InferOutput<typeof keepClearSchema>>;
