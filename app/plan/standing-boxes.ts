import {
  type Box,
  boundsOf,
  type Item,
  type ItemId,
  outlineOf,
  type Point,
  placed,
  type Ring,
} from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { toScreen } from "./viewport.ts";

/** What a thing covers of the drawing, px, as far as words are concerned. */
export interface StandingBox {
  readonly id: ItemId;
  readonly box: Box;
}

/** The boxes of all things that would cover words; ground and openings do not. A line has a box for each stretch. */
export const standingBoxes = (items: readonly Item[], view: View): readonly StandingBox[] =>
  items.flatMap((item) =>
    coversOf(item).map((points) => ({
      id: item.id,
      box: boundsOf(points.map((point) => toScreen(view, point))),
    })),
  );

function coversOf(item: Item): readonly Ring[] {
  switch (item.kind) {
    case "bed":
    case "house":
    case "shed":
    case "keep-clear":
      return [outlineOf(item)];
    case "path":
    case "wall":
    case "fence": {
      const half = (item.kind === "path" ? item.width : item.thickness) / 2;
      const line = item.points.map((point) => placed(point, item.at, item.turn));
      return line.slice(1).map((to, i) => bandBox(line[i]!, to, half));
    }
    default:
      return [];
  }
}

/** Two corners of the upright box round a stretch of a band. */
const bandBox = ([ax, ay]: Point, [bx, by]: Point, half: number): Ring => [
  [Math.min(ax, bx) - half, Math.min(ay, by) - half],
  [Math.max(ax, bx) + half, Math.max(ay, by) + half],
];
