import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import { type Item, unreachable } from "../garden/item.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { thickened } from "../geometry/clip.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";

/** One layer of a drawing for each kind of thing, in the order they lie. */
export const LAYERS = [
  "ground",
  "paths",
  "keep-clear",
  "yard",
  "buildings",
  "walls",
  "fences",
  "openings",
  "trees",
  "taps",
  "beds",
  "bed-soil",
  "names",
] as const;
export type Layer = (typeof LAYERS)[number];

/** A stroke of a drawing, mm; x to the right and y up, as surveyors and draughtsmen have it. */
export type Stroke =
  | {
      readonly draw: "line";
      readonly layer: Layer;
      readonly points: readonly Point[];
      readonly closed: boolean;
    }
  | { readonly draw: "circle"; readonly layer: Layer; readonly at: Point; readonly radius: number }
  | {
      readonly draw: "text";
      readonly layer: "names";
      readonly at: Point;
      readonly text: string;
      readonly height: number;
    };

/** Height of names on the ground, mm: 2.5 mm on paper at 1:50. */
const LETTERS = 125;
/** Radius a tap is drawn with, mm. */
const TAP = 60;

/**
 * A garden as plain lines by layer, for programs that draw: outlines as they are built, in true size, without hatches,
 * findings or dimensions.
 */
export function linework({ yard, items }: Pick<Garden, "yard" | "items">): readonly Stroke[] {
  const strokes = [closed("yard", yard), ...items.flatMap(strokesOf), ...items.map(nameStroke)];
  return strokes.map(upright);
}

const closed = (layer: Layer, points: Ring): Stroke => ({ draw: "line", layer, points, closed: true });
const open = (layer: Layer, points: readonly Point[]): Stroke => ({
  draw: "line",
  layer,
  points,
  closed: false,
});

function strokesOf(item: Item): Stroke[] {
  switch (item.kind) {
    case "bed": {
      const { outside, inside } = frameOf(item);
      return [closed("beds", outside), ...inside.map((ring) => closed("bed-soil", ring))];
    }
    case "path":
      return thickened(lineOf(item), item.width, "butt").map((ring) => closed("paths", ring));
    case "wall":
      return thickened(lineOf(item), item.thickness, "butt").map((ring) => closed("walls", ring));
    case "fence":
      return [open("fences", lineOf(item))];
    case "ground":
      return [closed("ground", outlineOf(item))];
    case "house":
    case "shed":
      return [closed("buildings", outlineOf(item))];
    case "keep-clear":
      return [closed("keep-clear", outlineOf(item))];
    case "tree":
      return [
        { draw: "circle", layer: "trees", at: item.at, radius: item.canopy / 2 },
        { draw: "circle", layer: "trees", at: item.at, radius: item.trunk / 2 },
      ];
    case "gate":
    case "door": {
      const half = item.width / 2;
      const ends: readonly Point[] = [
        [-half, 0],
        [half, 0],
      ];
      return [
        open(
          "openings",
          ends.map((end) => placed(end, item.at, item.turn)),
        ),
      ];
    }
    case "tap":
      return [{ draw: "circle", layer: "taps", at: item.at, radius: TAP }];
    default:
      return unreachable(item);
  }
}

const lineOf = (item: Extract<Item, { points: unknown }>): Point[] =>
  item.points.map((point) => placed(point, item.at, item.turn));

const nameStroke = (item: Item): Stroke => ({
  draw: "text",
  layer: "names",
  at: item.at,
  text: nameOf(item),
  height: LETTERS,
});

function upright(stroke: Stroke): Stroke {
  const flip = ([x, y]: Point): Point => [x, 0 - y];
  return stroke.draw === "line"
    ? { ...stroke, points: stroke.points.map(flip) }
    : { ...stroke, at: flip(stroke.at) };
}
