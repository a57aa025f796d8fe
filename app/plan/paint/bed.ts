import { boundsOf, frameOf, type ItemOf, type Point, placed, type Ring } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { fillHatched } from "../hatch.ts";
import { labelOf } from "../label.ts";
import { labelRooms } from "../label-room.ts";
import { lineWidth, type Pen, rule, traceRing } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { paintCropCaptions } from "./crop-captions.ts";
import { paintCrops } from "./crops.ts";
import { paintLabel } from "./label.ts";

type Bed = ItemOf<"bed">;

/** Walls thinner than this on the screen are one line. */
const TWO_LINES = 2;
const LEG = 90;
/** A mask may take this part of a bed's width and no more. */
const ROOMY = 1.7;

/** A bed as it is built: the outside of its wall heavy, the inside light, soil between; a mound dashed. */
export function paintBed(pen: Pen, bed: Bed): void {
  const { ctx, view } = pen;
  const { outside, inside, wallThickness } = frameOf(bed);
  const mound = bed.wall.made === "mound";

  ctx.beginPath();
  traceRing(pen, outside, 2);
  ctx.fillStyle = bed.wall.made === "masonry" ? INK.shade : INK.sheet;
  ctx.fill();

  ctx.beginPath();
  for (const ring of inside) traceRing(pen, ring, 1);
  ctx.fillStyle = INK.soil;
  ctx.fill();
  fillHatched(pen, "soil", toScreen(view, bed.at));
  if (wallThickness * view.scale >= TWO_LINES) rule(pen, { colour: INK.ink, width: 1 });

  paintCrops(pen, bed);

  ctx.lineJoin = "miter";
  ctx.beginPath();
  traceRing(pen, outside, 2);
  rule(pen, { colour: INK.ink, width: mound ? 1.5 : 2, dash: mound ? [6, 4] : [] });

  if (bed.trellis !== null) paintTrellis(pen, bed);
  if (bed.legs !== null) paintLegs(pen, bed);
  paintBedLabel(pen, bed);
  paintCropCaptions(pen, bed);
}

/** Over rows of plants the name has soil of its own. */
export const paintBedLabel = (pen: Pen, bed: Bed): void =>
  paintLabel(pen, labelOf(bed, pen.view, pen.units), INK.soil, bed.plantings.length > 0);

/** On a patch of soil of its own, for where something is drawn over the bed; unless that would hide most of it. */
export function paintBedLabelMasked(pen: Pen, bed: Bed): void {
  const label = labelOf(bed, pen.view, pen.units);
  if (!label) return;
  const { width, length } = labelRooms(bed.shape)[0]!;
  const roomy = Math.max(width, length) * pen.view.scale > ROOMY * label.width;
  paintLabel(pen, label, INK.soil, roomy);
}

/** A trellis: a line with crosses along the longer side of the bed, a hand's breadth inside it. */
function paintTrellis(pen: Pen, bed: Bed): void {
  const { ctx, view } = pen;
  const { centre, width, length } = labelRooms(bed.shape)[0]!;
  const inset = frameOf(bed).wallThickness + Math.min(120, Math.min(width, length) / 6);
  const along: readonly [Point, Point] =
    width >= length
      ? [
          [centre[0] - width / 2 + inset, centre[1] - length / 2 + inset],
          [centre[0] + width / 2 - inset, centre[1] - length / 2 + inset],
        ]
      : [
          [centre[0] - width / 2 + inset, centre[1] - length / 2 + inset],
          [centre[0] - width / 2 + inset, centre[1] + length / 2 - inset],
        ];
  const [from, to] = along.map((end) => toScreen(view, placed(end, bed.at, bed.turn))) as [Point, Point];
  const run = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (run < 16) return;
  const [ux, uy] = [(to[0] - from[0]) / run, (to[1] - from[1]) / run];
  ctx.beginPath();
  ctx.moveTo(...from);
  ctx.lineTo(...to);
  const crosses = Math.max(2, Math.round(run / 14));
  for (let i = 0; i <= crosses; i++) {
    const [x, y] = [from[0] + (ux * run * i) / crosses, from[1] + (uy * run * i) / crosses];
    for (const side of [1, -1]) {
      ctx.moveTo(x - 3 * (ux + side * uy), y - 3 * (uy - side * ux));
      ctx.lineTo(x + 3 * (ux + side * uy), y + 3 * (uy - side * ux));
    }
  }
  rule(pen, { colour: INK.leaf, width: 1.25 });
}

/** A table bed: its legs as squares inside the corners. */
function paintLegs(pen: Pen, bed: Bed): void {
  const { ctx, view } = pen;
  const side = Math.max(3, LEG * view.scale);
  ctx.fillStyle = INK.ink;
  for (const corner of legPlaces(bed)) {
    const [x, y] = toScreen(view, corner);
    ctx.save();
    ctx.translate(x, y);
    ctx.rotate((bed.turn * Math.PI) / 180);
    ctx.fillRect(-side / 2, -side / 2, side, side);
    ctx.strokeStyle = INK.soil;
    ctx.lineWidth = lineWidth(pen, 1);
    ctx.strokeRect(-side / 2, -side / 2, side, side);
    ctx.restore();
  }
}

const MOST_CORNERS = 12;

function legPlaces(bed: Bed): Ring {
  const { outside, wallThickness } = frameOf(bed);
  const { minX, minY, maxX, maxY } = boundsOf(outside);
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  const inwards = wallThickness + LEG * 0.8;
  // A round table stands on four legs, one under each quarter.
  const step = outside.length > MOST_CORNERS ? outside.length / 4 : 1;
  const corners = outside.filter((_, i) => i % step === 0);
  return corners.map(([x, y]): Point => {
    const away = Math.hypot(middle[0] - x, middle[1] - y) || 1;
    const by = Math.min(away, inwards * Math.SQRT2) / away;
    return [x + (middle[0] - x) * by, y + (middle[1] - y) * by];
  });
}
