import { type ItemId, type Point, plantsOf, say } from "../../../src/index.ts";
import { dayShown } from "../../planting/shown-day.ts";
import { standingThen } from "../../planting/standing-on.ts";
import type { Desk } from "./gesture.ts";
import { corneredBy, pointsOf } from "./gestures/corner.ts";
import { edgeAt, type Hit, type Nearness } from "./hit-test.ts";
import { plantingAt, selectedBed } from "./patches.ts";
import { isLine } from "./plan-points.ts";
import { removeCorner, reshape } from "./reshape.ts";

/** A second press on the same place: takes a corner away, or puts one into an edge of what is selected. */
export function doublePress(desk: Desk, hit: Hit, at: Point, near: Nearness) {
  const { selection, yardSelected } = desk.editor.getState();
  if (hit.on === "handle" && hit.handle.does === "corner") {
    removeCorner(desk, hit.handle.id, hit.handle.index);
    return;
  }
  if (takeHold(desk, at)) return;
  const [only] = selection.size === 1 ? selection : [];
  if (only !== undefined || yardSelected) insertCorner(desk, only ?? null, at, near);
}

/** Of the planting under the hand, in the bed that is selected. */
function takeHold({ editor, marks }: Desk, at: Point): boolean {
  const { garden, selection } = editor.getState();
  const bed = selectedBed(garden, selection);
  if (!bed) return false;
  const shown = new Set(standingThen(plantsOf(bed, garden.site), dayShown()).map(({ index }) => index));
  const index = plantingAt(bed, garden.site, at, (one) => shown.has(one));
  if (index < 0) return false;
  marks.setState({ patch: { id: bed.id, index } });
  return true;
}

function insertCorner(desk: Desk, id: ItemId | null, at: Point, near: Nearness) {
  const { garden } = desk.editor.getState();
  const cornered = corneredBy(garden, id);
  if (cornered === undefined) return;
  const points = pointsOf(garden, cornered);
  const edge = edgeAt(points, at, 2 * near.line, !cornered || !isLine(cornered));
  if (edge < 0) return;
  reshape(desk, cornered, points.toSpliced(edge + 1, 0, at), say`corner added`);
}
