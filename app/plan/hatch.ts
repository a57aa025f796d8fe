import type { Point } from "../../src/index.ts";
import { inkAge } from "../style/ink.ts";
import { type HatchName, TILES } from "./hatch-tiles.ts";
import type { Pen } from "./pen.ts";

/**
 * The hatches of drawing practice. A hatch has one density on the screen whatever the zoom, as on paper, and is
 * drawn in device pixels, so that it is crisp at every pixel ratio. It hangs on a point of what it fills: panning
 * and dragging carry it along instead of sliding the thing over it.
 */
const patterns = new Map<string, CanvasPattern>();
/** The age of the colours the patterns are drawn in. */
let inked = 0;

function patternOf(ctx: CanvasRenderingContext2D, name: HatchName, ratio: number): CanvasPattern | null {
  if (inkAge() !== inked) {
    patterns.clear();
    inked = inkAge();
  }
  const key = `${name}@${ratio}`;
  const known = patterns.get(key);
  if (known) return known;
  const tile = TILES[name];
  const canvas = document.createElement("canvas");
  canvas.width = tileSide(tile.size, ratio);
  canvas.height = canvas.width;
  const own = canvas.getContext("2d");
  if (!own) return null;
  // The tile is stretched to whole device pixels, or its joints would show as a lattice.
  own.scale(canvas.width / tile.size, canvas.width / tile.size);
  tile.draw(own, tile.size);
  const pattern = ctx.createPattern(canvas, "repeat");
  if (pattern) patterns.set(key, pattern);
  return pattern;
}

/** Side of a tile in whole device pixels. */
export const tileSide = (size: number, ratio: number): number => Math.max(1, Math.round(size * ratio));

/** Where a hatch hangs: its point moved onto a whole device pixel, or every drawn pixel would be a blend of two. */
export const hatchAnchor = ([x, y]: Point, ratio: number): Point => [
  Math.round(x * ratio) / ratio,
  Math.round(y * ratio) / ratio,
];

function withPattern(
  pen: Pen,
  name: HatchName,
  at: Point,
  draw: (ctx: CanvasRenderingContext2D) => void,
): void {
  const { ctx, ratio } = pen;
  const pattern = patternOf(ctx, name, ratio);
  if (!pattern) return;
  const [x, y] = hatchAnchor(at, ratio);
  ctx.save();
  // The path is already laid; moving the canvas now moves only the pattern.
  ctx.translate(x, y);
  ctx.scale(1 / ratio, 1 / ratio);
  draw(Object.assign(ctx, { fillStyle: pattern, strokeStyle: pattern }));
  ctx.restore();
}

/** Fills the current path. @param at the px the hatch hangs on */
export const fillHatched = (
  pen: Pen,
  name: HatchName,
  at: Point,
  fillRule: CanvasFillRule = "nonzero",
): void => withPattern(pen, name, at, (ctx) => ctx.fill(fillRule));

/** Strokes the current path with a band of hatch. @param width px */
export const bandHatched = (pen: Pen, name: HatchName, at: Point, width: number): void =>
  withPattern(pen, name, at, (ctx) => {
    ctx.lineWidth = width * pen.ratio;
    ctx.stroke();
  });
