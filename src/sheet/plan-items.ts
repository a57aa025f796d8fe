import { type Item, unreachable } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Cover } from "../garden/kinds/ground.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import type { Path } from "../garden/kinds/path.ts";
import { nameOf, ownName } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { thickened } from "../geometry/clip.ts";
import { boundsOf, centroid } from "../geometry/ring.ts";
import type { Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { say } from "../words/say.ts";
import { PENS, type Pen } from "./plan-pen.ts";
import type { Hatch, Mark } from "./types.ts";

const COVER_HATCH: Readonly<Record<Cover, Hatch | "paper">> = {
  soil: "paper",
  lawn: "lawn",
  weeds: "weeds",
  bark: "bark",
  "loose-gravel": "gravel",
  "firm-gravel": "gravel",
  paving: "paving",
  deck: "deck",
  roof: "deck",
};

/** A path that comes in a later stage than the sheet's: its outline alone, dashed. */
export const laterPathMarks = (path: Path, pen: Pen): Mark[] =>
  thickened(
    path.points.map((point) => placed(point, path.at, path.turn)),
    path.width,
    "butt",
  ).map((ring) => pen.ring(ring, PENS.fine, undefined, [1, 0.8]));

/** Everything but beds, as drawing practice draws it. */
export function itemMarks(item: Exclude<Item, Bed>, pen: Pen): Mark[] {
  switch (item.kind) {
    case "ground":
      return [pen.ring(outlineOf(item), PENS.fine, COVER_HATCH[item.cover])];
    case "path":
      return thickened(
        item.points.map((point) => placed(point, item.at, item.turn)),
        item.width,
        "butt",
      ).map((ring) => pen.ring(ring, PENS.fine, COVER_HATCH[item.surface]));
    case "house":
    case "shed": {
      const outline = outlineOf(item);
      const { minX, maxX } = boundsOf(outline);
      return [
        pen.ring(outline, PENS.heavy, "building"),
        ...pen.word(nameOf(item), centroid(outline), maxX - minX),
      ];
    }
    case "wall":
      return barrierRings(item).map((ring) => pen.ring(ring, PENS.line, "ink"));
    case "fence": {
      const line = item.points.map((point) => placed(point, item.at, item.turn));
      return [pen.line(line, PENS.bold, [2, 0.8])];
    }
    case "tree":
      return [
        pen.circle(item.at, item.canopy / 2, PENS.line, undefined, [2.5, 0.8, 0.5, 0.8]),
        pen.circle(item.at, item.trunk / 2, PENS.line, "ink"),
        ...pen.word(nameOf(item), [item.at[0], item.at[1] + item.trunk / 2 + pen.garden(3)], item.canopy),
      ];
    case "gate":
    case "door":
      return openingMarks(item, pen);
    case "tap":
      return [
        pen.circle(item.at, pen.garden(0.9), PENS.bold, "paper"),
        ...pen.word(nameOf(item), [item.at[0], item.at[1] + pen.garden(3.4)], pen.garden(20)),
      ];
    case "keep-clear": {
      const outline = outlineOf(item);
      const { minX, maxX } = boundsOf(outline);
      return [
        pen.ring(outline, PENS.line, undefined, [1.2, 0.8]),
        ...pen.word(ownName(item) || say`keep clear`, centroid(outline), maxX - minX),
      ];
    }
    default:
      return unreachable(item);
  }
}

const barrierRings = (item: Extract<Item, { thickness: number }>): Ring[] =>
  thickened(
    item.points.map((point) => placed(point, item.at, item.turn)),
    item.thickness,
    "butt",
  );

/** The opening as a gap in what it stands in, with its leaf and the quarter it sweeps. */
function openingMarks(opening: Gate | Door, pen: Pen): Mark[] {
  const half = opening.width / 2;
  const local = (x: number, y: number) => placed([x, y], opening.at, opening.turn);
  const gap: Mark = { ...pen.line([local(-half, 0), local(half, 0)], 0.9), fill: "paper" } as Mark;
  const sill = pen.line([local(-half, 0), local(half, 0)], PENS.fine);
  const word = pen.word(
    ownName(opening),
    local(0, pen.garden(opening.kind === "gate" ? -4 : 4)),
    pen.garden(40),
  );
  if (opening.swing === "sliding") return [sill, ...word];
  const side = opening.hinge === "left" ? 1 : -1;
  const towards = opening.swing === "out" ? 1 : -1;
  const sweep = Array.from({ length: 13 }, (_, i) => {
    const angle = ((i / 12) * Math.PI) / 2;
    return local(
      -side * half + side * opening.width * Math.cos(angle),
      towards * opening.width * Math.sin(angle),
    );
  });
  return [
    gap,
    sill,
    pen.line([local(-side * half, 0), sweep.at(-1)!], PENS.bold),
    pen.line(sweep, PENS.fine, [0.8, 0.6]),
    ...word,
  ];
}
