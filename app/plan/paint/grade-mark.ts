import type { Grade, Point } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import type { Pen } from "../pen.ts";
import { MARK_RADIUS } from "../snag-marks.ts";

const HALO = 2;
/** An octagon's corners lie this far out along each axis of its sides. */
const OCTAGON = Math.tan(Math.PI / 8);

/**
 * The mark of a grade, told by its shape alone: must fix a filled eight-sided stop with a cross, should fix an
 * outlined triangle, worth knowing an outlined circle.
 */
export function paintGradeMark({ ctx }: Pen, grade: Grade, [x, y]: Point, active: boolean): void {
  ctx.save();
  ctx.translate(x, y);
  ctx.lineJoin = "round";
  if (active) {
    ctx.beginPath();
    ctx.arc(0, 0, MARK_RADIUS + 5, 0, 2 * Math.PI);
    ctx.strokeStyle = INK.accent;
    ctx.lineWidth = 2;
    ctx.stroke();
  }
  ctx.beginPath();
  SHAPES[grade](ctx);
  // A rim of paper parts the mark from any hatch and line.
  ctx.strokeStyle = INK.sheet;
  ctx.lineWidth = 2 * HALO + 1.7;
  ctx.stroke();
  ctx.fillStyle = grade === "must" ? INK.accent : INK.sheet;
  ctx.fill();
  if (grade !== "must") {
    ctx.strokeStyle = INK.ink;
    ctx.lineWidth = 1.7;
    ctx.stroke();
  }
  ctx.beginPath();
  SIGNS[grade](ctx);
  ctx.strokeStyle = grade === "must" ? INK.sheet : INK.ink;
  ctx.lineWidth = grade === "must" ? 2.2 : 1.9;
  ctx.stroke();
  ctx.restore();
}

const SHAPES: Readonly<Record<Grade, (ctx: CanvasRenderingContext2D) => void>> = {
  must(ctx) {
    const [far, near] = [MARK_RADIUS, MARK_RADIUS * OCTAGON];
    for (const [i, [x, y]] of [
      [-near, -far],
      [near, -far],
      [far, -near],
      [far, near],
      [near, far],
      [-near, far],
      [-far, near],
      [-far, -near],
    ].entries()) {
      if (i === 0) ctx.moveTo(x!, y!);
      else ctx.lineTo(x!, y!);
    }
    ctx.closePath();
  },
  should(ctx) {
    ctx.moveTo(0, -8.5);
    ctx.lineTo(9, 7.5);
    ctx.lineTo(-9, 7.5);
    ctx.closePath();
  },
  note(ctx) {
    ctx.arc(0, 0, 8.3, 0, 2 * Math.PI);
  },
};

const SIGNS: Readonly<Record<Grade, (ctx: CanvasRenderingContext2D) => void>> = {
  must(ctx) {
    ctx.moveTo(-3.4, -3.4);
    ctx.lineTo(3.4, 3.4);
    ctx.moveTo(3.4, -3.4);
    ctx.lineTo(-3.4, 3.4);
  },
  should(ctx) {
    ctx.moveTo(0, -3.4);
    ctx.lineTo(0, 2.4);
    ctx.moveTo(0, 3.9);
    ctx.lineTo(0, 5.8);
  },
  note(ctx) {
    ctx.moveTo(0, -4.8);
    ctx.lineTo(0, -2.9);
    ctx.moveTo(0, -1.2);
    ctx.lineTo(0, 4.8);
  },
};
