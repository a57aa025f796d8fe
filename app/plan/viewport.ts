import type { Box, Point } from "../../src/index.ts";
import type { View } from "../store/editor.ts";

/** The one place that turns plan millimetres into pixels of the plan's own element, and back. */
export const toScreen = (view: View, [x, y]: Point): Point => [
  (x - view.x) * view.scale,
  (y - view.y) * view.scale,
];
export const toPlan = (view: View, [x, y]: Point): Point => [
  x / view.scale + view.x,
  y / view.scale + view.y,
];

/** Pixels per mm: from a 1 km yard on a phone to a saw cut on a large screen. */
const LEAST_SCALE = 0.002;
const MOST_SCALE = 4;

/** Zooms by a factor so that what lies under a pixel stays under it. */
export function zoomedAbout(view: View, pixel: Point, factor: number): View {
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, view.scale * factor));
  const [x, y] = toPlan(view, pixel);
  return { scale, x: x - pixel[0] / scale, y: y - pixel[1] / scale };
}

export const pannedBy = (view: View, [dx, dy]: Point): View => ({
  ...view,
  x: view.x - dx / view.scale,
  y: view.y - dy / view.scale,
});

/** The view that shows a box whole, in the middle, with a margin of pixels round it. */
export function fitted(box: Box, width: number, height: number, margin: number): View {
  const room: Point = [Math.max(1, width - 2 * margin), Math.max(1, height - 2 * margin)];
  const across = Math.max(1, box.maxX - box.minX);
  const down = Math.max(1, box.maxY - box.minY);
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, Math.min(room[0] / across, room[1] / down)));
  return {
    scale,
    x: (box.minX + box.maxX) / 2 - width / 2 / scale,
    y: (box.minY + box.maxY) / 2 - height / 2 / scale,
  };
}
