import { boundsOf, type Garden } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { gridSteps, marksBetween } from "../grid-steps.ts";
import { fillHatched } from "../hatch.ts";
import { crisp, lineWidth, type Pen, rule, traceRing } from "../pen.ts";
import { toPlan, toScreen } from "../viewport.ts";
import { GROUND_HATCH } from "./ground.ts";

const CORNER_DOT = 3.2;
const DOTS_NEED = 26;

/** The sheet the yard is drawn on: its ground, and the grid that follows the zoom. */
export function paintYardGround(pen: Pen, garden: Pick<Garden, "yard" | "units" | "site">): void {
  const { ctx } = pen;
  ctx.save();
  ctx.beginPath();
  traceRing(pen, garden.yard);
  ctx.fillStyle = INK.sheet;
  ctx.fill();
  ctx.clip();
  paintGrid(pen, garden);
  ctx.restore();
  const hatch = GROUND_HATCH[garden.site.ground.cover];
  // The yard at large is the page's ground: only what is hard underfoot is worth hatching all over.
  if (hatch && HARD.has(garden.site.ground.cover)) {
    ctx.save();
    ctx.globalAlpha = 0.5;
    ctx.beginPath();
    traceRing(pen, garden.yard);
    fillHatched(pen, hatch, toScreen(pen.view, garden.yard[0]!));
    ctx.restore();
  }
}

const HARD: ReadonlySet<string> = new Set(["paving", "deck", "roof"]);

function paintGrid(pen: Pen, { yard, units }: Pick<Garden, "yard" | "units">): void {
  const { ctx, view, ratio } = pen;
  const [width, height] = [ctx.canvas.width / ratio, ctx.canvas.height / ratio];
  const [left, top] = toPlan(view, [0, 0]);
  const [right, bottom] = toPlan(view, [width, height]);
  const origin = boundsOf(yard);
  const { major, minor } = gridSteps(view.scale, units);
  for (const [step, strength] of [
    [minor, 0.36],
    [major, 0.95],
  ] as const) {
    ctx.beginPath();
    for (const x of marksBetween(left, right, step, origin.minX)) {
      const px = crisp(pen, (x - view.x) * view.scale, 1);
      ctx.moveTo(px, 0);
      ctx.lineTo(px, height);
    }
    for (const y of marksBetween(top, bottom, step, origin.minY)) {
      const px = crisp(pen, (y - view.y) * view.scale, 1);
      ctx.moveTo(0, px);
      ctx.lineTo(width, px);
    }
    ctx.globalAlpha = strength;
    ctx.strokeStyle = INK.hair;
    ctx.lineWidth = lineWidth(pen, 0.5);
    ctx.stroke();
  }
  ctx.globalAlpha = 1;
}

/** The yard's line with a dot at each corner. */
export function paintYardLine(pen: Pen, { yard }: Pick<Garden, "yard">): void {
  const { ctx, view } = pen;
  ctx.beginPath();
  ctx.lineJoin = "miter";
  traceRing(pen, yard, 2);
  rule(pen, { colour: INK.ink, width: 2 });
  ctx.fillStyle = INK.ink;
  ctx.beginPath();
  yard.forEach((corner, i) => {
    const [x, y] = toScreen(view, corner);
    const [nx, ny] = toScreen(view, yard[(i + 1) % yard.length]!);
    // Corners closer than this are a curve, which dots would turn into a string of beads.
    if (Math.hypot(nx - x, ny - y) < DOTS_NEED) return;
    const [cx, cy] = [crisp(pen, x, 2), crisp(pen, y, 2)];
    ctx.moveTo(cx + CORNER_DOT, cy);
    ctx.arc(cx, cy, CORNER_DOT, 0, 2 * Math.PI);
  });
  ctx.fill();
}
