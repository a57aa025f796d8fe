import * as v from "valibot";
import { count, share, size, sizeOrNone, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";

export const treeSchema = v.strictObject({
  kind: v.literal("tree"),
  ...standing,
  trunk: size,
  /** Diameter of the crown, mm. */
  canopy: size,
  height: size,
  /** Ground to the lowest of the crown, mm. */
  crownBase: sizeOrNone,
  leaf: v.picklist(["evergreen", "leaf-dropping"]),
  /** Share of direct light that gets through, in leaf and bare. */
  lightInLeaf: share,
  lightBare: share,
  /** First and last month in leaf, 1 for January, of a tree that drops its leaves; null for what is usual in its hemisphere. */
  inLeaf: v.nullable(v.strictObject({ from: count(12), to: count(12) })),
  /** Black walnut poisons the ground for many vegetables. */
  species: v.picklist(["other", "black-walnut"]),
});

export type Tree = DeepReadonly<v.InferOutput<typeof treeSchema>>;
