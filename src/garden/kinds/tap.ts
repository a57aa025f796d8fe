import * as v from "valibot";
import { say } from "../../words/say.ts";
import { standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";

export const tapSchema = v.strictObject({
  kind: v.literal("tap"),
  ...standing,
  /** A vacuum breaker or another backflow device is fitted. */
  backflow: v.boolean(() => say`must be true or false`),
});

export type Tap = DeepReadonly<v.InferOutput<typeof tapSchema>>;
