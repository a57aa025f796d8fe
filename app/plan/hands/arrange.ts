import {
  type Alignment,
  alignOps,
  boundsOf,
  duplicateOps,
  type Garden,
  type Item,
  limitsOf,
  midSentence,
  orderOps,
  type Point,
  removeOps,
  type Stacking,
  say,
  spaceOps,
  told,
  word,
} from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import { extentOf } from "./bodies.ts";
import { isWithin, movedBox, overlap, standingBoxes } from "./boxes.ts";
import type { Desk } from "./gesture.ts";
import { gridStep } from "./grid.ts";
import { namesOf } from "./names.ts";

/** What can be done with everything selected at once; each is one step of history. All answer false with nothing selected. */

const selected = ({ editor }: Desk): readonly Item[] => {
  const { garden, selection } = editor.getState();
  return garden.items.filter(({ id }) => selection.has(id));
};

export function takeAway(desk: Desk): boolean {
  const items = selected(desk);
  if (items.length === 0) return false;
  const { selection, commit } = desk.editor.getState();
  commit(say`Remove ${namesOf(items)}`, removeOps([...selection]));
  tellDone(desk.editor, say`${namesOf(items)} removed`);
  return true;
}

const ORDER_WORDS: Readonly<Record<Stacking, string>> = {
  front: word("To the front"),
  back: word("To the back"),
  forward: word("One to the front"),
  backward: word("One to the back"),
};

/** Brings what is selected one step to the front or the back among all things, or all the way. */
export function order(desk: Desk, to: Stacking): boolean {
  const items = selected(desk);
  if (items.length === 0) return false;
  const { garden, selection, commit } = desk.editor.getState();
  const ops = orderOps(garden, [...selection], to);
  if (ops.length > 0) commit(`${told(ORDER_WORDS[to])}: ${namesOf(items)}`, ops);
  tellDone(desk.editor, `${namesOf(items)}: ${midSentence(told(ORDER_WORDS[to]))}`);
  return true;
}

/** Makes another of each thing selected, beside it where there is room, and selects the new ones. */
export function alike(desk: Desk): boolean {
  const items = selected(desk);
  if (items.length === 0) return false;
  const { garden, selection, view, commit, select } = desk.editor.getState();
  const ops = duplicateOps(
    garden,
    [...selection],
    besides(garden, items, gridStep(garden.units, view.scale)),
  );
  commit(say`Another ${namesOf(items)}`, ops);
  select(ops.flatMap((op) => (op.op === "add" ? [op.item.id] : [])));
  tellDone(desk.editor, say`${namesOf(items)} made again`);
  return true;
}

/** Lines up what is selected by an edge or its middles. */
export function align(desk: Desk, by: Alignment): boolean {
  const items = selected(desk);
  if (items.length < 2) return false;
  const { garden, selection, commit } = desk.editor.getState();
  commit(say`Line up ${namesOf(items)}`, alignOps(garden, [...selection], by));
  tellDone(desk.editor, say`${namesOf(items)} lined up`);
  return true;
}

/** Leaves equal gaps between the things selected, along one way of the plan. */
export function spaceEvenly(desk: Desk, along: "x" | "y"): boolean {
  const items = selected(desk);
  if (items.length < 3) return false;
  const { garden, selection, commit } = desk.editor.getState();
  commit(say`Space ${namesOf(items)} evenly`, spaceOps(garden, [...selection], along));
  tellDone(desk.editor, say`${namesOf(items)} spaced evenly`);
  return true;
}

/**
 * How far away copies go: beside the things with a way between, on the first side that is inside the yard and free;
 * a step down and to the right where no side is.
 */
export function besides(garden: Garden, items: readonly Item[], step: number): Point {
  const box = boundsOf(items.flatMap(extentOf));
  const { kneelingWay } = limitsOf(garden);
  const across = box.maxX - box.minX + kneelingWay;
  const down = box.maxY - box.minY + kneelingWay;
  const ways: readonly Point[] = [
    [across, 0],
    [0, down],
    [-across, 0],
    [0, -down],
  ];
  const yard = boundsOf(garden.yard);
  const taken = garden.items.flatMap(standingBoxes);
  const free = ways.find((by) => {
    const there = movedBox(box, by);
    return isWithin(there, yard) && taken.every((other) => !overlap(other, there));
  });
  return free ?? [4 * step, 4 * step];
}
