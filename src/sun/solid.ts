import type { Point, Ring } from "../geometry/types.ts";

/** An upright body with a convex plan, a level bottom and one flat top, level or sloping. Heights above the ground, mm. */
export interface Prism {
  readonly body: "prism";
  /** Convex, clockwise as seen. */
  readonly ring: Ring;
  readonly bottom: number;
  /** Height of the top over each corner. */
  readonly tops: readonly number[];
  /** How much the top rises for each mm to the right and for each mm down the plan. */
  readonly slope: Point;
}

/** A tree's crown: an egg standing upright, as wide one way as the other. */
export interface Crown {
  readonly body: "crown";
  readonly at: Point;
  /** Height of its middle above the ground. */
  readonly middle: number;
  /** Half its width. */
  readonly across: number;
  /** Half its height. */
  readonly up: number;
}

export type Body = Prism | Crown;

/** A convex ring raised from one height to another. */
export const block = (ring: Ring, bottom: number, top: number): Prism => ({
  body: "prism",
  ring,
  bottom,
  tops: ring.map(() => top),
  slope: [0, 0],
});

/**
 * The part of a prism above a level plane, or null where nothing is.
 * A slanting top may cut through the plane: then only the ground under the higher part of it stays.
 */
export function prismAbove(prism: Prism, level: number): Prism | null {
  if (Math.max(...prism.tops) <= level) return null;
  const bottom = Math.max(prism.bottom, level);
  if (Math.min(...prism.tops) >= bottom) return { ...prism, bottom };
  const ring: Point[] = [];
  const tops: number[] = [];
  prism.ring.forEach((corner, i) => {
    const next = (i + 1) % prism.ring.length;
    const [here, there] = [prism.tops[i]!, prism.tops[next]!];
    if (here >= bottom) {
      ring.push(corner);
      tops.push(here);
    }
    if (here >= bottom !== there >= bottom) {
      const share = (bottom - here) / (there - here);
      const [x, y] = prism.ring[next]!;
      ring.push([corner[0] + share * (x - corner[0]), corner[1] + share * (y - corner[1])]);
      tops.push(bottom);
    }
  });
  return ring.length < 3 ? null : { ...prism, ring, bottom, tops };
}
