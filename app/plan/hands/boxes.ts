import type { Box, Point } from "../../../src/index.ts";

export const movedBox = ({ minX, minY, maxX, maxY }: Box, [x, y]: Point): Box => ({
  minX: minX + x,
  minY: minY + y,
  maxX: maxX + x,
  maxY: maxY + y,
});

/** The first lies whole in the second. */
export const isWithin = (a: Box, b: Box): boolean =>
  a.minX >= b.minX && a.minY >= b.minY && a.maxX <= b.maxX && a.maxY <= b.maxY;

/** They share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
