import { boundsOf, type Item, type ItemOf, type Point, placed, unplaced } from "../../../src/index.ts";

/** A thing whose course is given by its own points: a path, a fence, a wall. */
export type LineItem = ItemOf<"path" | "fence" | "wall">;
/** A thing whose outline is given by its own corners. */
export type FreeItem = Extract<Item, { shape: unknown }> & { readonly shape: { readonly type: "polygon" } };
export type PointedItem = LineItem | FreeItem;

export const isLine = (item: Item): item is LineItem =>
  item.kind === "path" || item.kind === "fence" || item.kind === "wall";
export const isFree = (item: Item): item is FreeItem => "shape" in item && item.shape.type === "polygon";
export const hasPoints = (item: Item): item is PointedItem => isLine(item) || isFree(item);

/** Fewest points such a thing can have. */
export const leastPoints = (item: PointedItem): number => (isLine(item) ? 2 : 3);

const ownPoints = (item: PointedItem): readonly Point[] => (isLine(item) ? item.points : item.shape.points);

/** Its points on the plan, in its own order. */
export const planPoints = (item: PointedItem): readonly Point[] =>
  ownPoints(item).map((point) => placed(point, item.at, item.turn));

/**
 * The fields that give a thing other points on the plan. Its place becomes the middle of them in its own frame, so
 * that it still turns about its middle.
 */
export function changesForPoints(item: PointedItem, points: readonly Point[]) {
  const own = points.map((point) => unplaced(point, item.at, item.turn));
  const { minX, minY, maxX, maxY } = boundsOf(own);
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  const at = placed(middle, item.at, item.turn);
  const centred = own.map(([x, y]): Point => [x - middle[0], y - middle[1]]);
  return isLine(item)
    ? { at, points: centred }
    : { at, shape: { type: "polygon" as const, points: centred } };
}
