import { type Point, type Shape, turned } from "../../../src/index.ts";

/** The box a shape lies in, in its own frame; null for a polygon, whose corners say it themselves. */
function boxOf(shape: Shape): Point | null {
  switch (shape.type) {
    case "rectangle":
    case "l":
    case "u":
    case "oval":
      return [shape.width, shape.length];
    case "keyhole":
      return [shape.diameter, shape.diameter];
    case "polygon":
      return null;
  }
}

interface Placed {
  readonly shape: Shape;
  readonly at: Point;
  readonly turn: number;
}

/**
 * What to set so that a thing takes another size and its first corner (left and top before it is turned) stays
 * where it is: somebody who types a width expects the other side to move, not both.
 */
export function grownTo(item: Placed, shape: Shape): { readonly shape: Shape; readonly at: Point } {
  const before = boxOf(item.shape);
  const after = boxOf(shape);
  if (!before || !after) return { shape, at: item.at };
  const [dx, dy] = turned([(after[0] - before[0]) / 2, (after[1] - before[1]) / 2], item.turn);
  return { shape, at: [item.at[0] + dx, item.at[1] + dy] };
}
