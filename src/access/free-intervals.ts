import { isConvex } from "../geometry/convex.ts";
import { boxDistance, boxOf } from "../geometry/gap.ts";
import { contains } from "../geometry/ring.ts";
import type { Box, Point, Ring } from "../geometry/types.ts";
import { type Roll, rollAlong, type Span, takenBy } from "./roll.ts";

/** Part of one side of a ring, from `start` to `end` mm along it. */
export interface Interval {
  /** From this corner of the ring to the next. */
  readonly side: number;
  readonly start: number;
  readonly end: number;
}

export interface Hindrances {
  readonly others: readonly Ring[];
  /** The outline to stay inside of; null for open country. */
  readonly yard: Ring | null;
  /** How much nearer than its radius the disc may come to the ring's own other sides, mm. */
  readonly ownSlack: number;
  /** What the ring is drawn from, wherever it stands: what its own sides hinder is remembered by this. */
  readonly shape: object;
}

/** Below this a distance is noise of the arithmetic, mm: a disc that just fits touches on both sides. */
const NOISE = 1e-6;

/**
 * Where a disc can touch a ring from outside without coming nearer to anything than its radius.
 *
 * The centre of a disc that rolls along a side moves on the line beside it at one radius. Each hindering segment takes
 * from that line what lies within a radius of it; that is one interval, for all points within a distance of a segment
 * make a convex shape.
 *
 * @param ring clockwise as seen
 * @param radius mm
 * @returns in the order of the ring's sides; an interval without length is a place where the disc just fits
 */
export function freeIntervals(ring: Ring, radius: number, hindrances: Hindrances): Interval[] {
  const { others, yard } = hindrances;
  const near = others.filter((other) => boxDistance(boxOf(ring), boxOf(other)) < radius * 2);
  return openSides(ring, radius, hindrances).flatMap(({ side, roll, spans }) => {
    let left = spans;
    if (yard) left = withoutNear(left, roll, yard, radius - NOISE, -1);
    for (const other of near) {
      if (boxDistance(roll.box, boxOf(other)) < radius)
        left = withoutNear(left, roll, other, radius - NOISE, -1);
    }
    return left
      .filter(([start, end]) => standsFree(roll.at((start + end) / 2), near, yard))
      .map(([start, end]) => ({ side, start, end }));
  });
}

const standsFree = (point: Point, others: readonly Ring[], yard: Ring | null): boolean =>
  (!yard || contains(yard, point)) &&
  !others.some((other) => within(boxOf(other), point) && contains(other, point));

const within = ({ minX, minY, maxX, maxY }: Box, [x, y]: Point): boolean =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

interface OpenSide {
  readonly side: number;
  readonly roll: Roll;
  readonly spans: readonly Span[];
}

/** What the ring's own other sides leave open of each side: bays too narrow are shut, whatever else stands about. */
function openSides(ring: Ring, radius: number, { shape, ownSlack }: Hindrances): readonly OpenSide[] {
  const ownSpans = remembered(shape, ring, radius, ownSlack);
  return ring.flatMap((corner, side): OpenSide[] => {
    const roll = rollAlong(corner, ring[(side + 1) % ring.length]!, radius);
    if (!roll) return []; // a corner drawn twice has no side
    const spans = ownSpans ? ownSpans[side]! : [[0, roll.length] as const];
    return spans.length > 0 ? [{ side, roll, spans }] : [];
  });
}

type OwnSpans = readonly (readonly Span[])[] | null;

const known = new WeakMap<
  object,
  { readonly radius: number; readonly corners: number; readonly spans: OwnSpans }
>();

/** The same wherever the shape stands and however it is turned; null where its own sides hinder nothing. */
function remembered(shape: object, ring: Ring, radius: number, ownSlack: number): OwnSpans {
  const before = known.get(shape);
  if (before?.radius === radius && before.corners === ring.length) return before.spans;
  // A convex ring never stands in the way of a disc that touches it from outside.
  const spans = isConvex(ring) ? null : ring.map((_, side) => besideOwn(ring, side, radius, ownSlack));
  known.set(shape, { radius, corners: ring.length, spans });
  return spans;
}

function besideOwn(ring: Ring, side: number, radius: number, ownSlack: number): readonly Span[] {
  const roll = rollAlong(ring[side]!, ring[(side + 1) % ring.length]!, radius);
  return roll ? withoutNear([[0, roll.length]], roll, ring, radius - ownSlack - NOISE, side) : [];
}

/** Takes from the spans what lies within `distance` of any side of a ring, but for the side `own`. */
function withoutNear(
  spans: readonly Span[],
  roll: Roll,
  ring: Ring,
  distance: number,
  own: number,
): readonly Span[] {
  let left = spans;
  let [ax, ay] = ring.at(-1)!;
  for (let i = 0; i < ring.length && left.length > 0; i++) {
    const [bx, by] = ring[i]!;
    const isOwn = own >= 0 && (i === 0 ? ring.length - 1 : i - 1) === own;
    const taken = isOwn ? null : takenBy(roll, ax, ay, bx, by, distance);
    if (taken) left = cut(left, taken);
    ax = bx;
    ay = by;
  }
  return left;
}

function cut(spans: readonly Span[], [from, to]: Span): Span[] {
  const left: Span[] = [];
  for (const [start, end] of spans) {
    if (to <= start || from >= end) left.push([start, end]);
    else {
      if (from >= start) left.push([start, from]);
      if (to <= end) left.push([to, end]);
    }
  }
  return left;
}
