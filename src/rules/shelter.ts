import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { practice, type Source } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import type { Point } from "../geometry/types.ts";
import { cross, placed, subtract } from "../geometry/vector.ts";

/** A wall, fence or building keeps wind off as far behind it as so many times its height. */
const TIMES_HEIGHT = 5;
/** It is looked for in so many directions; a bed is sheltered where it is in half of them, for wind comes from any. */
const DIRECTIONS = 16;
const SHARE = 0.5;
/** More open than this, a fence lets most of the wind through. */
const MOST_OPEN = 0.6;

export const SHELTER_SOURCE: Source = practice(
  "a windbreak shelters to some 10 times its height and well to 5; taken here as sheltered with one within 5 in half of all directions",
);

type Break = readonly [from: Point, to: Point, height: number];

/**
 * Whether walls, fences and buildings stand round a bed so that most wind is kept off it. Seen from the middle of the bed.
 * Hedges and trees are not counted: many are bare when it blows most.
 */
export function isSheltered(bed: Bed, { items }: Pick<Garden, "items">): boolean {
  const middle = centroid(outlineOf(bed));
  const breaks = items.flatMap(breaksOf);
  const kept = Array.from({ length: DIRECTIONS }, (_, i) => (2 * Math.PI * i) / DIRECTIONS).filter((angle) =>
    breaks.some(([from, to, height]) =>
      crosses(middle, [Math.cos(angle), Math.sin(angle)], TIMES_HEIGHT * height, from, to),
    ),
  );
  return kept.length >= DIRECTIONS * SHARE;
}

function breaksOf(item: Item): Break[] {
  switch (item.kind) {
    case "house":
    case "shed": {
      const ring = outlineOf(item);
      return ring.map((to, i) => [ring.at(i - 1)!, to, item.height] as const);
    }
    case "fence":
      return item.open > MOST_OPEN ? [] : barrierBreaks(item.points, item);
    case "wall":
      return barrierBreaks(item.points, item);
    default:
      return [];
  }
}

function barrierBreaks(
  points: readonly Point[],
  { at, turn, height }: { readonly at: Point; readonly turn: number; readonly height: number },
): Break[] {
  const line = points.map((point) => placed(point, at, turn));
  return line.slice(1).map((to, i) => [line[i]!, to, height] as const);
}

/** Whether a ray of some length meets a stretch of line. @param along of length 1 */
function crosses(start: Point, along: Point, length: number, from: Point, to: Point): boolean {
  const side = subtract(to, from);
  const across = cross(along, side);
  if (across === 0) return false;
  const off = subtract(from, start);
  const far = cross(off, side) / across;
  const share = cross(off, along) / across;
  return far >= 0 && far <= length && share >= 0 && share <= 1;
}
