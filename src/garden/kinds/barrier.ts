import * as v from "valibot";
import { say } from "../../words/say.ts";
import { points, share, size, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";

const barrier = {
  ...standing,
  /** Middle line in its own frame. */
  points: points(2),
  thickness: size,
  height: size,
};

export const wallSchema = v.strictObject({
  kind: v.literal("wall"),
  ...barrier,
  oldPaint: v.boolean(() => say`must be true or false`),
});

export const fenceSchema = v.strictObject({
  kind: v.literal("fence"),
  ...barrier,
  /** Share of the fence that is gaps: 0 for solid boards. */
  open: share,
});

export type Wall = DeepReadonly<v.InferOutput<typeof wallSchema>>;
export type Fence = DeepReadonly<v.InferOutput<typeof fenceSchema>>;
