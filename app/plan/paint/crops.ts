import {
  type Box,
  boundsOf,
  type ItemOf,
  type PlantedPatch,
  type Point,
  plantsOf,
} from "../../../src/index.ts";
import { dayShown } from "../../planting/shown-day.ts";
import { standingThen } from "../../planting/standing-on.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { INK } from "../../style/ink.ts";
import { ownToScreen } from "../own-frame.ts";
import { type Pen, rule } from "../pen.ts";
import { signOf } from "./crop-signs.ts";

type Bed = ItemOf<"bed">;
type Way = (own: Point) => Point;

/** Rows nearer than this run into one another: the ground is toned instead, px. */
const ROWS_FROM = 4;
/** Plants from this far apart are marked on their row, and from that far apart by the sign of their family, px. */
const MARKS_FROM = 5;
const SIGNS_FROM = 13;
const SIGN = { least: 2, most: 9, part: 0.2 } as const;
/** From this far apart each plant has its spread drawn about it, px. */
const SPREADS_FROM = 30;

/** What stands in a bed on the day that is shown, to scale: as much of it as the eye can tell apart at this zoom. */
export function paintCrops(pen: Pen, bed: Bed): void {
  if (bed.plantings.length === 0) return;
  const { site } = shownGarden(useEditor.getState());
  const patches = standingThen(plantsOf(bed, site), dayShown());
  const way = ownToScreen(bed, pen.view);
  for (const patch of patches) {
    const box = screenBox(patch, way);
    if (box && isInView(pen, box)) paintPatch(pen, patch, way);
  }
}

function paintPatch(pen: Pen, patch: PlantedPatch, way: Way): void {
  const { ctx, view } = pen;
  const rowGap = patch.rowsApart * view.scale;
  ctx.beginPath();
  traceGround(pen, patch, way);
  ctx.save();
  if (rowGap < ROWS_FROM) {
    // Too far off for rows: a tone within a line.
    ctx.globalAlpha = 0.22;
    ctx.fillStyle = INK.leaf;
    ctx.fill("evenodd");
  } else {
    // The stipple of the soil would be taken for plants.
    ctx.globalAlpha = 0.6;
    ctx.fillStyle = INK.soil;
    ctx.fill("evenodd");
  }
  ctx.globalAlpha = 0.7;
  rule(pen, { colour: INK.leaf, width: 0.75 });
  ctx.restore();
  if (rowGap < ROWS_FROM) return;
  const isBlock = patch.standing.planting.set === "block";
  if (!isBlock || patch.plants.length === 0) paintRows(pen, patch, way);
  paintPlants(pen, patch, way, isBlock);
}

function traceGround({ ctx }: Pen, { ground }: PlantedPatch, way: Way): void {
  for (const ring of ground) {
    ring.forEach((corner, i) => {
      const [x, y] = way(corner);
      if (i === 0) ctx.moveTo(x, y);
      else ctx.lineTo(x, y);
    });
    ctx.closePath();
  }
}

function paintRows(pen: Pen, { rows }: PlantedPatch, way: Way): void {
  const { ctx } = pen;
  ctx.beginPath();
  for (const [from, to] of rows) {
    ctx.moveTo(...way(from));
    ctx.lineTo(...way(to));
  }
  ctx.save();
  ctx.globalAlpha = 0.55;
  rule(pen, { colour: INK.leaf, width: 1 });
  ctx.restore();
}

/** Plants on their places: a tick across the row or a dot in a block, and near by the sign of the family. */
function paintPlants(pen: Pen, patch: PlantedPatch, way: Way, isBlock: boolean): void {
  const { ctx, view } = pen;
  const { plants, apart, rowsApart, crop } = patch;
  const gap = apart * view.scale;
  const rowGap = rowsApart * view.scale;
  ctx.beginPath();
  if (gap >= SIGNS_FROM) {
    if (gap >= SPREADS_FROM) paintSpreads(pen, patch, way);
    ctx.beginPath();
    const sign = signOf(crop);
    const r = Math.min(SIGN.most, Math.max(SIGN.least, SIGN.part * Math.min(gap, rowGap)));
    inView(pen, plants, way, (x, y) => sign(ctx, x, y, r));
    rule(pen, { colour: INK.leaf, width: 1.25 });
    return;
  }
  if (isBlock || gap < MARKS_FROM) {
    if (isBlock && gap >= ROWS_FROM) {
      inView(pen, plants, way, (x, y) => ctx.rect(x - 0.9, y - 0.9, 1.8, 1.8));
      ctx.fillStyle = INK.leaf;
      ctx.fill();
    }
    return;
  }
  const [dx, dy] = acrossRow(patch, way, Math.min(3, rowGap * 0.3));
  inView(pen, plants, way, (x, y) => {
    ctx.moveTo(x - dx, y - dy);
    ctx.lineTo(x + dx, y + dy);
  });
  rule(pen, { colour: INK.leaf, width: 1 });
}

/** A circle of its own spacing about each plant: where two meet, they stand as close as they may. */
function paintSpreads(pen: Pen, { plants, apart }: PlantedPatch, way: Way): void {
  const { ctx, view } = pen;
  const r = (apart * view.scale) / 2;
  ctx.beginPath();
  inView(
    pen,
    plants,
    way,
    (x, y) => {
      ctx.moveTo(x + r, y);
      ctx.arc(x, y, r, 0, 2 * Math.PI);
    },
    r,
  );
  ctx.save();
  ctx.globalAlpha = 0.5;
  rule(pen, { colour: INK.leaf, width: 0.75, dash: [4, 3] });
  ctx.restore();
}

/** Half a tick across the rows, px. */
function acrossRow({ rows }: PlantedPatch, way: Way, half: number): Point {
  const [row] = rows;
  if (!row) return [0, half];
  const [[ax, ay], [bx, by]] = [way(row[0]), way(row[1])];
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(-(by - ay) / length) * half, ((bx - ax) / length) * half];
}

function inView(
  { ctx, ratio }: Pen,
  plants: readonly Point[],
  way: Way,
  mark: (x: number, y: number) => void,
  reach: number = SIGN.most,
): void {
  const [width, height] = [ctx.canvas.width / ratio + reach, ctx.canvas.height / ratio + reach];
  for (const plant of plants) {
    const [x, y] = way(plant);
    if (x > -reach && y > -reach && x < width && y < height) mark(x, y);
  }
}

const screenBox = ({ ground }: PlantedPatch, way: Way): Box | null =>
  ground.length === 0 ? null : boundsOf(ground.flatMap((ring) => ring.map(way)));

function isInView({ ctx, ratio }: Pen, { minX, minY, maxX, maxY }: Box): boolean {
  const [width, height] = [ctx.canvas.width / ratio, ctx.canvas.height / ratio];
  return maxX >= 0 && maxY >= 0 && minX <= width && minY <= height;
}
