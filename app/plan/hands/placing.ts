import {
  add,
  freshId,
  type Garden,
  type Item,
  isPreset,
  nameOf,
  newItem,
  type Point,
  type Preset,
  say,
} from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import { carry } from "./carrying.ts";
import { freePlace } from "./free-place.ts";
import { type Desk, type Hand, tryPreview } from "./gesture.ts";

/**
 * Bringing a thing from the barrow onto the plan: it shows under the hand, snapped as it would be when carried, and
 * is put down on release.
 */
export function showPlaced(desk: Desk, preset: Preset, hand: Hand) {
  const { editor, marks } = desk;
  const { garden, view } = editor.getState();
  const { item, guides } = carriedNew(garden, preset, hand, view.scale);
  if (tryPreview(desk, [{ op: "add", item }])) marks.setState({ guides, held: [item.id] });
}

/** Puts it down where the hand is, and selects it. */
export function putDown(desk: Desk, preset: Preset, hand: Hand) {
  const { garden, view } = desk.editor.getState();
  finish(desk, carriedNew(garden, preset, hand, view.scale).item);
}

/** Puts it down as near to a point of the plan as there is room for it: by keyboard nobody can aim. */
export function putDownNear(desk: Desk, preset: Preset, at: Point) {
  const { garden } = desk.editor.getState();
  const item = newItem(preset, { id: freshId(garden, preset), at, units: garden.units });
  const hand: Hand = { plan: freePlace(garden, item), pixel: [0, 0], free: false, even: false, touch: false };
  putDown(desk, preset, hand);
}

/** Takes away what shows under the hand; what waits to be placed goes on waiting. */
export function hidePlaced({ editor, marks }: Desk) {
  marks.setState({ guides: [], held: [] });
  if (editor.getState().draft) editor.getState().dropPreview();
}

/** Drops what waits to be placed, and what has been drawn of it. */
export function dropPlacing(desk: Desk) {
  hidePlaced(desk);
  desk.marks.setState({ drawing: null, patchFrom: null, readout: null });
  desk.editor.getState().pick(null);
}

export const pickedPreset = (placing: string | null): Preset | null =>
  placing !== null && isPreset(placing) ? placing : null;

function carriedNew(garden: Garden, preset: Preset, hand: Hand, pixels: number) {
  const item = newItem(preset, { id: freshId(garden, preset), at: hand.plan, units: garden.units });
  const { by, set, guides } = carry(garden, [item], [0, 0], { free: hand.free, even: false }, pixels);
  const placed: Item = { ...item, at: add(item.at, by), ...set };
  return { item: placed, guides };
}

/** Adds it as one step, and selects it. */
export function finish(desk: Desk, item: Item) {
  const { editor } = desk;
  dropPlacing(desk);
  editor.getState().commit(say`Add ${nameOf(item)}`, [{ op: "add", item }]);
  editor.getState().select([item.id]);
  tellDone(editor, say`${nameOf(item)} added`);
}
