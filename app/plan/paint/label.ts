import { INK } from "../../style/ink.ts";
import { type Label, lineLeading } from "../label.ts";
import { letter } from "../lettering.ts";
import type { Pen } from "../pen.ts";

/** Draws a label's lines one under the other, about its middle. */
export function paintLabel(pen: Pen, label: Label | null, halo: string = INK.sheet): void {
  if (!label) return;
  const { ctx, ratio } = pen;
  const { lines, at, turn, height } = label;
  // Level words on whole pixels are the sharpest.
  const [x, y] = turn === 0 ? [Math.round(at[0] * ratio) / ratio, Math.round(at[1] * ratio) / ratio] : at;
  ctx.save();
  ctx.translate(x, y);
  ctx.rotate((turn * Math.PI) / 180);
  let top = -height / 2;
  for (const line of lines) {
    const leading = lineLeading(line);
    letter(pen, line.text, [0, top + leading / 2], line.letters, { halo });
    top += leading;
  }
  ctx.restore();
}
