import type { ItemOf } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { labelOf } from "../label.ts";
import { type Pen, rule } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintLabel } from "./label.ts";

/** How deep the wall, fence or line is opened: through what it most likely stands in, mm, and never less than px. */
const DEPTH = 110;
const LEAST_DEPTH = 7;
const JAMB = 4;

/** A gate or door: the wall opened, its leaf, and the quarter turn it sweeps. */
export function paintOpening(pen: Pen, item: ItemOf<"gate" | "door">): void {
  const { ctx, view, units } = pen;
  const [x, y] = toScreen(view, item.at);
  const half = (item.width / 2) * view.scale;
  const depth = Math.max(LEAST_DEPTH, DEPTH * view.scale);
  ctx.save();
  ctx.translate(x, y);
  ctx.rotate((item.turn * Math.PI) / 180);

  ctx.fillStyle = INK.sheet;
  ctx.fillRect(-half, -depth / 2, 2 * half, depth);
  ctx.beginPath();
  for (const end of [-half, half]) {
    ctx.moveTo(end, -Math.max(JAMB, depth / 2));
    ctx.lineTo(end, Math.max(JAMB, depth / 2));
  }
  rule(pen, { colour: INK.ink, width: 1.5 });

  if (item.swing === "sliding") paintSlide(pen, half, item.hinge === "left" ? -1 : 1);
  else paintLeaf(pen, half, item.hinge === "left" ? -1 : 1, item.swing === "out" ? 1 : -1);
  ctx.restore();
  paintLabel(pen, labelOf(item, view, units));
}

/** The leaf stands open at a right angle; the arc is where it goes. */
function paintLeaf(pen: Pen, half: number, hinge: 1 | -1, out: 1 | -1): void {
  const { ctx } = pen;
  const leaf = 2 * half;
  ctx.beginPath();
  ctx.moveTo(hinge * half, 0);
  ctx.lineTo(hinge * half, out * leaf);
  rule(pen, { colour: INK.ink, width: 1.75 });
  ctx.beginPath();
  const shut = hinge === 1 ? Math.PI : 0;
  const open = (out * Math.PI) / 2;
  const anticlockwise = hinge === 1 ? out === 1 : out === -1;
  ctx.arc(hinge * half, 0, leaf, shut, open, anticlockwise);
  rule(pen, { colour: INK.faint, width: 1, dash: [4, 3] });
}

/** A sliding leaf runs along the wall past its post; the arrow says which way. */
function paintSlide(pen: Pen, half: number, side: 1 | -1): void {
  const { ctx } = pen;
  const lift = 4;
  ctx.beginPath();
  ctx.moveTo(-half, lift);
  ctx.lineTo(half, lift);
  rule(pen, { colour: INK.ink, width: 1.75 });
  ctx.beginPath();
  ctx.moveTo(side * half, lift);
  ctx.lineTo(side * 3 * half, lift);
  rule(pen, { colour: INK.faint, width: 1, dash: [4, 3] });
  ctx.beginPath();
  ctx.moveTo(side * half * 0.4, lift + 5);
  ctx.lineTo(side * half * 0.8, lift + 5);
  ctx.moveTo(side * (half * 0.8 - 4), lift + 2);
  ctx.lineTo(side * half * 0.8, lift + 5);
  ctx.lineTo(side * (half * 0.8 - 4), lift + 8);
  rule(pen, { colour: INK.faint, width: 1 });
}
