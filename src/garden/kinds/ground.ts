import * as v from "valibot";
import { say } from "../../words/say.ts";
import { degrees, share, standing } from "../fields.ts";
import type { DeepReadonly } from "../readonly.ts";
import { shapeField } from "../shape-field.ts";

/** What lies underfoot, or under a bed. */
export const coverField = v.picklist([
  "soil",
  "lawn",
  "weeds",
  "bark",
  "loose-gravel",
  "firm-gravel",
  "paving",
  "deck",
  "roof",
]);

/** What is known of a piece of ground, for the yard at large and for each patch. */
export const groundFacts = {
  cover: coverField,
  /** Soil that food should not root in: lead, fuel, old fill. */
  contaminated: v.boolean(() => say`must be true or false`),
  /** The burrowing animal to keep out. */
  burrowing: v.picklist(["none", "gopher", "mole", "vole", "rat"]),
  /** Rise over run, 0.05 is 1 in 20. */
  slope: share,
  /** Which way the ground falls: degrees clockwise from up the plan. */
  falls: degrees,
};

export const groundFactsField = v.strictObject(groundFacts);

export const groundSchema = v.strictObject({
  kind: v.literal("ground"),
  ...standing,
  shape: shapeField,
  ...groundFacts,
});

export type GroundPatch = DeepReadonly<v.InferOutput<typeof groundSchema>>;
export type GroundFacts = DeepReadonly<v.InferOutput<typeof groundFactsField>>;
export type Cover = v.InferOutput<typeof coverField>;
