import type { Box, Point } from "../geometry/types.ts";
import { add, scale } from "../geometry/vector.ts";
import { boundsOfItem, boundsOfItems } from "./bounds-of-item.ts";
import type { ItemId } from "./fields.ts";
import type { Garden } from "./garden.ts";
import type { Item } from "./item.ts";
import type { Op } from "./op.ts";

export type Alignment = "left" | "right" | "top" | "bottom" | "centre-x" | "centre-y";

type Items = Pick<Garden, "items">;

/**
 * Moves that bring things into line with the box round all of them. Things already in line get no move.
 * @throws RangeError for an id that is not there
 */
export function alignOps(garden: Items, ids: readonly ItemId[], to: Alignment): Op[] {
  const items = itemsOf(garden, ids);
  if (items.length < 2) return [];
  const all = boundsOfItems(items);
  return items.flatMap((item) => moveOp(item, shiftInto(boundsOfItem(item), all, to)));
}

function shiftInto(box: Box, all: Box, to: Alignment): Point {
  switch (to) {
    case "left":
      return [all.minX - box.minX, 0];
    case "right":
      return [all.maxX - box.maxX, 0];
    case "top":
      return [0, all.minY - box.minY];
    case "bottom":
      return [0, all.maxY - box.maxY];
    case "centre-x":
      return [(all.minX + all.maxX - box.minX - box.maxX) / 2, 0];
    case "centre-y":
      return [0, (all.minY + all.maxY - box.minY - box.maxY) / 2];
    default: {
      const never: never = to;
      throw new RangeError(`unknown alignment ${never}`);
    }
  }
}

/**
 * Moves that leave equal gaps between the boxes of three things or more, in a row along an axis. The first and the last
 * stay where they are; where there is too little room the gaps are equal overlaps.
 * @throws RangeError for an id that is not there
 */
export function spaceOps(garden: Items, ids: readonly ItemId[], axis: "x" | "y"): Op[] {
  const along = (box: Box) =>
    (axis === "x" ? [box.minX, box.maxX] : [box.minY, box.maxY]) as [number, number];
  const middle = (item: Item) => {
    const [from, to] = along(boundsOfItem(item));
    return from + to;
  };
  const row = itemsOf(garden, ids).sort((a, b) => middle(a) - middle(b));
  const [first, last] = [row[0], row.at(-1)];
  if (!first || !last || row.length < 3) return [];

  const sizes = row.map((item) => {
    const [from, to] = along(boundsOfItem(item));
    return to - from;
  });
  const room = along(boundsOfItem(last))[1] - along(boundsOfItem(first))[0];
  const gap = (room - sizes.reduce((sum, size) => sum + size, 0)) / (row.length - 1);
  let next = along(boundsOfItem(first))[0];
  return row.flatMap((item, i) => {
    const by = next - along(boundsOfItem(item))[0];
    next += sizes[i]! + gap;
    const stays = i === 0 || i === row.length - 1;
    return stays ? [] : moveOp(item, axis === "x" ? [by, 0] : [0, by]);
  });
}

/**
 * Turns things together, clockwise as seen, about the middle of the places they stand at; one alone turns on its spot.
 * The middle stays where it is, so that turns add up without drifting.
 * @throws RangeError for an id that is not there
 */
export function turnOps(garden: Items, ids: readonly ItemId[], degrees: number): Op[] {
  const items = itemsOf(garden, ids);
  if (items.length <= 1) return items.map(({ id }) => ({ op: "turn", id, by: degrees }));
  const sum = items.reduce<Point>((total, { at }) => add(total, at), [0, 0]);
  const about = scale(sum, 1 / items.length);
  return items.map(({ id }) => ({ op: "turn", id, by: degrees, about }));
}

// Less than a nanometre is what arithmetic leaves over.
const STILL = 1e-6;

const moveOp = ({ id }: Item, by: Point): Op[] =>
  Math.abs(by[0]) < STILL && Math.abs(by[1]) < STILL ? [] : [{ op: "move", id, by }];

function itemsOf(garden: Items, ids: readonly ItemId[]): Item[] {
  return ids.map((id) => {
    const item = garden.items.find((one) => one.id === id);
    if (!item) throw new RangeError(`nothing in this garden is called "${id}"`);
    return item;
  });
}
