import type Konva from "konva";
import type { Point, Ring, Units } from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { toScreen } from "./viewport.ts";

/** What a painter draws with: px of the plan's element on a canvas that is `ratio` times finer. */
export interface Pen {
  readonly ctx: CanvasRenderingContext2D;
  readonly view: View;
  readonly ratio: number;
  readonly units: Units;
}

/** A pen for a Konva shape's scene; the stage itself is never moved or scaled, so px are px of the plan. */
export const penFor = (context: Konva.Context, view: View, units: Units): Pen => ({
  ctx: context._context,
  view,
  ratio: context.canvas.getPixelRatio(),
  units,
});

/** A line's width in whole device pixels, and never none. */
export const lineWidth = ({ ratio }: Pick<Pen, "ratio">, width: number): number =>
  Math.max(1, Math.round(width * ratio)) / ratio;

/** Where the middle of an upright or level line of some width has to run to fill whole device pixels. */
export function crisp({ ratio }: Pick<Pen, "ratio">, at: number, width: number): number {
  const odd = Math.max(1, Math.round(width * ratio)) % 2 === 1;
  return odd ? (Math.floor(at * ratio) + 0.5) / ratio : Math.round(at * ratio) / ratio;
}

const squareRings = new WeakMap<Ring, boolean>();

/** Whether every edge is upright or level: only such a ring may be moved onto whole pixels without bending. */
function isSquare(ring: Ring): boolean {
  let square = squareRings.get(ring);
  if (square === undefined) {
    square = ring.every(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      return Math.abs(ax - bx) < 0.01 || Math.abs(ay - by) < 0.01;
    });
    squareRings.set(ring, square);
  }
  return square;
}

/** Adds a ring of the plan to the current path, for a line of some width (0 to fill it). */
export function traceRing(pen: Pen, ring: Ring, width = 0): void {
  const { ctx, view } = pen;
  const square = isSquare(ring);
  ring.forEach((corner, i) => {
    let [x, y] = toScreen(view, corner);
    if (square) [x, y] = [crisp(pen, x, width), crisp(pen, y, width)];
    if (i === 0) ctx.moveTo(x, y);
    else ctx.lineTo(x, y);
  });
  ctx.closePath();
}

/** Adds an open line of the plan to the current path. */
export function traceLine(pen: Pen, points: readonly Point[]): void {
  points.forEach((point, i) => {
    const [x, y] = toScreen(pen.view, point);
    if (i === 0) pen.ctx.moveTo(x, y);
    else pen.ctx.lineTo(x, y);
  });
}

/** Adds a circle of the plan to the current path. */
export function traceCircle(pen: Pen, centre: Point, radius: number): void {
  const [x, y] = toScreen(pen.view, centre);
  const r = radius * pen.view.scale;
  pen.ctx.moveTo(x + r, y);
  pen.ctx.arc(x, y, r, 0, 2 * Math.PI);
}

export interface Line {
  readonly colour: string;
  readonly width: number;
  readonly dash?: readonly number[];
}

/** Strokes the current path. */
export function rule(pen: Pen, { colour, width, dash = [] }: Line): void {
  const { ctx } = pen;
  ctx.strokeStyle = colour;
  ctx.lineWidth = lineWidth(pen, width);
  ctx.setLineDash([...dash]);
  ctx.stroke();
  if (dash.length > 0) ctx.setLineDash([]);
}
