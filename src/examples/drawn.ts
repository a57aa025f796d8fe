import { itemId } from "../garden/fields.ts";
import type { ItemOf } from "../garden/item.ts";
import { type BARROW, newItem, type Preset } from "../garden/new-item.ts";
import type { Point } from "../geometry/types.ts";
import type { Units } from "../units/length.ts";

type KindOf<P extends Preset> = Extract<(typeof BARROW)[number], { preset: P }>["kind"];
type Changes<P extends Preset> = Partial<Omit<ItemOf<KindOf<P>>, "kind" | "id" | "at">>;

/** Draws things of the barrow into an example: as they come, with these fields instead. */
export const drawnIn =
  (units: Units) =>
  <P extends Preset>(preset: P, id: string, at: Point, changes: Changes<P>): ItemOf<KindOf<P>> =>
    // The barrow gives the kind its preset stands for; the compiler cannot follow that through the table.
    ({ ...newItem(preset, { id: itemId(id), at, units }), ...changes }) as ItemOf<KindOf<P>>;
