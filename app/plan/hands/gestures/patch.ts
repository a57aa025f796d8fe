import { nameOf, type Point, plantsOf, say, subtract, turned, unplaced } from "../../../../src/index.ts";
import { countWords, plantingIn } from "../../../planting/crop-words.ts";
import type { Desk, Gesture, Hand } from "../gesture.ts";
import { heldCornerOf, heldPatchAt, type PatchGrid, patchGrid } from "../patch-snap.ts";
import {
  type HeldPatch,
  heldPatch,
  type Patch,
  patchPoint,
  patchWithin,
  placeOps,
  sidesOf,
} from "../patches.ts";
import type { Grip } from "../resize.ts";
import { cursorFor } from "./cursors.ts";
import { type Pulled, startPull } from "./pull.ts";

/** Carries the place of a planting about its bed. */
export const startPatchMove = (desk: Desk, start: Hand): Gesture | null =>
  startPatch(desk, start, "move", [0, 0], ({ patch, bed }, to, grid) => {
    const own = unplaced(to, bed.at, bed.turn);
    return heldPatchAt(patch, subtract(own, patch.at), grid);
  });

/** Pulls a side or a corner of the place of a planting; the opposite one stays where it is. */
export const startPatchSize = (desk: Desk, grip: Grip, start: Hand): Gesture | null =>
  startPatch(desk, start, null, grip, ({ patch, bed }, to, grid) => {
    const [x, y] = heldCornerOf(unplaced(to, bed.at, bed.turn), grid);
    const sides = { ...sidesOf(patch) };
    if (grip[0] < 0) sides.minX = Math.min(x, sides.maxX - grid.step);
    if (grip[0] > 0) sides.maxX = Math.max(x, sides.minX + grid.step);
    if (grip[1] < 0) sides.minY = Math.min(y, sides.maxY - grid.step);
    if (grip[1] > 0) sides.maxY = Math.max(y, sides.minY + grid.step);
    return patchWithin(sides);
  });

function startPatch(
  desk: Desk,
  start: Hand,
  cursor: string | null,
  grip: Grip,
  pulled: (held: HeldPatch, to: Point, grid: PatchGrid) => Patch,
): Gesture | null {
  const { editor, marks } = desk;
  const { garden, selection } = editor.getState();
  const held = heldPatch(garden, selection, marks.getState().patch);
  if (!held) return null;
  const { bed, index, planting, patch } = held;
  return startPull(
    desk,
    {
      handle: patchPoint(bed, patch, grip),
      held: [bed.id],
      cursor: cursor ?? cursorFor(turned(grip, bed.turn)),
      label: say`Place ${plantingIn(planting, nameOf(bed))}`,
      pulledTo(to, hand): Pulled {
        const grid = patchGrid(bed, index, garden, hand, editor.getState().view.scale);
        if (!grid) return { ops: [], text: "" };
        const next = pulled(held, to, grid);
        const plantings = bed.plantings.with(index, { ...planting, patch: next });
        const [now] = plantsOf({ ...bed, plantings }, garden.site).slice(index);
        return {
          ops: placeOps(bed, index, next),
          text: now ? countWords(now, garden.units) : "",
        };
      },
    },
    start,
  );
}
