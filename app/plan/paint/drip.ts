import type { BedDrip, DripPlan, ItemId, Point } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { type Pen, rule, traceLine } from "../pen.ts";
import { toScreen } from "../viewport.ts";

/** Lines nearer than this to one another run together: only the main is drawn then, px. */
const LINES_FROM = 2.5;
/** Emitters from this far apart are marked on their line, px. */
const EMITTERS_FROM = 7;
const DOT = 1.4;

/**
 * The main and the drip lines of a garden, as pipes are drawn: the main heavy in long dashes, lines fine, emitters as dots once they
 * can be told apart.
 * @param held beds under the hand: their lines stay where they were, so they are left out until it lets go
 */
export function paintDrip(pen: Pen, plan: DripPlan, held: ReadonlySet<ItemId>): void {
  const { ctx } = pen;
  ctx.beginPath();
  for (const run of plan.main.runs) traceLine(pen, run);
  rule(pen, { colour: INK.sheet, width: 5 });
  rule(pen, { colour: INK.water, width: 2.5, dash: [14, 4] });
  for (const bed of plan.beds) if (!held.has(bed.bedId)) paintBed(pen, bed);
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
  if (emittersApart * view.scale >= EMITTERS_FROM) paintDots(pen, emitters, DOT);
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
