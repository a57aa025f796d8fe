import { type ItemOf, type Point, placed } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { lineWidth, type Pen, traceLine } from "../pen.ts";
import { toScreen } from "../viewport.ts";

type Barrier = ItemOf<"wall" | "fence">;

const lines = new WeakMap<Barrier, readonly Point[]>();

function lineOf(item: Barrier): readonly Point[] {
  let line = lines.get(item);
  if (!line) {
    line = item.points.map((point) => placed(point, item.at, item.turn));
    lines.set(item, line);
  }
  return line;
}

/** Posts stand about this far apart, mm; on a small plan they thin out to this many px. */
const POST_SPACING = 2400;
const POST_ROOM = 22;
const POST = 3;

/** A garden wall is solid, as cut masonry is. */
export function paintWall(pen: Pen, wall: ItemOf<"wall">): void {
  const { ctx } = pen;
  ctx.beginPath();
  ctx.lineJoin = "miter";
  ctx.lineCap = "butt";
  traceLine(pen, lineOf(wall));
  ctx.strokeStyle = INK.ink;
  ctx.lineWidth = Math.max(lineWidth(pen, 3), wall.thickness * pen.view.scale);
  ctx.stroke();
}

/** A fence is a line with its posts; a broken one where light comes through. */
export function paintFence(pen: Pen, fence: ItemOf<"fence">): void {
  const { ctx, view } = pen;
  const line = lineOf(fence);
  const width = Math.max(1.5, Math.min(5, fence.thickness * view.scale));
  ctx.beginPath();
  ctx.lineJoin = "miter";
  ctx.lineCap = "butt";
  traceLine(pen, line);
  ctx.strokeStyle = INK.ink;
  ctx.lineWidth = lineWidth(pen, width);
  if (fence.open > 0) ctx.setLineDash([5, 1 + 4 * fence.open]);
  ctx.stroke();
  ctx.setLineDash([]);

  const radius = Math.max(POST, width * 0.9);
  ctx.fillStyle = INK.ink;
  ctx.beginPath();
  for (const [x, y] of postPlaces(line, Math.max(POST_SPACING, POST_ROOM / view.scale))) {
    const [px, py] = toScreen(view, [x, y]);
    ctx.moveTo(px + radius, py);
    ctx.arc(px, py, radius, 0, 2 * Math.PI);
  }
  ctx.fill();
}

/** A post at every corner, and evenly between, no farther apart than the spacing. */
export function postPlaces(line: readonly Point[], spacing: number): Point[] {
  const places: Point[] = line.length > 0 ? [line[0]!] : [];
  for (let i = 1; i < line.length; i++) {
    const [[ax, ay], [bx, by]] = [line[i - 1]!, line[i]!];
    const bays = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / spacing - 0.01));
    for (let k = 1; k <= bays; k++) places.push([ax + ((bx - ax) * k) / bays, ay + ((by - ay) * k) / bays]);
  }
  return places;
}
