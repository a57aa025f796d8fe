import {
  type BedDrip,
  type Box,
  boundsOf,
  type DripPlan,
  type ItemId,
  type Point,
} from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { brokenLine, isLettered, type Lettered } from "../broken-line.ts";
import { type Pen, rule, traceLine } from "../pen.ts";
import { toScreen } from "../viewport.ts";

/** Lines nearer than this to one another run together: only the main is drawn then, px. */
const LINES_FROM = 2.5;
/** Emitters from this far apart are marked on their line, px. */
const EMITTERS_FROM = 7;
/** From this far apart they are large enough to look at. */
const EMITTERS_LARGE_FROM = 24;
const [DOT, LARGE_DOT] = [1.4, 2.4];

/**
 * The main and the drip lines of a garden, as pipes are drawn: the main heavy in long dashes, lines fine, emitters as dots once they
 * can be told apart. What lies beside the canvas is left out.
 * @param lettering where words stand on a bed, which its lines keep clear of
 */
export function paintDrip(
  pen: Pen,
  { main, beds }: Pick<DripPlan, "main" | "beds">,
  lettering: (bedId: ItemId) => readonly Lettered[] = () => [],
): void {
  const { ctx } = pen;
  ctx.beginPath();
  for (const run of main.runs) traceLine(pen, run);
  rule(pen, { colour: INK.sheet, width: 5 });
  rule(pen, { colour: INK.water, width: 2.5, dash: [14, 4] });
  for (const bed of beds) {
    const isDrawn = bed.apart * pen.view.scale >= LINES_FROM && isInView(pen, boxOf(bed));
    if (isDrawn) paintBed(pen, bed, lettering(bed.bedId));
  }
}

function paintBed(pen: Pen, bed: BedDrip, places: readonly Lettered[]): void {
  const { ctx, view } = pen;
  const { lines, header, emitters, emittersApart, head } = bed;
  ctx.beginPath();
  for (const run of header) traceLine(pen, run);
  rule(pen, { colour: INK.water, width: 1.75 });
  ctx.beginPath();
  for (const run of lines) traceBroken(pen, run, places);
  rule(pen, { colour: INK.water, width: 1 });
  const gap = emittersApart * view.scale;
  if (gap >= EMITTERS_FROM) paintDots(pen, emitters, gap < EMITTERS_LARGE_FROM ? DOT : LARGE_DOT, places);
  if (head) paintDots(pen, [head], 2 * DOT, []);
}

function traceBroken({ ctx, view }: Pen, run: readonly Point[], places: readonly Lettered[]): void {
  const onScreen = run.map((point) => toScreen(view, point));
  for (const [from, to] of brokenLine(onScreen, places)) {
    ctx.moveTo(...from);
    ctx.lineTo(...to);
  }
}

function paintDots(
  { ctx, view }: Pen,
  at: readonly Point[],
  radius: number,
  places: readonly Lettered[],
): void {
  ctx.beginPath();
  for (const point of at) {
    const [x, y] = toScreen(view, point);
    if (isLettered([x, y], places)) continue;
    ctx.moveTo(x + radius, y);
    ctx.arc(x, y, radius, 0, 2 * Math.PI);
  }
  ctx.fillStyle = INK.water;
  ctx.fill();
}

const boxes = new WeakMap<BedDrip, Box | null>();

/** The box round all tubing of a bed; null where it has none. */
function boxOf(bed: BedDrip): Box | null {
  let box = boxes.get(bed);
  if (box === undefined) {
    const points = [...bed.lines.flat(), ...bed.header.flat()];
    box = points.length > 0 ? boundsOf(points) : null;
    boxes.set(bed, box);
  }
  return box;
}

function isInView({ ctx, view, ratio }: Pen, box: Box | null): boolean {
  if (!box) return false;
  const [left, top] = toScreen(view, [box.minX, box.minY]);
  const [right, bottom] = toScreen(view, [box.maxX, box.maxY]);
  return right >= 0 && bottom >= 0 && left <= ctx.canvas.width / ratio && top <= ctx.canvas.height / ratio;
}
