import type { ItemOf } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { labelOf } from "../label.ts";
import { type Pen, rule } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintLabel } from "./label.ts";

const RADIUS = 6;

/** A tap: a ring of water with its pipe; the dot says a backflow device is fitted. */
export function paintTap(pen: Pen, tap: ItemOf<"tap">): void {
  const { ctx, view } = pen;
  const [x, y] = toScreen(view, tap.at);
  ctx.save();
  ctx.translate(x, y);
  ctx.rotate((tap.turn * Math.PI) / 180);
  ctx.beginPath();
  ctx.moveTo(0, -RADIUS - 5);
  ctx.lineTo(0, -RADIUS);
  rule(pen, { colour: INK.water, width: 2 });
  ctx.beginPath();
  ctx.arc(0, 0, RADIUS, 0, 2 * Math.PI);
  ctx.fillStyle = INK.sheet;
  ctx.fill();
  rule(pen, { colour: INK.water, width: 2 });
  if (tap.backflow) {
    ctx.beginPath();
    ctx.arc(0, 0, 2, 0, 2 * Math.PI);
    ctx.fillStyle = INK.water;
    ctx.fill();
  }
  ctx.restore();
  paintLabel(pen, labelOf(tap, view, pen.units));
}
