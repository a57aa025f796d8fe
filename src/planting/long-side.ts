import { boundsOf } from "../geometry/ring.ts";
import { type Shape, shapeRing } from "../geometry/shape.ts";

/**
 * Which way a bed is longer in its own frame, by the box round its shape; "y" where it is square, as trellises lie. Rows and
 * lines "along" a bed run this way.
 */
export function longSide(shape: Shape): "x" | "y" {
  const { minX, minY, maxX, maxY } = boundsOf(shapeRing(shape));
  return maxX - minX > maxY - minY ? "x" : "y";
}
