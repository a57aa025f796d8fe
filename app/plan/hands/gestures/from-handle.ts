import type { Desk, Gesture, Hand } from "../gesture.ts";
import type { Handle } from "../handles.ts";
import { corneredBy, startCorner } from "./corner.ts";
import { startPatchMove, startPatchSize } from "./patch.ts";
import { startResize } from "./resize.ts";
import { startCanopy, startInner, startOpening, startPathWidth } from "./sizes.ts";
import { startTurn } from "./turn.ts";

/** The gesture that a handle starts; null where its thing has gone. */
export function startFromHandle(desk: Desk, handle: Handle, start: Hand): Gesture | null {
  const { garden } = desk.editor.getState();
  if (handle.does === "corner" || handle.does === "new-corner") {
    const cornered = corneredBy(garden, handle.id);
    if (cornered === undefined) return null;
    return startCorner(desk, cornered, handle.index, handle.at, handle.does === "new-corner", start);
  }
  if (handle.does === "patch-move") return startPatchMove(desk, start);
  if (handle.does === "patch-size") return startPatchSize(desk, handle.grip, start);
  const item = garden.items.find(({ id }) => id === handle.id);
  if (!item) return null;
  switch (handle.does) {
    case "turn":
      return startTurn(desk, item, handle.at, start);
    case "resize":
      return "shape" in item ? startResize(desk, item, handle.grip, start) : null;
    case "inner":
      return "shape" in item ? startInner(desk, item, handle, start) : null;
    case "canopy":
      return item.kind === "tree" ? startCanopy(desk, item, handle, start) : null;
    case "opening":
      return item.kind === "gate" || item.kind === "door" ? startOpening(desk, item, handle, start) : null;
    case "path-width":
      return item.kind === "path" ? startPathWidth(desk, item, handle, start) : null;
  }
}
