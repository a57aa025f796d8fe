import { type Garden, outlineOf, type Ring } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { type Pen, traceRing } from "../pen.ts";
import type { CastShadow } from "./cast-shadows.ts";

/** How dark ground without any sun is drawn: hatches, names and marks stay readable in it. */
const DEPTH = 0.26;

let tracing: HTMLCanvasElement | null = null;

/**
 * Shadows within the yard, as a dark wash.
 *
 * They are first drawn on a tracing sheet, each as dense as the light it takes: where two overlap, what is left is the
 * product of what each lets through, and two solid shadows are no darker than one. Roofs are left as they are drawn.
 */
export function paintShadows(pen: Pen, shadows: readonly CastShadow[], garden: Garden): void {
  if (shadows.length === 0) return;
  const sheet = tracingSheet(pen);
  if (!sheet) return;
  const { ctx } = sheet;
  ctx.save();
  ctx.beginPath();
  traceRing(sheet, garden.yard);
  ctx.clip();
  ctx.fillStyle = INK.shadow;
  for (const { takes, rings, without } of shadows) {
    ctx.save();
    if (without) clipOut(sheet, [without]);
    ctx.globalAlpha = takes;
    ctx.beginPath();
    for (const ring of rings) traceRing(sheet, ring);
    ctx.fill();
    ctx.restore();
  }
  ctx.globalCompositeOperation = "destination-out";
  ctx.beginPath();
  for (const item of garden.items) {
    if (item.kind === "house" || item.kind === "shed") traceRing(sheet, outlineOf(item));
  }
  ctx.fill();
  ctx.restore();

  const { width, height } = sheet.ctx.canvas;
  pen.ctx.save();
  pen.ctx.globalAlpha = DEPTH;
  pen.ctx.drawImage(sheet.ctx.canvas, 0, 0, width / pen.ratio, height / pen.ratio);
  pen.ctx.restore();
}

/** A blank sheet as large and as fine as what the pen draws on. */
function tracingSheet(pen: Pen): Pen | null {
  tracing ??= document.createElement("canvas");
  const { width, height } = pen.ctx.canvas;
  if (tracing.width !== width) tracing.width = width;
  if (tracing.height !== height) tracing.height = height;
  const ctx = tracing.getContext("2d");
  if (!ctx) return null;
  ctx.setTransform(pen.ratio, 0, 0, pen.ratio, 0, 0);
  ctx.clearRect(0, 0, width / pen.ratio, height / pen.ratio);
  return { ...pen, ctx };
}

/** Keeps what is drawn from now on off some rings that do not overlap. */
export function clipOut(pen: Pen, rings: readonly Ring[]): void {
  const { ctx, ratio } = pen;
  ctx.beginPath();
  ctx.rect(0, 0, ctx.canvas.width / ratio, ctx.canvas.height / ratio);
  for (const ring of rings) traceRing(pen, ring);
  ctx.clip("evenodd");
}
