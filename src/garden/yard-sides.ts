import { isSimple } from "../geometry/simple.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, cross, distance, scale, subtract } from "../geometry/vector.ts";

/** Sides within this sine of each other's direction are parallel: 0.06°, 1 mm in a metre. */
const PARALLEL = 0.001;

/**
 * An outline with one side made as long as it was measured in the yard.
 *
 * The side's end is pushed along it, and the corners after it go along until a parallel side takes up the change: a
 * rectangle stays a rectangle, and an L keeps its right angles. Where no side is parallel the end corner alone moves.
 *
 * @param side index of the side from that corner to the next
 * @param length mm, above 0
 * @throws RangeError for a side that is not there, a length that is none, or one that would make sides cross
 */
export function yardWithSide(yard: Ring, side: number, length: number): Ring {
  const [from, to] = [yard[side], yard[(side + 1) % yard.length]];
  if (!from || !to) throw new RangeError(`no side ${side} in an outline of ${yard.length}`);
  if (!(length > 0 && Number.isFinite(length))) throw new RangeError("a side must be longer than nothing");
  const along = scale(subtract(to, from), 1 / distance(from, to));
  const by = scale(along, length - distance(from, to));
  const pushed = pushedCorners(yard, side, along);
  const changed = yard.map((corner, i) => (pushed.has(i) ? add(corner, by) : corner));
  if (!isSimple(changed)) throw new RangeError("a side of that length would cross another");
  return changed;
}

/** The corners that go along with the end of a side. */
function pushedCorners(yard: Ring, side: number, along: Point): ReadonlySet<number> {
  const end = (side + 1) % yard.length;
  const pushed = new Set([end]);
  for (let i = end; (i + 1) % yard.length !== side; i = (i + 1) % yard.length) {
    const next = (i + 1) % yard.length;
    const way = subtract(yard[next]!, yard[i]!);
    if (Math.abs(cross(way, along)) <= PARALLEL * Math.hypot(...way)) return pushed;
    pushed.add(next);
  }
  // The last side leads back to the start of the pushed one; it may be the parallel one only in a flat outline.
  return new Set([end]);
}

/**
 * An outline with a corner more, in the side from corner `side` to the next.
 * @throws RangeError if the side is not there or the corner would make sides cross
 */
export function insertCorner(ring: Ring, side: number, at: Point): Ring {
  if (!ring[side]) throw new RangeError(`no side ${side} in an outline of ${ring.length}`);
  return plain([...ring.slice(0, side + 1), at, ...ring.slice(side + 1)]);
}

/**
 * An outline without one of its corners.
 * @throws RangeError if it is not there, if fewer than three would be left, or if sides would cross
 */
export function removeCorner(ring: Ring, corner: number): Ring {
  if (!ring[corner]) throw new RangeError(`no corner ${corner} in an outline of ${ring.length}`);
  if (ring.length <= 3) throw new RangeError("an outline keeps three corners");
  return plain(ring.filter((_, i) => i !== corner));
}

function plain(ring: Ring): Ring {
  if (!isSimple(ring)) throw new RangeError("the outline would cross itself");
  return ring;
}
