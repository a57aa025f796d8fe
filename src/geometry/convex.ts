import type { Point, Ring } from "./types.ts";
import { cross, subtract } from "./vector.ts";

/** How far a corner may lie inside the line of its neighbours and still count as on it, mm. */
const NOISE = 1e-6;

/** Whether a clockwise ring has no corner that turns inwards; three points along a line are no such corner. */
export function isConvex(ring: Ring): boolean {
  return ring.every((corner, i) => {
    const into = subtract(corner, ring.at(i - 1)!);
    const out = subtract(ring[(i + 1) % ring.length]!, corner);
    return cross(into, out) >= -NOISE * (Math.hypot(...into) + Math.hypot(...out));
  });
}

/**
 * The outline of all sums of a point of the first and a point of the second ring.
 * @param first, second convex and clockwise
 * @source the sides of both in order of their direction: M. de Berg et al., Computational Geometry, 2008, section 13.3
 */
export function convexSum(first: Ring, second: Ring): Ring {
  const [startA, startB] = [topOf(first), topOf(second)];
  const sum: Point[] = [];
  let [ax, ay] = first[startA]!;
  let [bx, by] = second[startB]!;
  for (let i = 0, j = 0; i < first.length || j < second.length; ) {
    sum.push([ax + bx, ay + by]);
    const [nextAx, nextAy] = first[(startA + i + 1) % first.length]!;
    const [nextBx, nextBy] = second[(startB + j + 1) % second.length]!;
    const turn =
      i >= first.length
        ? -1
        : j >= second.length
          ? 1
          : (nextAx - ax) * (nextBy - by) - (nextAy - ay) * (nextBx - bx);
    if (turn >= 0) {
      [ax, ay] = [nextAx, nextAy];
      i++;
    }
    if (turn <= 0) {
      [bx, by] = [nextBx, nextBy];
      j++;
    }
  }
  return sum;
}

/** The smallest convex ring round points, clockwise. */
export function convexHull(points: Ring): Ring {
  const sorted = points.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (run: Ring) => {
    const chain: Point[] = [];
    for (const point of run) {
      while (chain.length > 1) {
        const [before, last] = [chain.at(-2)!, chain.at(-1)!];
        if (cross(subtract(last, before), subtract(point, last)) > 0) break;
        chain.pop();
      }
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** Index of a ring's top corner (the leftmost of those), from where clockwise sides run by growing angle. */
function topOf(ring: Ring): number {
  let top = 0;
  ring.forEach(([x, y], i) => {
    const [topX, topY] = ring[top]!;
    if (y < topY || (y === topY && x < topX)) top = i;
  });
  return top;
}
