import { boundsOf } from "./ring.ts";
import type { Point, Ring } from "./types.ts";
import { add, cross, subtract } from "./vector.ts";

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
  const a = fromTop(first);
  const b = fromTop(second);
  const sum: Point[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    sum.push(add(a[i % a.length]!, b[j % b.length]!));
    const sideA = subtract(a[(i + 1) % a.length]!, a[i % a.length]!);
    const sideB = subtract(b[(j + 1) % b.length]!, b[j % b.length]!);
    const turn = i >= a.length ? -1 : j >= b.length ? 1 : cross(sideA, sideB);
    if (turn >= 0) i++;
    if (turn <= 0) j++;
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

/** The ring begun at its top corner (the leftmost of those), from where clockwise sides run by growing angle. */
function fromTop(ring: Ring): Ring {
  const { minY } = boundsOf(ring);
  let start = -1;
  ring.forEach(([x, y], i) => {
    if (y === minY && (start < 0 || x < ring[start]![0])) start = i;
  });
  return [...ring.slice(start), ...ring.slice(0, start)];
}
