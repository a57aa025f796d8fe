import type { Underlay } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { cornersOf } from "../../underlay/placing.ts";
import { type Pen, rule, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";

/** A photo or scan beneath all that is drawn; its outline alone while there is no picture to show. */
export function paintUnderlay(pen: Pen, underlay: Underlay, image: CanvasImageSource | null): void {
  const { ctx, view } = pen;
  if (image) {
    const [width, height] = underlay.pixels;
    const [x, y] = toScreen(view, underlay.at);
    const scale = underlay.mmPerPixel * view.scale;
    ctx.save();
    ctx.globalAlpha = underlay.opacity;
    ctx.imageSmoothingQuality = "medium";
    ctx.translate(x, y);
    ctx.rotate((underlay.turn * Math.PI) / 180);
    ctx.drawImage(image, (-width / 2) * scale, (-height / 2) * scale, width * scale, height * scale);
    ctx.restore();
  }
  // Whoever may move it has to see how far it reaches, however faint it is.
  if (image && underlay.locked) return;
  ctx.beginPath();
  traceRing(pen, cornersOf(underlay), 1);
  rule(pen, { colour: INK.faint, width: 1, dash: [6, 4] });
}
