import {
  clockwise,
  distance,
  freshId,
  type Item,
  newItem,
  type Op,
  type Point,
  type Preset,
  say,
} from "../../../src/index.ts";
import { tellDone } from "./announce.ts";
import { bodyOf, yardBody } from "./bodies.ts";
import { type Desk, type Hand, tryPreview } from "./gesture.ts";
import { heldPoint, pointOps } from "./gestures/corner.ts";
import { selectedBed } from "./patches.ts";
import { dripLineOps, mainOps } from "./pipes.ts";
import { dropPlacing, finish, putDownNear } from "./placing.ts";
import { changesForPoints, hasPoints } from "./plan-points.ts";

/**
 * Drawing a line or an outline point by point: a tap a point, a second tap on the last one (or Enter) to end. A
 * single point ends as the barrow's own straight piece there.
 */
const DRAWN = {
  path: { preset: "path", least: 2 },
  fence: { preset: "fence", least: 2 },
  wall: { preset: "wall", least: 2 },
  "bed-free": { preset: "bed-free", least: 3 },
  "ground-free": { preset: "ground", least: 3 },
  yard: { preset: null, least: 3 },
  main: { preset: null, least: 2 },
  "drip-line": { preset: null, least: 2 },
} as const satisfies Record<string, { readonly preset: Preset | null; readonly least: number }>;

export type Drawn = keyof typeof DRAWN;

export const isDrawn = (placing: string | null): placing is Drawn =>
  placing !== null && Object.hasOwn(DRAWN, placing);

/** Taps nearer than this to an end of what is drawn end it, in pixels. */
const SAME_TAP = 10;

/** Shows where the next point would come to lie, and the thing as it would be with it. */
export function aimDrawing(desk: Desk, drawn: Drawn, hand: Hand) {
  const { points } = drawingOf(desk);
  const { at, guides } = nextPoint(desk, points, hand);
  desk.marks.setState({ drawing: { points, next: at }, guides });
  showDrawn(desk, drawn, [...points, at]);
}

/** One tap: another point, or the end where the tap falls on the first or the last one. */
export function tapDrawing(desk: Desk, drawn: Drawn, hand: Hand) {
  const { points } = drawingOf(desk);
  const { at } = nextPoint(desk, points, hand);
  const pixels = desk.editor.getState().view.scale;
  const isOn = (point: Point | undefined) =>
    point !== undefined && distance(point, hand.plan) * pixels <= SAME_TAP;
  const closes = points.length >= 3 && DRAWN[drawn].least === 3 && isOn(points[0]);
  if (closes || isOn(points.at(-1))) {
    endDrawing(desk, drawn);
    return;
  }
  desk.marks.setState({ drawing: { points: [...points, at], next: null } });
  showDrawn(desk, drawn, [...points, at]);
}

/** Takes the last point back. */
export function takePointBack(desk: Desk, drawn: Drawn) {
  const points = drawingOf(desk).points.slice(0, -1);
  desk.marks.setState({ drawing: { points, next: null } });
  showDrawn(desk, drawn, points);
}

/** Ends the drawing: it becomes a thing of the garden, or the yard's outline. */
export function endDrawing(desk: Desk, drawn: Drawn) {
  const { editor } = desk;
  const { points } = drawingOf(desk);
  const { preset, least } = DRAWN[drawn];
  if (points.length < least) {
    const [only] = points;
    if (preset && only && points.length === 1) putDownNear(desk, preset, only);
    else editor.getState().say(say`Needs at least ${least} points`);
    return;
  }
  const ops = opsFor(desk, drawn, points);
  if (ops.length === 0) {
    editor.getState().say(say`Choose a bed first`);
    return;
  }
  if (!tryPreview(desk, ops)) {
    editor.getState().say(say`This outline crosses itself; take a point back`);
    return;
  }
  const [first] = ops;
  if (first?.op === "add") finish(desk, first.item);
  else {
    dropPlacing(desk);
    closeDrawn(desk, drawn, ops);
  }
}

/** What is drawn and is no thing of its own. */
function closeDrawn({ editor }: Desk, drawn: Drawn, ops: readonly Op[]) {
  if (drawn === "main") {
    editor.getState().commit(say`Draw the main`, ops);
    tellDone(editor, say`Main drawn`);
  } else if (drawn === "drip-line") {
    editor.getState().commit(say`Draw a drip line`, ops);
    tellDone(editor, say`Drip line drawn`);
  } else {
    editor.getState().commit(say`Draw the yard`, ops);
    editor.getState().selectYard();
    tellDone(editor, say`Yard drawn`);
  }
}

const drawingOf = ({ marks }: Desk) => marks.getState().drawing ?? { points: [], next: null };

function nextPoint({ editor }: Desk, points: readonly Point[], hand: Hand) {
  const { garden, view } = editor.getState();
  const bodies = [...garden.items.map(bodyOf), yardBody(garden.yard)];
  const [first, last] = [points[0], points.at(-1)];
  const neighbours = [last, points.length > 1 ? first : undefined].filter((point) => point !== undefined);
  return heldPoint(garden, bodies, hand.plan, neighbours, hand, view.scale);
}

function showDrawn(desk: Desk, drawn: Drawn, points: readonly Point[]) {
  const { editor } = desk;
  if (points.length < DRAWN[drawn].least) {
    if (editor.getState().draft) editor.getState().dropPreview();
    return;
  }
  tryPreview(desk, opsFor(desk, drawn, points));
}

function opsFor({ editor }: Desk, drawn: Drawn, points: readonly Point[]): readonly Op[] {
  const { garden, selection } = editor.getState();
  const { preset, least } = DRAWN[drawn];
  if (drawn === "main") return mainOps(garden, points);
  if (drawn === "drip-line") return dripLineOps(selectedBed(garden, selection), points);
  if (preset === null) return pointOps(garden, null, points);
  const plain = newItem(preset, { id: freshId(garden, preset), at: [0, 0], units: garden.units });
  const shape = { type: "polygon" as const, points: clockwise(points) };
  const blank = least === 3 && "shape" in plain ? ({ ...plain, shape } as Item) : plain;
  if (!hasPoints(blank)) throw new RangeError(`"${preset}" is not drawn by its points`);
  const course = least === 3 ? clockwise(points) : points;
  return [{ op: "add", item: { ...blank, ...changesForPoints(blank, course) } as Item }];
}
