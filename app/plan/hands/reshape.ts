import { type ItemId, type Point, say } from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import type { Desk } from "./gesture.ts";
import { type Cornered, corneredBy, pointOps, pointsOf } from "./gestures/corner.ts";
import { reshapeLabel, saidOf } from "./names.ts";
import { leastPoints } from "./plan-points.ts";

/** Takes a corner away, if enough are left for an outline or a line. */
export function removeCorner(desk: Desk, id: ItemId | null, index: number): boolean {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  const cornered = corneredBy(garden, id);
  if (cornered === undefined) return false;
  const points = pointsOf(garden, cornered);
  const least = cornered ? leastPoints(cornered) : 3;
  if (points.length <= least) {
    editor.getState().say(say`${least} corners are the least it can have`);
    return true;
  }
  marks.setState({ corner: null });
  reshape(desk, cornered, points.toSpliced(index, 1), say`corner removed`);
  return true;
}

/** Gives a thing or the yard other corners, as one step; what no garden may hold is refused aloud. */
export function reshape({ editor }: Desk, cornered: Cornered, points: readonly Point[], what: string) {
  const { garden, commit } = editor.getState();
  try {
    commit(reshapeLabel(cornered), pointOps(garden, cornered, points));
    tellDone(editor, saidOf(cornered, what));
  } catch (problem) {
    // Without that corner the outline may cross itself; no garden may hold that.
    if (!(problem instanceof RangeError)) throw problem;
    editor.getState().say(say`The outline would cross itself`);
  }
}
