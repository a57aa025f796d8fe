import { signedArea } from "./ring.ts";
import type { Point, Ring } from "./types.ts";

/** Less than this many mm² encloses nothing anybody could stand on. */
const NO_AREA = 1;

/**
 * Whether a ring is one plain outline: three corners or more, ground inside it, no corner drawn twice, no side that
 * crosses, touches or runs back along another.
 *
 * Every side is held against every other: an outline has at most a few hundred.
 */
export function isSimple(ring: Ring): boolean {
  if (ring.length < 3 || !(Math.abs(signedArea(ring)) >= NO_AREA)) return false;
  for (let i = 0; i < ring.length; i++) {
    const [a, b] = [corner(ring, i), corner(ring, i + 1)];
    if (samePoint(a, b)) return false;
    // Neighbours share a corner, and the first side is the last one's neighbour. A side that runs back along its
    // neighbour is caught by the one after it, which then starts or ends on that neighbour.
    const last = i === 0 ? ring.length - 1 : ring.length;
    for (let j = i + 2; j < last; j++) {
      if (meet(a, b, corner(ring, j), corner(ring, j + 1))) return false;
    }
  }
  return true;
}

const corner = (ring: Ring, i: number): Point => ring[i % ring.length]!;

const samePoint = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** Above 0 where c lies clockwise (as seen) of the line from a to b. */
const side = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether two segments have any point in common. */
function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [ca, cb] = [side(c, d, a), side(c, d, b)];
  const [ac, ad] = [side(a, b, c), side(a, b, d)];
  if (Math.sign(ca) * Math.sign(cb) < 0 && Math.sign(ac) * Math.sign(ad) < 0) return true;
  return (
    (ca === 0 && within(c, d, a)) ||
    (cb === 0 && within(c, d, b)) ||
    (ac === 0 && within(a, b, c)) ||
    (ad === 0 && within(a, b, d))
  );
}

/** For a point on the line through a and b: whether it lies between them, ends included. */
const within = (a: Point, b: Point, p: Point): boolean =>
  Math.min(a[0], b[0]) <= p[0] &&
  p[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= p[1] &&
  p[1] <= Math.max(a[1], b[1]);
