import type { Box, Item, Point } from "../../../src/index.ts";
import { bodyOf, thicknessOf } from "./bodies.ts";
import { isLine, planPoints } from "./plan-points.ts";

export const movedBox = ({ minX, minY, maxX, maxY }: Box, [x, y]: Point): Box => ({
  minX: minX + x,
  minY: minY + y,
  maxX: maxX + x,
  maxY: maxY + y,
});

export const grownBox = ({ minX, minY, maxX, maxY }: Box, by: number): Box => ({
  minX: minX - by,
  minY: minY - by,
  maxX: maxX + by,
  maxY: maxY + by,
});

/** The first lies whole in the second. */
export const isWithin = (a: Box, b: Box): boolean =>
  a.minX >= b.minX && a.minY >= b.minY && a.maxX <= b.maxX && a.maxY <= b.maxY;

/** They share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;

/** Boxes round all that stands in the way of a thing; of a fence round the yard one for each stretch. */
export function standingBoxes(item: Item): readonly Box[] {
  if (!bodyOf(item).solid) return [];
  if (item.kind === "tree") {
    const [x, y] = item.at;
    return [grownBox({ minX: x, minY: y, maxX: x, maxY: y }, item.trunk / 2)];
  }
  if (!isLine(item)) return [bodyOf(item).bounds];
  const points = planPoints(item);
  return points.slice(1).map(([bx, by], i) => {
    const [ax, ay] = points[i]!;
    const line = {
      minX: Math.min(ax, bx),
      minY: Math.min(ay, by),
      maxX: Math.max(ax, bx),
      maxY: Math.max(ay, by),
    };
    return grownBox(line, thicknessOf(item) / 2);
  });
}
