import { clockwise } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import type { Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import type { Item } from "./item.ts";

type Shaped = Extract<Item, { shape: unknown }>;

const outlines = new WeakMap<Shaped, Ring>();

/**
 * The outline of a thing that has a shape, on the plan, clockwise as seen. Remembered by the item itself, which
 * never changes: while one bed is dragged all others answer from memory.
 */
export function outlineOf(item: Shaped): Ring {
  let outline = outlines.get(item);
  if (!outline) {
    outline = clockwise(shapeRing(item.shape).map((corner) => placed(corner, item.at, item.turn)));
    outlines.set(item, outline);
  }
  return outline;
}
