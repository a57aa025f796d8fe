import { type Box, formatHours, type Garden, type Point, type SunGrid } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { clearPlace, markBox } from "../clear-place.ts";
import { labelBoxes, overlap } from "../label.ts";
import { LETTERS, type Letters, letter, measure } from "../lettering.ts";
import { type Pen, rule, traceLine, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { type Contour, contoursOf } from "./sun-contours.ts";

/** Hours a day that have a line. */
export const LEVELS = [2, 4, 6, 8];
const DOTS = [2, 3.5];
/** The paper that is left free along a line, so that it stays a line on every hatch. */
const HALO = { width: 4, strength: 0.6 } as const;
/** A ring smaller than this is a speck, and a line shorter than that has no room for its hours, px. */
const SPECK = 24;
const LETTERED = 72;
const HOURS: Letters = { ...LETTERS.note, weight: 600, colour: "sun" };

const drawn = new WeakMap<SunGrid, readonly Contour[]>();

/** A map never changes, so its lines are found once, however often they are drawn. */
function linesOf(ground: SunGrid): readonly Contour[] {
  let lines = drawn.get(ground);
  if (!lines) {
    lines = contoursOf(ground, LEVELS);
    drawn.set(ground, lines);
  }
  return lines;
}

/** Dotted lines of equal hours of sun within the yard, each with its hours where nothing else is written. */
export function paintSunLines(pen: Pen, ground: SunGrid, garden: Garden, marks: readonly Point[]): void {
  const { ctx, view } = pen;
  const lines = linesOf(ground)
    .map(({ hours, line }) => ({ hours, line, length: lengthOf(line) * view.scale }))
    .filter(({ length }) => length >= SPECK);
  ctx.save();
  ctx.beginPath();
  traceRing(pen, garden.yard);
  ctx.clip();
  ctx.beginPath();
  ctx.lineJoin = "round";
  for (const { line } of lines) traceLine(pen, line);
  ctx.globalAlpha = HALO.strength;
  rule(pen, { colour: INK.sheet, width: HALO.width });
  ctx.globalAlpha = 1;
  rule(pen, { colour: INK.sun, width: 2, dash: DOTS });
  ctx.restore();

  const taken = [...labelBoxes(garden, view), ...marks.map(markBox), ...beyondTheEdge(pen)];
  for (const { hours, line, length } of lines) {
    if (length < LETTERED) continue;
    const words = formatHours(hours);
    const onScreen = line.map((point) => toScreen(view, point));
    const box = clearPlace(onScreen, measure(words, HOURS) + 6, HOURS.size + 4, taken);
    if (taken.some((other) => overlap(box, other))) continue;
    taken.push(box);
    letter(pen, words, [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2], HOURS);
  }
}

function lengthOf(line: readonly Point[]): number {
  let length = 0;
  for (let i = 1; i < line.length; i++) {
    length += Math.hypot(line[i]![0] - line[i - 1]![0], line[i]![1] - line[i - 1]![1]);
  }
  return length;
}

/** All that cannot be seen, as if it were written over: hours are lettered where they can be read. */
function beyondTheEdge({ ctx, ratio }: Pen): Box[] {
  const [width, height] = [ctx.canvas.width / ratio, ctx.canvas.height / ratio];
  const far = 1e6;
  return [
    { minX: -far, maxX: 0, minY: -far, maxY: far },
    { minX: width, maxX: far, minY: -far, maxY: far },
    { minX: -far, maxX: far, minY: -far, maxY: 0 },
    { minX: -far, maxX: far, minY: height, maxY: far },
  ];
}
