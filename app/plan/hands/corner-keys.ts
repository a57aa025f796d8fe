import { add, midpoint, type Point, say } from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import type { Desk } from "./gesture.ts";
import { type Cornered, corneredBy, pointOps, pointsOf } from "./gestures/corner.ts";
import { reshapeLabel, saidOf } from "./names.ts";
import { inOneStep, wayWords } from "./nudge.ts";
import { isLine } from "./plan-points.ts";
import { removeCorner, reshape } from "./reshape.ts";

/** The corner that keys work on, where what it belongs to is still what is selected. */
interface Held {
  readonly cornered: Cornered;
  readonly points: readonly Point[];
  readonly index: number;
}

export function heldCorner(desk: Desk): Held | null {
  const { corner } = desk.marks.getState();
  const { garden, selection, yardSelected } = desk.editor.getState();
  if (!corner) return null;
  const isSelected = corner.id === null ? yardSelected : selection.size === 1 && selection.has(corner.id);
  const cornered = isSelected ? corneredBy(garden, corner.id) : undefined;
  if (cornered === undefined) return null;
  const points = pointsOf(garden, cornered);
  return corner.index < points.length ? { cornered, points, index: corner.index } : null;
}

/** Takes hold of the next or the last corner of the yard, or of a thing with corners of its own. */
export function nextCorner(desk: Desk, step: 1 | -1): boolean {
  const { garden, selection, yardSelected } = desk.editor.getState();
  const [only] = selection.size === 1 ? selection : [];
  if (only === undefined && !yardSelected) return false;
  const cornered = corneredBy(garden, only ?? null);
  if (cornered === undefined) return false;
  const { length } = pointsOf(garden, cornered);
  const held = heldCorner(desk);
  const index = held ? (held.index + step + length) % length : step > 0 ? 0 : length - 1;
  desk.marks.setState({ corner: { id: only ?? null, index } });
  desk.editor.getState().say(say`Corner ${index + 1} of ${length}`);
  return true;
}

/** Moves the corner that is held, a run of presses as one step; false where none is held. */
export function nudgeCorner(desk: Desk, by: Point, now = performance.now()): boolean {
  const held = heldCorner(desk);
  if (!held) return false;
  const { garden } = desk.editor.getState();
  const points = held.points.with(held.index, add(held.points[held.index]!, by));
  try {
    const label = reshapeLabel(held.cornered);
    const total = inOneStep(desk, label, pointOps(garden, held.cornered, points), by, now, held.index);
    const moved = say`corner ${held.index + 1} moved ${wayWords(total, garden.units)}`;
    tellDone(desk.editor, saidOf(held.cornered, moved));
  } catch (problem) {
    if (!(problem instanceof RangeError)) throw problem;
    desk.editor.getState().say(say`The outline would cross itself`);
  }
  return true;
}

/** Takes the corner that is held away; false where none is. */
export function takeCorner(desk: Desk): boolean {
  const held = heldCorner(desk);
  return held ? removeCorner(desk, held.cornered?.id ?? null, held.index) : false;
}

/** Puts a corner into the middle of the edge after the one that is held, and takes hold of it. */
export function splitEdge(desk: Desk): boolean {
  const held = heldCorner(desk);
  if (!held) return false;
  const { cornered, points, index } = held;
  const isEnd = index === points.length - 1;
  if (isEnd && cornered && isLine(cornered)) return false;
  const between = midpoint(points[index]!, points[isEnd ? 0 : index + 1]!);
  reshape(desk, cornered, points.toSpliced(index + 1, 0, between), say`corner added`);
  desk.marks.setState({ corner: { id: cornered?.id ?? null, index: index + 1 } });
  return true;
}
