import { boundsOf, type Garden } from "../../../src/index.ts";
import type { View } from "../../store/editor.ts";
import { INK } from "../../style/ink.ts";
import { type GridSteps, gridSteps, marksBetween, rulerNumber, rulerUnit } from "../grid-steps.ts";
import { fontOf, type Letters } from "../lettering.ts";
import { crisp, lineWidth } from "../pen.ts";
import type { PlanSize } from "../plan-size.ts";
import { RULER } from "./ruler-size.ts";

const NUMBERS: Letters = { size: 12, weight: 500, colour: "ink" };
const UNIT: Letters = { size: 11, weight: 500, colour: "faint" };
const LONG_TICK = 6;
const SHORT_TICK = 3;

type Canvases = { readonly across: CanvasRenderingContext2D; readonly down: CanvasRenderingContext2D };

/** Draws both rulers; they count from the yard's left and upper edge. */
export function paintRulers(
  { across, down }: Canvases,
  size: PlanSize,
  view: View,
  garden: Pick<Garden, "yard" | "units">,
): void {
  const steps = gridSteps(view.scale, garden.units);
  const { minX, minY } = boundsOf(garden.yard);
  const { units } = garden;
  blank(across, size.ratio, size.width, RULER.top);
  blank(down, size.ratio, RULER.left, size.height);

  ticks(
    across,
    size,
    steps,
    { from: view.x, scale: view.scale, length: size.width, origin: minX },
    (px, tick) => {
      across.moveTo(px, RULER.top - tick);
      across.lineTo(px, RULER.top);
    },
  );
  ticks(
    down,
    size,
    steps,
    { from: view.y, scale: view.scale, length: size.height, origin: minY },
    (px, tick) => {
      down.moveTo(RULER.left - tick, px);
      down.lineTo(RULER.left, px);
    },
  );

  across.font = fontOf(NUMBERS);
  across.textAlign = "center";
  across.textBaseline = "middle";
  across.fillStyle = INK[NUMBERS.colour];
  for (const x of marksBetween(view.x, view.x + size.width / view.scale, steps.major, minX)) {
    const px = (x - view.x) * view.scale;
    // A number that would run under the corner is left out.
    if (px > RULER.left + 8) across.fillText(rulerNumber(x - minX, steps, units), px, RULER.top / 2 - 2);
  }
  down.font = fontOf(NUMBERS);
  down.textAlign = "right";
  down.textBaseline = "middle";
  down.fillStyle = INK[NUMBERS.colour];
  for (const y of marksBetween(view.y, view.y + size.height / view.scale, steps.major, minY)) {
    const px = (y - view.y) * view.scale;
    if (px > RULER.top + 6)
      down.fillText(rulerNumber(y - minY, steps, units), RULER.left - LONG_TICK - 4, px + 0.5);
  }
  paintCorner(across, rulerUnit(steps, units));
}

function blank(ctx: CanvasRenderingContext2D, ratio: number, width: number, height: number): void {
  ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
  ctx.fillStyle = INK.paper;
  ctx.fillRect(0, 0, width, height);
}

interface Axis {
  readonly from: number;
  readonly scale: number;
  readonly length: number;
  readonly origin: number;
}

function ticks(
  ctx: CanvasRenderingContext2D,
  size: PlanSize,
  { major, minor }: GridSteps,
  { from, scale, length, origin }: Axis,
  mark: (px: number, tick: number) => void,
): void {
  ctx.strokeStyle = INK.ink;
  ctx.lineWidth = lineWidth(size, 1);
  for (const [step, tick] of [
    [minor, SHORT_TICK],
    [major, LONG_TICK],
  ] as const) {
    ctx.beginPath();
    for (const place of marksBetween(from, from + length / scale, step, origin)) {
      mark(crisp(size, (place - from) * scale, 1), tick);
    }
    ctx.stroke();
  }
}

function paintCorner(ctx: CanvasRenderingContext2D, unit: string): void {
  ctx.fillStyle = INK.paper;
  ctx.fillRect(0, 0, RULER.left, RULER.top);
  ctx.font = fontOf(UNIT);
  ctx.fillStyle = INK[UNIT.colour];
  ctx.textAlign = "center";
  ctx.fillText(unit, RULER.left / 2, RULER.top / 2);
}
