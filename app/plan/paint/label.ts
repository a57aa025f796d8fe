import { INK } from "../../style/ink.ts";
import { type Label, lineLeading } from "../label.ts";
import { letter } from "../lettering.ts";
import type { Pen } from "../pen.ts";

const MASK = 4;

/** Draws a label's lines one under the other, about its middle. */
export function paintLabel(pen: Pen, label: Label | null, halo: string = INK.sheet, masked = false): void {
  if (!label) return;
  const { ctx, ratio } = pen;
  const { lines, at, turn, width, height } = label;
  // Level words on whole pixels are the sharpest.
  const [x, y] = turn === 0 ? [Math.round(at[0] * ratio) / ratio, Math.round(at[1] * ratio) / ratio] : at;
  ctx.save();
  ctx.translate(x, y);
  ctx.rotate((turn * Math.PI) / 180);
  if (masked) {
    ctx.fillStyle = halo;
    ctx.fillRect(-width / 2 - MASK, -height / 2, width + 2 * MASK, height);
  }
  let top = -height / 2;
  for (const line of lines) {
    const leading = lineLeading(line);
    letter(pen, line.text, [0, top + leading / 2], line.letters, { halo });
    top += leading;
  }
  ctx.restore();
}
