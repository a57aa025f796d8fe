import type { Point } from "../../../src/index.ts";
import { INK, type InkName } from "../../style/ink.ts";
import { LETTERS, type Letters, letter, measure } from "../lettering.ts";
import { type Pen, rule } from "../pen.ts";
import { toScreen } from "../viewport.ts";

/** A dimension of drawing practice: a line with a slash at each end, its figure on it. */
export interface Dimension {
  readonly from: Point;
  readonly to: Point;
  readonly words: string;
  readonly colour: InkName;
  /** The one heavy thing on the plan: a gap that fails, its words on a tag. */
  readonly heavy?: boolean;
}

const SLASH = 5;

export function paintDimension(pen: Pen, { from, to, words, colour, heavy = false }: Dimension): void {
  const { ctx, view } = pen;
  const [ax, ay] = toScreen(view, from);
  const [bx, by] = toScreen(view, to);
  const width = heavy ? 4 : 1.25;
  ctx.beginPath();
  ctx.lineCap = "butt";
  ctx.moveTo(ax, ay);
  ctx.lineTo(bx, by);
  rule(pen, { colour: INK[colour], width });
  const length = Math.hypot(bx - ax, by - ay);
  const angle = Math.atan2(by - ay, bx - ax) - Math.PI / 4;
  const [sx, sy] = [Math.cos(angle) * SLASH, Math.sin(angle) * SLASH];
  if (length > 0) {
    ctx.beginPath();
    for (const [x, y] of [
      [ax, ay],
      [bx, by],
    ] as const) {
      ctx.moveTo(x - sx, y - sy);
      ctx.lineTo(x + sx, y + sy);
    }
    rule(pen, { colour: INK[colour], width: 2 });
  }
  if (heavy) paintTag(pen, tagPlace([ax, ay], [bx, by], words), words);
  else paintFigure(pen, [(ax + bx) / 2, (ay + by) / 2], words, colour);
}

/** A figure on its line: the line is broken for it, also between a foot and its inches. */
function paintFigure(pen: Pen, [x, y]: Point, words: string, colour: InkName): void {
  const letters: Letters = { ...LETTERS.note, colour };
  const width = measure(words, letters) + 4;
  pen.ctx.fillStyle = INK.sheet;
  pen.ctx.fillRect(x - width / 2, y - 7, width, 14);
  letter(pen, words, [x, y], letters);
}

const TAG: Letters = { size: 13, weight: 600, colour: "sheet" };
const TAG_PADDING = 6;
const TAG_HEIGHT = 20;

/** On the line where that is long enough to be seen past the tag; otherwise beside it. */
function tagPlace([ax, ay]: Point, [bx, by]: Point, words: string): Point {
  const middle: Point = [(ax + bx) / 2, (ay + by) / 2];
  const [dx, dy] = [Math.abs(bx - ax), Math.abs(by - ay)];
  const width = measure(words, TAG) + 2 * TAG_PADDING;
  if (dx >= dy) return dx > width + 16 ? middle : [middle[0], middle[1] - TAG_HEIGHT / 2 - 8];
  return dy > TAG_HEIGHT + 16 ? middle : [middle[0] + width / 2 + 8, middle[1]];
}

/** Words on a filled tag. */
export function paintTag(pen: Pen, [x, y]: Point, words: string, colour: string = INK.accent): void {
  const { ctx } = pen;
  const width = measure(words, TAG) + 2 * TAG_PADDING;
  ctx.fillStyle = colour;
  ctx.fillRect(Math.round(x - width / 2), Math.round(y - TAG_HEIGHT / 2), Math.round(width), TAG_HEIGHT);
  letter(pen, words, [x, y], TAG, { halo: null });
}
