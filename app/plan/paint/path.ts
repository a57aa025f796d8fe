import { type ItemOf, type Point, placed } from "../../../src/index.ts";
import { INK } from "../../style/ink.ts";
import { bandHatched } from "../hatch.ts";
import { lineWidth, type Pen, traceLine } from "../pen.ts";
import { toScreen } from "../viewport.ts";
import { GROUND_HATCH, GROUND_TINT } from "./ground.ts";

type Path = ItemOf<"path">;

const lines = new WeakMap<Path, readonly Point[]>();

function lineOf(path: Path): readonly Point[] {
  let line = lines.get(path);
  if (!line) {
    line = path.points.map((point) => placed(point, path.at, path.turn));
    lines.set(path, line);
  }
  return line;
}

function layBand(pen: Pen, path: Path): number {
  pen.ctx.lineJoin = "miter";
  pen.ctx.lineCap = "butt";
  pen.ctx.beginPath();
  traceLine(pen, lineOf(path));
  return path.width * pen.view.scale;
}

/**
 * The edges of a path: a band a line wider than its body. All edges are drawn before all bodies, so that paths run
 * into one another as they do on the ground.
 */
export function paintPathEdges(pen: Pen, path: Path): void {
  const band = layBand(pen, path);
  pen.ctx.strokeStyle = INK.faint;
  pen.ctx.lineWidth = band + 2 * lineWidth(pen, path.use === "main" ? 1.25 : 0.75);
  pen.ctx.stroke();
}

/** The body of a path, hatched by its surface. */
export function paintPath(pen: Pen, path: Path): void {
  const band = layBand(pen, path);
  pen.ctx.strokeStyle = INK[GROUND_TINT[path.surface]];
  pen.ctx.lineWidth = Math.max(band, lineWidth(pen, 1));
  pen.ctx.stroke();
  if (band >= 5) bandHatched(pen, GROUND_HATCH[path.surface], toScreen(pen.view, path.at), band);
}
