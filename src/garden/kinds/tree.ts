import * as v from "valibot";
import { share, size, sizeOrNone, standing } from "../fields.ts";
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
  /** Black walnut poisons the ground for many vegetables. */
  species: v.picklist(["other", "black-walnut"]),
});

export type Tree = DeepReadonly<v.InferOutput<typeof treeSchema>>;
