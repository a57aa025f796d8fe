import {
  add,
  formatSpoken,
  type Item,
  type ItemId,
  listed,
  type Op,
  type Point,
  say,
  type Units,
} from "../../../src/index.ts";
import type { Editor } from "../../store/editor.ts";
import { tellDone } from "./announce.ts";
import type { Desk } from "./gesture.ts";
import { namesOf } from "./names.ts";
import { carriedBy } from "./onto-line.ts";

/** Presses that follow one another within this time are one step of history, ms. */
const ONE_STEP_WITHIN = 1000;

/** The last run of presses on an editor: what it did so far, and the garden it left. */
interface Run {
  readonly label: string;
  readonly ids: string;
  readonly garden: unknown;
  readonly time: number;
  readonly by: Point;
}

const runs = new WeakMap<Editor, Run>();

/**
 * Moves what is selected, and what sits on it, by a key press.
 * @returns false with nothing selected
 */
export function nudge(desk: Desk, by: Point, now = performance.now()): boolean {
  const { garden, selection } = desk.editor.getState();
  const moving = garden.items.filter(({ id }) => selection.has(id));
  if (moving.length === 0) return false;
  const ids = [...moving, ...carriedBy(garden, new Set(moving))].map(({ id }) => id);
  const total = inOneStep(desk, say`Move ${namesOf(moving)}`, moveOps(ids, by), by, now);
  const words = wayWords(total, garden.units);
  tellDone(
    desk.editor,
    words ? say`${namesOf(moving)} moved ${words}` : say`${namesOf(moving)} back in place`,
  );
  return true;
}

/** Turns what is selected, and what sits on it, about its common middle by a key press. */
export function nudgeTurn(desk: Desk, by: number, now = performance.now()): boolean {
  const { garden, selection } = desk.editor.getState();
  const turning = garden.items.filter(({ id }) => selection.has(id));
  const [only] = turning;
  if (!only) return false;
  const about = turning.length === 1 ? only.at : middleOf(turning);
  const ids = [...turning, ...carriedBy(garden, new Set(turning))].map(({ id }) => id);
  const ops = ids.map((id): Op => ({ op: "turn", id, by, about }));
  const [total] = inOneStep(desk, say`Turn ${namesOf(turning)}`, ops, [by, 0], now);
  const far = Math.abs(total);
  const names = namesOf(turning);
  tellDone(desk.editor, total < 0 ? say`${names} turned ${far}° left` : say`${names} turned ${far}° right`);
  return true;
}

/** The mean of their places: it stays where it is while they turn, so that turns add up without drifting. */
const middleOf = (items: readonly Item[]): Point => {
  const [x, y] = items.reduce<Point>((sum, { at }) => add(sum, at), [0, 0]);
  return [x / items.length, y / items.length];
};

const moveOps = (ids: readonly ItemId[], by: Point): readonly Op[] =>
  ids.map((id) => ({ op: "move", id, by }));

/** Adds to the step of the press before it if nothing has happened since; tells how far the run has come. */
export function inOneStep(
  { editor }: Desk,
  label: string,
  ops: readonly Op[],
  by: Point,
  now: number,
  corner = -1,
): Point {
  const run = runs.get(editor);
  const { garden, selection, amend, commit } = editor.getState();
  const ids = [...selection, corner].join();
  const isSame = run && run.garden === garden && run.label === label && run.ids === ids;
  const goesOn = isSame && now - run.time < ONE_STEP_WITHIN ? run : null;
  if (goesOn) amend(ops);
  else commit(label, ops);
  const total: Point = goesOn ? [goesOn.by[0] + by[0], goesOn.by[1] + by[1]] : by;
  runs.set(editor, { label, ids, garden: editor.getState().garden, time: now, by: total });
  return total;
}

/** "1 ft right and 3 in up"; empty for no way at all. */
export function wayWords([x, y]: Point, units: Units): string {
  const [across, down] = [formatSpoken(Math.abs(x), units), formatSpoken(Math.abs(y), units)];
  return listed([
    ...(isNoWay(x) ? [] : [x > 0 ? say`${across} right` : say`${across} left`]),
    ...(isNoWay(y) ? [] : [y > 0 ? say`${down} down` : say`${down} up`]),
  ]);
}

const isNoWay = (mm: number): boolean => Math.abs(mm) < 0.01;
