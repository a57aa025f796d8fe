import { add, nameOf, type Point, plantsOf, say, turned } from "../../../src/index.ts";
import { countWords, cropTitle, plantingIn } from "../../planting/crop-words.ts";
import { tellDone } from "./announce.ts";
import type { Desk } from "./gesture.ts";
import { inOneStep } from "./nudge.ts";
import {
  type HeldPatch,
  heldPatch,
  LEAST_PATCH,
  type Patch,
  patchWithin,
  placeOps,
  selectedBed,
  sidesOf,
  soilBox,
} from "./patches.ts";

/** The planting that keys work on. */
export function heldPlanting({ editor, marks }: Desk): HeldPatch | null {
  const { garden, selection } = editor.getState();
  return heldPatch(garden, selection, marks.getState().patch);
}

/** Takes hold of the next or the last planting of the bed that is selected. */
export function nextPatch(desk: Desk, step: 1 | -1): boolean {
  const { garden, selection } = desk.editor.getState();
  const bed = selectedBed(garden, selection);
  if (!bed) return false;
  const { length } = bed.plantings;
  if (length === 0) {
    desk.editor.getState().say(say`No crops in this bed yet`);
    return true;
  }
  const held = heldPlanting(desk);
  const index = held ? (held.index + step + length) % length : step > 0 ? 0 : length - 1;
  desk.marks.setState({ patch: { id: bed.id, index }, corner: null });
  const now = plantsOf(bed, garden.site)[index];
  const what = cropTitle(bed.plantings[index]!.crop);
  const which = say`${what}, ${index + 1} of ${length}`;
  desk.editor.getState().say(now ? `${which}: ${countWords(now, garden.units)}` : which);
  return true;
}

/** Moves the place that is held, a run of presses as one step; false where none is held. */
export function nudgePatch(desk: Desk, by: Point, now = performance.now()): boolean {
  const held = heldPlanting(desk);
  const soil = held && soilBox(held.bed);
  if (!held || !soil) return false;
  // Arrows mean the screen, whichever way the bed is turned.
  const [dx, dy] = turned(by, -held.bed.turn);
  const sides = sidesOf(held.patch);
  const at = add(held.patch.at, [
    Math.max(soil.minX - sides.minX, Math.min(soil.maxX - sides.maxX, dx)),
    Math.max(soil.minY - sides.minY, Math.min(soil.maxY - sides.maxY, dy)),
  ]);
  setPlace(desk, held, { ...held.patch, at }, by, now);
  return true;
}

/** Makes the place that is held wider or longer by its right and lower sides; false where none is held. */
export function stretchPatch(desk: Desk, by: Point, now = performance.now()): boolean {
  const held = heldPlanting(desk);
  const soil = held && soilBox(held.bed);
  if (!held || !soil) return false;
  const [dx, dy] = turned(by, -held.bed.turn);
  const sides = sidesOf(held.patch);
  const end = (first: number, last: number, most: number, grown: number) =>
    Math.max(first + LEAST_PATCH, Math.min(most, last + grown));
  const next = patchWithin({
    ...sides,
    maxX: end(sides.minX, sides.maxX, soil.maxX, dx),
    maxY: end(sides.minY, sides.maxY, soil.maxY, dy),
  });
  setPlace(desk, held, next, by, now);
  return true;
}

/** Takes the planting that is held out of its bed; false where none is held. */
export function takePlanting(desk: Desk): boolean {
  const held = heldPlanting(desk);
  if (!held) return false;
  const { bed, index, planting } = held;
  desk.marks.setState({ patch: null });
  desk.editor
    .getState()
    .commit(say`Take out ${plantingIn(planting, nameOf(bed))}`, [
      { op: "set", id: bed.id, changes: { plantings: bed.plantings.toSpliced(index, 1) } },
    ]);
  tellDone(desk.editor, say`${cropTitle(planting.crop)} taken out of ${nameOf(bed)}`);
  return true;
}

function setPlace(desk: Desk, { bed, index, planting }: HeldPatch, patch: Patch, by: Point, now: number) {
  const tidied = patchWithin(sidesOf(patch));
  inOneStep(
    desk,
    say`Place ${plantingIn(planting, nameOf(bed))}`,
    placeOps(bed, index, tidied),
    by,
    now,
    index,
  );
  const { garden } = desk.editor.getState();
  const after = heldPlanting(desk);
  const there = after && plantsOf(after.bed, garden.site)[index];
  tellDone(desk.editor, `${cropTitle(planting.crop)}: ${there ? countWords(there, garden.units) : ""}`);
}
