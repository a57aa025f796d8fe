import type { ItemOf } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { labelOf } from "../label.ts";
import { type Pen, rule, traceCircle } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintLabel } from "./label.ts";

const SPOKES = 24;

/** A tree: its crown in chain line over a wash that what stands under it shows through, its trunk solid. */
export function paintTree(pen: Pen, tree: ItemOf<"tree">): void {
  const { ctx, view, units } = pen;
  ctx.beginPath();
  traceCircle(pen, tree.at, tree.canopy / 2);
  ctx.save();
  ctx.globalAlpha = 0.1;
  ctx.fillStyle = INK.leaf;
  ctx.fill();
  ctx.restore();
  rule(pen, { colour: INK.leaf, width: 1.5, dash: [9, 3, 1.5, 3] });
  if (tree.leaf === "evergreen") paintNeedles(pen, tree);

  const [x, y] = toScreen(view, tree.at);
  ctx.beginPath();
  ctx.arc(x, y, Math.max(4, (tree.trunk / 2) * view.scale), 0, 2 * Math.PI);
  ctx.fillStyle = INK.leaf;
  ctx.fill();
  paintLabel(pen, labelOf(tree, view, units));
}

/** An evergreen's crown carries short strokes inwards all round. */
function paintNeedles(pen: Pen, tree: ItemOf<"tree">): void {
  const { ctx, view } = pen;
  const [x, y] = toScreen(view, tree.at);
  const outer = (tree.canopy / 2) * view.scale;
  const inner = outer - Math.min(10, outer * 0.25);
  ctx.beginPath();
  for (let i = 0; i < SPOKES; i++) {
    const angle = (2 * Math.PI * i) / SPOKES;
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    ctx.moveTo(x + c * inner, y + s * inner);
    ctx.lineTo(x + c * outer, y + s * outer);
  }
  rule(pen, { colour: INK.leaf, width: 1 });
}
