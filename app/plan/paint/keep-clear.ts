import { boundsOf, type ItemOf, outlineOf, type Point, placed } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { labelOf } from "../label.ts";
import { type Pen, rule, traceLine, traceRing } from "../pen.ts";
import { paintLabel } from "./label.ts";

/** Ground to be kept clear: a dashed outline, crossed from corner to corner. */
export function paintKeepClear(pen: Pen, item: ItemOf<"keep-clear">): void {
  const { ctx, view, units } = pen;
  const outline = outlineOf(item);
  ctx.save();
  ctx.beginPath();
  traceRing(pen, outline, 1.5);
  ctx.fillStyle = INK.sheet;
  ctx.globalAlpha = 0.7;
  ctx.fill();
  ctx.globalAlpha = 1;
  ctx.clip();
  ctx.beginPath();
  for (const diagonal of diagonalsOf(item)) traceLine(pen, diagonal);
  rule(pen, { colour: INK.hair, width: 1 });
  ctx.restore();
  ctx.beginPath();
  traceRing(pen, outline, 1.5);
  rule(pen, { colour: INK.ink, width: 1.25, dash: [7, 4] });
  paintLabel(pen, labelOf(item, view, units));
}

/** The two diagonals of the box round it in its own frame. */
function diagonalsOf(item: ItemOf<"keep-clear">): readonly (readonly Point[])[] {
  const { shape } = item;
  let box: readonly [number, number, number, number];
  if (shape.type === "polygon") {
    const { minX, minY, maxX, maxY } = boundsOf(shape.points);
    box = [minX, minY, maxX, maxY];
  } else {
    const [w, l] = shape.type === "keyhole" ? [shape.diameter, shape.diameter] : [shape.width, shape.length];
    box = [-w / 2, -l / 2, w / 2, l / 2];
  }
  const [left, top, right, bottom] = box;
  const on = (x: number, y: number) => placed([x, y], item.at, item.turn);
  return [
    [on(left, top), on(right, bottom)],
    [on(right, top), on(left, bottom)],
  ];
}
