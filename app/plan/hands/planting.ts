import {
  type CropId,
  type Garden,
  isCropId,
  nameOf,
  newPlanting,
  type Op,
  type Planting,
  type Point,
  plantsOf,
  say,
  unplaced,
} from "../../../src/index.ts";
import { countWords, cropTitle, plantingIn } from "../../planting/crop-words.ts";
import { tellDone } from "./announce.ts";
import { type Desk, type Gesture, type Hand, tryPreview } from "./gesture.ts";
import { heldCornerOf, patchGrid } from "./patch-snap.ts";
import { type Bed, bedAt, bedOf, type Patch, patchBetween, patchPoint, selectedBed } from "./patches.ts";
import { dropPlacing } from "./placing.ts";

/** What waits to be placed is a crop: the barrow's own word for it, and which crop. */
const WAITING = "crop";
export const USUAL_CROP: CropId = "lettuce-leaf";

export const placingCrop = (crop: CropId): string => `${WAITING}:${crop}`;

/** The crop that waits for its place; null where something else waits, or nothing. */
export function waitingCrop(placing: string | null): CropId | null {
  if (placing === WAITING) return USUAL_CROP;
  const [word, crop = ""] = placing?.split(":") ?? [];
  return word === WAITING && isCropId(crop) ? crop : null;
}

/** Draws a crop's place in a bed from corner to corner, its plants counted as it grows; null where no bed is under the hand. */
export function startPatchDraw(desk: Desk, crop: CropId, start: Hand): Gesture | null {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  const bed = bedAt(garden, start.plan);
  const from = bed && cornerIn(desk, bed, start);
  if (!bed || !from) return null;
  let patch: Patch | null = null;
  const letGo = () => marks.setState({ patchFrom: null, held: [], readout: null });
  marks.setState({ patchFrom: { id: bed.id, at: from }, held: [bed.id] });
  return {
    cursor: "crosshair",
    move(hand) {
      const to = cornerIn(desk, bed, hand);
      patch = to && patchBetween(from, to);
      showPatch(desk, garden, bed, crop, patch, hand.plan);
    },
    end() {
      letGo();
      putPatch(desk, bed, crop, patch);
    },
    cancel() {
      letGo();
      editor.getState().dropPreview();
    },
  };
}

/** Shows the place that a tap here would end. */
export function aimPatch(desk: Desk, crop: CropId, hand: Hand) {
  const { patchFrom } = desk.marks.getState();
  const { garden } = desk.editor.getState();
  const bed = patchFrom && bedOf(garden, patchFrom.id);
  if (!patchFrom || !bed) return;
  const to = cornerIn(desk, bed, hand);
  showPatch(desk, garden, bed, crop, to && patchBetween(patchFrom.at, to), hand.plan);
}

/** One tap: the first corner of a crop's place, or the one opposite it. */
export function tapPatch(desk: Desk, crop: CropId, hand: Hand) {
  const { editor, marks } = desk;
  const { patchFrom } = marks.getState();
  const bed = patchFrom
    ? bedOf(editor.getState().garden, patchFrom.id)
    : bedAt(editor.getState().garden, hand.plan);
  const at = bed && cornerIn(desk, bed, hand);
  if (!bed || !at) {
    editor.getState().say(say`Tap in a bed`);
    return;
  }
  if (!patchFrom) {
    marks.setState({ patchFrom: { id: bed.id, at } });
    editor.getState().say(say`Tap the opposite corner`);
    return;
  }
  marks.setState({ readout: null });
  putPatch(desk, bed, crop, patchBetween(patchFrom.at, at));
}

/** Gives a crop an even share of a bed: of the one given, else of the one selected. */
export function putShare(desk: Desk, crop: CropId, at: Point | null = null): boolean {
  const { garden, selection } = desk.editor.getState();
  const bed = at ? bedAt(garden, at) : selectedBed(garden, selection);
  if (!bed) {
    desk.editor.getState().say(at ? say`There is no bed here` : say`Choose a bed first`);
    return false;
  }
  plant(desk, bed, newPlanting(crop));
  return true;
}

function cornerIn({ editor }: Desk, bed: Bed, hand: Hand): Point | null {
  const { garden, view } = editor.getState();
  const grid = patchGrid(bed, -1, garden, hand, view.scale);
  return grid && heldCornerOf(unplaced(hand.plan, bed.at, bed.turn), grid);
}

const withPlanting = (bed: Bed, planting: Planting): readonly Op[] => [
  { op: "set", id: bed.id, changes: { plantings: [...bed.plantings, planting] } },
];

function showPatch(desk: Desk, garden: Garden, bed: Bed, crop: CropId, patch: Patch | null, at: Point) {
  const { editor, marks } = desk;
  if (!patch) {
    if (editor.getState().draft) editor.getState().dropPreview();
    marks.setState({ readout: null });
    return;
  }
  const planting = { ...newPlanting(crop), patch };
  if (!tryPreview(desk, withPlanting(bed, planting))) return;
  marks.setState({ readout: { at, text: `${cropTitle(crop)}: ${countOf(garden, bed, planting)}` } });
}

function putPatch(desk: Desk, bed: Bed, crop: CropId, patch: Patch | null) {
  if (patch) plant(desk, bed, { ...newPlanting(crop), patch });
  else {
    if (desk.editor.getState().draft) desk.editor.getState().dropPreview();
    desk.editor.getState().say(say`Draw it a little larger`);
  }
}

/** Adds a planting as one step, and takes hold of it. */
function plant(desk: Desk, bed: Bed, planting: Planting) {
  const { editor, marks } = desk;
  const { garden } = editor.getState();
  dropPlacing(desk);
  try {
    editor.getState().commit(say`Plant ${plantingIn(planting, nameOf(bed))}`, withPlanting(bed, planting));
  } catch (problem) {
    // A bed holds only so many plantings.
    if (!(problem instanceof RangeError)) throw problem;
    editor.getState().say(problem.message);
    return;
  }
  editor.getState().select([bed.id]);
  marks.setState({ patch: { id: bed.id, index: bed.plantings.length } });
  const what = say`${cropTitle(planting.crop)} in ${nameOf(bed)}`;
  tellDone(editor, `${what}: ${countOf(garden, bed, planting)}`);
}

function countOf({ site, units }: Garden, bed: Bed, planting: Planting): string {
  const patches = plantsOf({ ...bed, plantings: [...bed.plantings, planting] }, site);
  const now = patches.at(-1);
  return now ? countWords(now, units) : "";
}

/** The corner that a place is drawn from, on the plan; null while none is. */
export function drawnFrom(
  garden: Pick<Garden, "items">,
  from: { id: Bed["id"]; at: Point } | null,
): Point | null {
  const bed = from && bedOf(garden, from.id);
  return bed ? patchPoint(bed, { at: from.at, width: 0, length: 0 }, [0, 0]) : null;
}
