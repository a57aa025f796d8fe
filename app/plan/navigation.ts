import { type Box, boundsOf, type Garden, outlineOf, type Point, placed } from "../../src/index.ts";
import { type Editor, shownGarden } from "../store/editor.ts";
import { usePlanSize } from "./plan-size.ts";
import { RULER } from "./rulers/ruler-size.ts";
import { fitted, pannedBy, zoomedAbout } from "./viewport.ts";

type Size = { readonly width: number; readonly height: number };

/** Room left round a fitted yard, px: the north arrow, the scale bar and the outermost labels stand in it. */
const MARGIN = 40;
const SMALL_MARGIN = 18;
const SMALL = 520;

/** All that is drawn: the yard, and what has been put outside it. */
export function extentOf(garden: Garden): Box {
  const points: Point[] = [...garden.yard];
  for (const item of garden.items) {
    if ("shape" in item) points.push(...outlineOf(item));
    else if ("points" in item) points.push(...item.points.map((point) => placed(point, item.at, item.turn)));
    else points.push(item.at);
  }
  return boundsOf(points);
}

/** Zooms by a factor about a pixel of the plan; about its middle if none is given. */
export function zoomBy(editor: Editor, factor: number, pixel?: Point, size: Size = usePlanSize.getState()) {
  const { view, setView } = editor.getState();
  setView(zoomedAbout(view, pixel ?? [size.width / 2, size.height / 2], factor));
}

/** Shows the whole garden, clear of the rulers. */
export function fitView(editor: Editor, size: Size = usePlanSize.getState()) {
  if (size.width <= 0 || size.height <= 0) return;
  const margin = Math.min(size.width, size.height) < SMALL ? SMALL_MARGIN : MARGIN;
  const box = extentOf(shownGarden(editor.getState()));
  const inner = fitted(box, size.width - RULER.left, size.height - RULER.top, margin);
  editor.getState().setView(pannedBy(inner, [RULER.left, RULER.top]));
}
