import { type BedDrip, type Box, boundsOf, type DripPlan, type Point } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
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
 */
export function paintDrip(pen: Pen, { main, beds }: Pick<DripPlan, "main" | "beds">): void {
  const { ctx } = pen;
  ctx.beginPath();
  for (const run of main.runs) traceLine(pen, run);
  rule(pen, { colour: INK.sheet, width: 5 });
  rule(pen, { colour: INK.water, width: 2.5, dash: [14, 4] });
  for (const bed of beds) if (isInView(pen, boxOf(bed))) paintBed(pen, bed);
}

function paintBed(pen: Pen, { lines, header, emitters, apart, emittersApart, head }: BedDrip): void {
  const { ctx, view } = pen;
  if (apart * view.scale < LINES_FROM) return;
  ctx.beginPath();
  for (const run of header) traceLine(pen, run);
  rule(pen, { colour: INK.water, width: 1.75 });
  ctx.beginPath();
  for (const run of lines) traceLine(pen, run);
  rule(pen, { colour: INK.water, width: 1 });
  const gap = emittersApart * view.scale;
  if (gap >= EMITTERS_FROM) paintDots(pen, emitters, gap < EMITTERS_LARGE_FROM ? DOT : LARGE_DOT);
  if (head) paintDots(pen, [head], 2 * DOT);
}

function paintDots({ ctx, view }: Pen, at: readonly Point[], radius: number): void {
  ctx.beginPath();
  for (const point of at) {
    const [x, y] = toScreen(view, point);
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
