import { add, boundsOf, type Garden, type Item, limitsOf, type Point } from "../../../src/index.ts";
import { bodyOf } from "./bodies.ts";
import { grownBox, isWithin, movedBox, overlap, standingBoxes } from "./boxes.ts";

/** How far apart the places tried are, mm, and how many rings of them. */
const TRY_EVERY = 250;
const RINGS = 40;

/**
 * The place nearest to where a new thing would stand at which it stands free: inside the yard and on nothing else, with
 * a way round it where the yard has such a place left.
 * @returns its own place where there is no room at all, or where it is nothing that stands in the way
 */
export function freePlace(garden: Garden, item: Item): Point {
  const { solid, bounds } = bodyOf(item);
  if (!solid) return item.at;
  const yard = boundsOf(garden.yard);
  const taken = garden.items.flatMap(standingBoxes);
  for (const way of [limitsOf(garden).kneelingWay, 0]) {
    const kept = taken.map((box) => grownBox(box, way));
    for (let ring = 0; ring <= RINGS; ring++) {
      const found = ringOf(ring).find((by) => {
        const there = movedBox(bounds, by);
        return isWithin(there, yard) && kept.every((box) => !overlap(box, there));
      });
      if (found) return add(item.at, found);
    }
  }
  return item.at;
}

/** Displacements on a square ring, the nearest first. */
function ringOf(ring: number): readonly Point[] {
  if (ring === 0) return [[0, 0]];
  const side = Array.from({ length: 2 * ring + 1 }, (_, i) => i - ring);
  const all = side.flatMap((k): Point[] => [
    [ring, k],
    [-ring, k],
    [k, ring],
    [k, -ring],
  ]);
  return all
    .map(([x, y]): Point => [x * TRY_EVERY, y * TRY_EVERY])
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b));
}
