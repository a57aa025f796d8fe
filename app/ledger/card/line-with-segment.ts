import { add, distance, type Point, say, scale, subtract } from "../../../src/index.ts";

/**
 * A line of points with one of its stretches at another length: what lies beyond it is carried along.
 * @throws RangeError for a stretch that has no direction
 */
export function lineWithSegment(points: readonly Point[], index: number, length: number): readonly Point[] {
  const from = points[index];
  const to = points[index + 1];
  if (!from || !to) throw new RangeError(`no stretch ${index} in a line of ${points.length} points`);
  const before = distance(from, to);
  if (before === 0)
    throw new RangeError(say`Two corners lie on one another: move one of them on the plan first.`);
  const by = scale(subtract(to, from), length / before - 1);
  return points.map((point, i) => (i > index ? add(point, by) : point));
}

export const lengthsOf = (points: readonly Point[]): readonly number[] =>
  points.slice(1).map((point, i) => distance(points[i]!, point));
