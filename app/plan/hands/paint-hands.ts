import { distance, formatLength, type Garden, type Item, outlineOf, type Point } from "../../../src/index.ts";
import type { EditorState } from "../../store/editor.ts";
import { INK } from "../../style/ink.ts";
import { LETTERS, letter } from "../lettering.ts";
import { paintDimension, paintTag } from "../paint/dimension.ts";
import { type Pen, rule, traceCircle, traceLine, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { edgesOf, extentOf } from "./bodies.ts";
import type { Guide } from "./constraints.ts";
import { type Handle, handlesOf } from "./handles.ts";
import type { Drawing, Marks } from "./marks.ts";
import { paintNeighbourDistances } from "./paint-distances.ts";
import { type HeldPatch, heldPatch, patchPoint } from "./patches.ts";
import { isLine, planPoints } from "./plan-points.ts";
import { drawnFrom } from "./planting.ts";

type Shown = Pick<EditorState, "selection" | "yardSelected" | "view" | "activeSnag"> & {
  /** As on the screen: the draft while a gesture runs. */
  readonly garden: Garden;
};

/** Everything of the hand's: what is selected, its distances, its handles, what it snaps to, what it draws. */
export function paintHands(pen: Pen, shown: Shown, marks: Marks): void {
  const { garden, selection, yardSelected } = shown;
  for (const item of garden.items) {
    if (selection.has(item.id)) paintOutline(pen, item, 2.5);
    else if (item.id === marks.pointed && marks.held.length === 0) paintOutline(pen, item, 1.25);
  }
  if (yardSelected) paintSelectedYard(pen, garden);
  const held = heldPatch(garden, selection, marks.patch);
  // Within a bed its neighbours are of no matter.
  if (!held && !marks.patchFrom) paintNeighbourDistances(pen, garden, measured(shown, marks));
  for (const guide of marks.guides) paintGuide(pen, guide);
  if (held) paintHeldPatch(pen, held);
  const busy = marks.held.length > 0 || marks.drawing !== null;
  if (!busy)
    for (const handle of handlesOf(garden, shown, marks.patch)) paintHandle(pen, handle, marks.corner);
  const from = drawnFrom(garden, marks.patchFrom);
  if (from) paintDrawing(pen, { points: [from], next: null }, garden);
  if (marks.drawing) paintDrawing(pen, marks.drawing, garden);
  if (marks.box) paintBox(pen, marks.box);
  if (marks.readout) {
    const [x, y] = toScreen(pen.view, marks.readout.at);
    paintTag(pen, [x, y - 26], marks.readout.text, INK.ink);
  }
}

/** The place of the planting that is held, under its handles. */
function paintHeldPatch(pen: Pen, { bed, patch }: HeldPatch): void {
  pen.ctx.beginPath();
  traceRing(
    pen,
    PATCH_CORNERS.map((corner) => patchPoint(bed, patch, corner)),
    1.5,
  );
  rule(pen, { colour: INK.accent, width: 1.5, dash: [5, 3] });
}

const PATCH_CORNERS = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** How far outside a side its length is written, in pixels. */
const BESIDE = 16;

/** The yard's line, and the length of each of its sides along it. */
function paintSelectedYard(pen: Pen, { yard, units }: Garden): void {
  pen.ctx.beginPath();
  traceRing(pen, yard, 2.5);
  rule(pen, { colour: INK.accent, width: 2.5 });
  for (const { normal, from, to } of edgesOf(yard)) {
    const [x, y] = middle(toScreen(pen.view, from), toScreen(pen.view, to));
    const place: Point = [x + normal[0] * BESIDE, y + normal[1] * BESIDE];
    const angle = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
    // Read from below or from the right, as on any drawing.
    const turn = angle >= 90 ? angle - 180 : angle < -90 ? angle + 180 : angle;
    letter(
      pen,
      formatLength(distance(from, to), units),
      place,
      { ...LETTERS.note, colour: "accent" },
      { turn },
    );
  }
}

/** Whose distances are shown: of the one thing held, else of the one selected while no snag is being looked at. */
function measured({ selection, activeSnag }: Shown, { held, drawing }: Marks): Item["id"] | null {
  if (drawing) return null;
  if (held.length > 0) return held.length === 1 ? held[0]! : null;
  const [only] = selection;
  return selection.size === 1 && only && activeSnag === null ? only : null;
}

function paintOutline(pen: Pen, item: Item, width: number): void {
  const { ctx } = pen;
  ctx.beginPath();
  if ("shape" in item) traceRing(pen, outlineOf(item), width);
  else if (isLine(item)) traceLine(pen, planPoints(item));
  else if (item.kind === "tree") traceCircle(pen, item.at, item.canopy / 2);
  else if (item.kind === "tap") {
    const [x, y] = toScreen(pen.view, item.at);
    ctx.arc(x, y, 12, 0, 2 * Math.PI);
  } else traceLine(pen, extentOf(item));
  rule(pen, { colour: INK.accent, width });
}

const HALF = 4.5;

function paintHandle(pen: Pen, handle: Handle, corner: Marks["corner"]): void {
  const { ctx } = pen;
  const [x, y] = toScreen(pen.view, handle.at);
  ctx.beginPath();
  if (handle.does === "turn") {
    const [sx, sy] = toScreen(pen.view, handle.stem);
    ctx.moveTo(sx, sy);
    ctx.lineTo(x, y);
    rule(pen, { colour: INK.accent, width: 1.25 });
    ctx.beginPath();
    ctx.arc(x, y, HALF + 1, 0, 2 * Math.PI);
  } else if (handle.does === "new-corner") {
    // Half a handle: there is no corner yet.
    ctx.arc(x, y, 3.2, 0, 2 * Math.PI);
  } else if (handle.does === "inner" || handle.does === "path-width" || handle.does === "patch-move") {
    ctx.moveTo(x, y - HALF - 1.5);
    ctx.lineTo(x + HALF + 1.5, y);
    ctx.lineTo(x, y + HALF + 1.5);
    ctx.lineTo(x - HALF - 1.5, y);
    ctx.closePath();
  } else ctx.rect(Math.round(x - HALF) + 0.5, Math.round(y - HALF) + 0.5, 2 * HALF, 2 * HALF);
  const isHeld = handle.does === "corner" && corner?.id === handle.id && corner.index === handle.index;
  ctx.fillStyle = isHeld ? INK.accent : INK.sheet;
  ctx.fill();
  rule(pen, { colour: INK.accent, width: 1.75 });
}

function paintGuide(pen: Pen, { kind, from, to, label }: Guide): void {
  const { ctx, view } = pen;
  const [a, b] = [toScreen(view, from), toScreen(view, to)];
  ctx.beginPath();
  if (kind === "line") {
    traceLine(pen, [from, to]);
    rule(pen, { colour: INK.water, width: 1.25, dash: [6, 4] });
    if (label) letter(pen, label, middle(a, b), { ...LETTERS.note, colour: "water" });
    return;
  }
  paintDimension(pen, { from, to, words: formatLength(distance(from, to), pen.units), colour: "water" });
  if (!label) return;
  // Beside the dimension line, on the side that reads upwards or to the right.
  const level = Math.abs(b[0] - a[0]) >= Math.abs(b[1] - a[1]);
  const [x, y] = middle(a, b);
  const place: Point = level ? [x, y + 16] : [x + 14, y + 15];
  letter(pen, label, place, { ...LETTERS.note, colour: "water" }, { align: level ? "center" : "left" });
}

function paintDrawing(pen: Pen, { points, next }: Drawing, { units }: Garden): void {
  const { ctx } = pen;
  const course = next ? [...points, next] : points;
  ctx.beginPath();
  traceLine(pen, course);
  rule(pen, { colour: INK.accent, width: 2 });
  for (const point of points) {
    const [x, y] = toScreen(pen.view, point);
    ctx.beginPath();
    ctx.rect(Math.round(x - HALF) + 0.5, Math.round(y - HALF) + 0.5, 2 * HALF, 2 * HALF);
    ctx.fillStyle = INK.sheet;
    ctx.fill();
    rule(pen, { colour: INK.accent, width: 1.75 });
  }
  const last = points.at(-1);
  if (next && last && distance(last, next) > 0) {
    const [x, y] = toScreen(pen.view, next);
    paintTag(pen, [x, y - 26], formatLength(distance(last, next), units), INK.ink);
  }
}

function paintBox(pen: Pen, [from, to]: readonly [Point, Point]): void {
  const { ctx } = pen;
  const [ax, ay] = toScreen(pen.view, from);
  const [bx, by] = toScreen(pen.view, to);
  ctx.beginPath();
  ctx.rect(Math.min(ax, bx), Math.min(ay, by), Math.abs(bx - ax), Math.abs(by - ay));
  ctx.save();
  ctx.globalAlpha = 0.25;
  ctx.fillStyle = INK.accentWash;
  ctx.fill();
  ctx.restore();
  rule(pen, { colour: INK.accent, width: 1.25, dash: [5, 4] });
}

const middle = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
