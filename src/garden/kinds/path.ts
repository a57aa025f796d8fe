import * as v from "valibot";
import { say } from "../../words/say.ts";
import { points, size, sizeOrNone, stageField, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";
import { coverField } from "./ground.ts";

/** A drawn path: the way people are meant to take. It is walked on, so nothing is closed by it. */
export const pathSchema = v.strictObject({
  kind: v.literal("path"),
  ...standing,
  /** Middle line in the path's own frame. */
  points: points(2),
  width: size,
  /** The main way is wheeled along; a side path is walked. */
  use: v.picklist(["main", "side"]),
  surface: coverField,
  /** Depth of surfacing to be bought, mm; 0 where the ground is left as it is. */
  depth: sizeOrNone,
  /** What holds its edges, along both sides; null where nothing does. */
  edging: v.nullable(v.picklist(["timber", "metal", "brick"], () => say`must be timber, metal or brick`)),
  stage: stageField,
});

export type Path = DeepReadonly<v.InferOutput<typeof pathSchema>>;
