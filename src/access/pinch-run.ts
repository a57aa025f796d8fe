import type { Point, Ring } from "../geometry/types.ts";
import type { Gap } from "./types.ts";

/** How finely and how far the way is looked along, mm, and how exactly the ends of a run are told. */
const STEP = 10;
const FARTHEST = 3000;
const EXACT = 0.05;

/**
 * How long a way stays narrower than a width about its narrowest place: measured along the way, by the clear width
 * square to it.
 */
export function pinchRun({ from, to, width }: Gap, rings: readonly Ring[], limit: number): number {
  if (width === 0) return 0;
  const across: Point = [(to[0] - from[0]) / width, (to[1] - from[1]) / width];
  const onward: Point = [-across[1], across[0]];
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const isNarrow = (far: number) => {
    const at: Point = [middle[0] + far * onward[0], middle[1] + far * onward[1]];
    return clearFrom(at, across, rings) + clearFrom(at, [-across[0], -across[1]], rings) < limit - EXACT;
  };
  return endOfRun(isNarrow, 1) + endOfRun(isNarrow, -1);
}

function endOfRun(isNarrow: (far: number) => boolean, sense: 1 | -1): number {
  let low = 0;
  while (low < FARTHEST && isNarrow(sense * (low + STEP))) low += STEP;
  let high = low + STEP;
  while (high - low > EXACT) {
    const middle = (low + high) / 2;
    if (isNarrow(sense * middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** How far from a point the first outline lies in a direction, mm. */
function clearFrom([x, y]: Point, [ux, uy]: Point, rings: readonly Ring[]): number {
  let least = Infinity;
  for (const ring of rings) {
    let [px, py] = ring.at(-1)!;
    for (const [qx, qy] of ring) {
      const p = ux * (py - y) - uy * (px - x);
      const q = ux * (qy - y) - uy * (qx - x);
      if (p > 0 !== q > 0) {
        const t = p / (p - q);
        const far = ux * (px + t * (qx - px) - x) + uy * (py + t * (qy - py) - y);
        if (far >= 0 && far < least) least = far;
      }
      [px, py] = [qx, qy];
    }
  }
  return least;
}
