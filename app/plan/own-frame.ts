import type { Item, Point } from "../../src/index.ts";
import type { View } from "../store/editor.ts";

/**
 * From a thing's own frame straight to pixels: for what is drawn in the thousands, where a turn worked out for each point
 * would tell.
 */
export function ownToScreen(
  { at, turn }: Pick<Item, "at" | "turn">,
  { x, y, scale }: View,
): (own: Point) => Point {
  const angle = (turn * Math.PI) / 180;
  const [c, s] = [Math.cos(angle) * scale, Math.sin(angle) * scale];
  const [dx, dy] = [(at[0] - x) * scale, (at[1] - y) * scale];
  return ([px, py]) => [dx + px * c - py * s, dy + px * s + py * c];
}
