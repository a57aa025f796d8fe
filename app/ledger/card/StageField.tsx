import { type ItemOf, say } from "../../../src/index.ts";
import { NumberField } from "../fields/NumberField.tsx";
import { setItem } from "./set-item.ts";

const LAST_STAGE = 9;

/** Which spell of building a thing belongs to: takeoff, cost and build sheet can be had for each alone. */
export const StageField = ({ item }: { readonly item: ItemOf<"bed" | "path"> }) => (
  <NumberField
    label={say`Stage`}
    whole
    least={1}
    most={LAST_STAGE}
    value={item.stage}
    onCommit={(stage) => setItem(item, say`stage`, { stage })}
  />
);
