import Flatbush from "flatbush";
import type { Garden } from "../garden/garden.ts";
import { boxDistance, boxOf } from "../geometry/gap.ts";
import { clockwise } from "../geometry/ring.ts";
import type { Box, Ring } from "../geometry/types.ts";
import { type Obstacle, obstaclesOf } from "./obstacles.ts";

/** What stands in a garden, laid out so that the neighbours of a place are found at once. */
export interface Surroundings {
  readonly obstacles: readonly Obstacle[];
  /** The yard's outline, clockwise as seen, the same value as long as the yard stays the same. */
  readonly yard: Ring;
  /** Indices into `obstacles` of all whose bounds come within `reach` mm of a box, in their order. */
  near(box: Box, reach: number): readonly number[];
}

const known = new WeakMap<Garden["items"], Surroundings>();

/** Worked out once for each garden: moving one thing makes a new one, at a few hundredths of a millisecond. */
export function surroundingsOf(garden: Pick<Garden, "items" | "yard">): Surroundings {
  const before = known.get(garden.items);
  const yard = clockwiseYard(garden.yard);
  if (before?.yard === yard) return before;
  const surroundings = laidOut(obstaclesOf(garden), yard);
  known.set(garden.items, surroundings);
  return surroundings;
}

const yards = new WeakMap<Ring, Ring>();

function clockwiseYard(drawn: Ring): Ring {
  let yard = yards.get(drawn);
  if (!yard) {
    yard = clockwise(drawn);
    yards.set(drawn, yard);
  }
  return yard;
}

function laidOut(obstacles: readonly Obstacle[], yard: Ring): Surroundings {
  if (obstacles.length === 0) return { obstacles, yard, near: () => [] };
  const index = new Flatbush(obstacles.length);
  for (const { ring } of obstacles) {
    const { minX, minY, maxX, maxY } = boxOf(ring);
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  const near = (box: Box, reach: number) =>
    index
      .search(box.minX - reach, box.minY - reach, box.maxX + reach, box.maxY + reach)
      .filter((i) => boxDistance(box, boxOf(obstacles[i]!.ring)) <= reach)
      .sort((a, b) => a - b);
  return { obstacles, yard, near };
}
