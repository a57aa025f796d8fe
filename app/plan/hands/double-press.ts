import { nameOf, type Point } from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import type { Desk } from "./gesture.ts";
import { type Cornered, corneredBy, pointOps, pointsOf } from "./gestures/corner.ts";
import { edgeAt, type Hit, type Nearness } from "./hit-test.ts";
import { isLine, leastPoints } from "./plan-points.ts";

/** A second press on the same place: takes a corner away, or puts one into an edge of what is selected. */
export function doublePress(desk: Desk, hit: Hit, at: Point, near: Nearness) {
  const { selection, yardSelected } = desk.editor.getState();
  if (hit.on === "handle" && hit.handle.does === "corner") {
    removeCorner(desk, hit.handle.id, hit.handle.index);
    return;
  }
  const [only] = selection.size === 1 ? selection : [];
  if (only !== undefined || yardSelected) insertCorner(desk, only ?? null, at, near);
}

function insertCorner(desk: Desk, id: Parameters<typeof corneredBy>[1], at: Point, near: Nearness) {
  const { garden } = desk.editor.getState();
  const cornered = corneredBy(garden, id);
  if (cornered === undefined) return;
  const points = pointsOf(garden, cornered);
  const edge = edgeAt(points, at, 2 * near.line, !cornered || !isLine(cornered));
  if (edge < 0) return;
  reshape(desk, cornered, points.toSpliced(edge + 1, 0, at), "corner added");
}

/** Takes a corner away, if enough are left for an outline or a line. */
export function removeCorner(desk: Desk, id: Parameters<typeof corneredBy>[1], index: number): boolean {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  const cornered = corneredBy(garden, id);
  if (cornered === undefined) return false;
  const points = pointsOf(garden, cornered);
  const least = cornered ? leastPoints(cornered) : 3;
  if (points.length <= least) {
    editor.getState().say(`${least} corners are the least it can have`);
    return true;
  }
  marks.setState({ corner: null });
  reshape(desk, cornered, points.toSpliced(index, 1), "corner removed");
  return true;
}

function reshape({ editor }: Desk, cornered: Cornered, points: readonly Point[], what: string) {
  const { garden, commit, say } = editor.getState();
  const name = cornered ? nameOf(cornered) : "the yard";
  try {
    commit(`Reshape ${name}`, pointOps(garden, cornered, points));
    tellDone(editor, `${name}: ${what}`);
  } catch (problem) {
    // Without that corner the outline may cross itself; no garden may hold that.
    if (!(problem instanceof RangeError)) throw problem;
    say("The outline would cross itself");
  }
}
