import type { Point } from "../../../src/index.ts";
import { centroid, say } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { LETTERS, letter } from "../lettering.ts";
import { type Pen, rule, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";

/** A place that is only proposed for a bed: its outline, dashed over a thin wash. */
export function paintGhost(pen: Pen, ring: readonly Point[]): void {
  const { ctx } = pen;
  ctx.save();
  ctx.beginPath();
  traceRing(pen, ring);
  ctx.globalAlpha = 0.75;
  ctx.fillStyle = INK.accentWash;
  ctx.fill();
  ctx.restore();
  ctx.beginPath();
  traceRing(pen, ring, 2);
  rule(pen, { colour: INK.accent, width: 2, dash: [8, 5] });
  letter(pen, say`best place`, toScreen(pen.view, centroid(ring)), { ...LETTERS.size, colour: "accent" });
}
