import { type Garden, outlineOf, type SunGrid } from "../../../src/index.ts";
import { INK, inkAge } from "../../style/ink.ts";
import { type Pen, traceRing } from "../pen.ts";
import { clipOut } from "../shadows/paint-shadows.ts";
import { toScreen } from "../viewport.ts";
import { LEVELS } from "./sun-lines.ts";

/** How much denser the tone gets from one line to the next. */
const STEP = 0.045;

interface Toned {
  readonly canvas: HTMLCanvasElement;
  /** The age of the colours it is toned in. */
  readonly inked: number;
}
const toned = new WeakMap<SunGrid, Toned>();

/** A quiet wash over the open ground, denser with every line of equal hours that is passed: the sunniest is the warmest. */
export function paintSunTone(pen: Pen, ground: SunGrid, garden: Garden): void {
  const { ctx, view } = pen;
  const tone = toneOf(ground);
  const [x, y] = toScreen(view, ground.origin);
  const side = ground.cell * view.scale;
  ctx.save();
  const beds = garden.items.flatMap((item) => (item.kind === "bed" ? [outlineOf(item)] : []));
  clipOut(pen, beds);
  ctx.beginPath();
  traceRing(pen, garden.yard);
  ctx.clip();
  ctx.imageSmoothingEnabled = true;
  ctx.drawImage(tone, x, y, ground.columns * side, ground.rows * side);
  ctx.restore();
}

/** A map never changes, so it is toned once: a pixel a cell. */
function toneOf(ground: SunGrid): HTMLCanvasElement {
  const known = toned.get(ground);
  if (known?.inked === inkAge()) return known.canvas;
  const canvas = document.createElement("canvas");
  canvas.width = ground.columns;
  canvas.height = ground.rows;
  const ctx = canvas.getContext("2d");
  if (ctx) fillCells(ctx, ground);
  toned.set(ground, { canvas, inked: inkAge() });
  return canvas;
}

function fillCells(ctx: CanvasRenderingContext2D, { columns, hours }: SunGrid): void {
  ctx.fillStyle = INK.sun;
  hours.forEach((of, i) => {
    const passed = LEVELS.filter((level) => of >= level).length;
    if (passed === 0) return;
    ctx.globalAlpha = passed * STEP;
    ctx.fillRect(i % columns, Math.floor(i / columns), 1, 1);
  });
}
