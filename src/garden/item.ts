import * as v from "valibot";
import { say } from "../words/say.ts";
import { fenceSchema, wallSchema } from "./kinds/barrier.ts";
import { bedSchema } from "./kinds/bed.ts";
import { houseSchema, shedSchema } from "./kinds/building.ts";
import { groundSchema } from "./kinds/ground.ts";
import { keepClearSchema } from "./kinds/keep-clear.ts";
import { doorSchema, gateSchema } from "./kinds/opening.ts";
import { pathSchema } from "./kinds/path.ts";
import { tapSchema } from "./kinds/tap.ts";
import { treeSchema } from "./kinds/tree.ts";
import type { DeepReadonly } from "./readonly.ts";

/** Everything that can stand in a yard. */
export const itemSchema = v.variant(
  "kind",
  [
    bedSchema,
    pathSchema,
    groundSchema,
    houseSchema,
    shedSchema,
    wallSchema,
    fenceSchema,
    treeSchema,
    gateSchema,
    doorSchema,
    tapSchema,
    keepClearSchema,
  ],
  () => say`is not a kind of thing that can stand in a yard`,
);

export type Item = DeepReadonly<v.InferOutput<typeof itemSchema>>;
export type Kind = Item["kind"];
export type ItemOf<K extends Kind> = Extract<Item, { kind: K }>;

/** Makes a `switch` over kinds fail to compile, not to draw, when a kind is added. */
export const unreachable = (item: never): never => {
  throw new RangeError(`unknown kind of thing ${JSON.stringify(item)}`);
};
