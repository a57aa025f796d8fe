import Flatbush from "flatbush";
import { boundsOf } from "../geometry/ring.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import type { Curves } from "./shift-curves.ts";

/**
 * The shifts at which a smallest shift can lie, the shortest first: of all shifts between which nothing changes, the
 * shortest is where a curve comes nearest to no shift at all, or where two curves cross.
 * @param far no longer than this, mm
 */
export function placesOn(curves: Curves, far: number): Point[] {
  const rings = [
    ...curves.forbidden,
    ...curves.gaps.flatMap(({ joint, path }) => [...joint, ...path]),
    ...curves.others,
  ];
  const sides = rings.flatMap((ring, of) => sidesNear(ring, of, far));
  const found = [...rings.flatMap(nearestOn), ...crossingsOf(sides)];
  return withoutTwins(found.filter((at) => Math.hypot(...at) <= far).sort(byLength));
}

/**
 * Shifts that lay a thing along another, close by close: how much soil is within reach changes as one is slid along the
 * other, without any curve being crossed.
 * @param far no longer than this, mm
 */
export function slidesOn({ gaps }: Curves, far: number): Point[] {
  const every = Math.max(CLOSE, far / SLIDES);
  const sides = gaps.flatMap(({ joint }, of) => joint.flatMap((ring) => sidesNear(ring, of, far)));
  const found = sides.flatMap(({ from, to }): Point[] => {
    const parts = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / every);
    return Array.from({ length: parts }, (_, i) => {
      const share = (i + 0.5) / parts;
      return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    });
  });
  return found.filter((at) => Math.hypot(...at) <= far).sort(byLength);
}

/** How close by each other slides are, mm, and how many of them to a long way. */
const CLOSE = 30;
const SLIDES = 20;

const byLength = (a: Point, b: Point): number => Math.hypot(...a) - Math.hypot(...b);

interface Side {
  readonly from: Point;
  readonly to: Point;
  /** Number of the ring it is a side of. */
  readonly of: number;
}

function sidesNear(ring: Ring, of: number, far: number): Side[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const near = nearestOnSegment(NO_SHIFT, from, to);
    return Math.hypot(...near) <= far ? [{ from, to, of }] : [];
  });
}

const NO_SHIFT: Point = [0, 0];

/** Where a ring, followed round, comes nearest to no shift: within a side, or at a corner if both its sides agree. */
function nearestOn(ring: Ring): Point[] {
  const feet = ring.map((from, i) => nearestOnSegment(NO_SHIFT, from, ring[(i + 1) % ring.length]!));
  return feet.filter((foot, i) => {
    if (isSame(foot, ring[(i + 1) % ring.length]!)) return false;
    return !isSame(foot, ring[i]!) || isSame(feet.at(i - 1)!, foot);
  });
}

const isSame = ([ax, ay]: Point, [bx, by]: Point): boolean => ax === bx && ay === by;

function crossingsOf(sides: readonly Side[]): Point[] {
  if (sides.length === 0) return [];
  const index = new Flatbush(sides.length);
  for (const { from, to } of sides) {
    const { minX, minY, maxX, maxY } = boundsOf([from, to]);
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  return sides.flatMap((side, i) => {
    const { minX, minY, maxX, maxY } = boundsOf([side.from, side.to]);
    const near = index.search(minX, minY, maxX, maxY, (j) => j > i && sides[j]!.of !== side.of);
    return near.flatMap((j) => crossing(side, sides[j]!) ?? []);
  });
}

function crossing(a: Side, b: Side): [Point] | null {
  const [ux, uy] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [vx, vy] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const across = ux * vy - uy * vx;
  if (across === 0) return null;
  const [wx, wy] = [b.from[0] - a.from[0], b.from[1] - a.from[1]];
  const s = (wx * vy - wy * vx) / across;
  const t = (wx * uy - wy * ux) / across;
  if (s < 0 || s > 1 || t < 0 || t > 1) return null;
  return [[a.from[0] + s * ux, a.from[1] + s * uy]];
}

/** Nearer to each other than this two shifts are one, mm. */
const TWINS = 0.1;

function withoutTwins(sorted: readonly Point[]): Point[] {
  const seen = new Set<string>();
  return sorted.filter(([x, y]) => {
    const key = `${Math.round(x / TWINS)} ${Math.round(y / TWINS)}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** A quick look at whether a shift can stand well at all: most cannot, and need not be tried. */
export function mayStand(curves: Curves, by: Point): boolean {
  if (curves.forbidden.some((ring) => isDeepIn(ring, by))) return false;
  let isNarrow = false;
  for (const { joint, path } of curves.gaps) {
    // What is joined to the bed may fill the gap to something behind it; then a closer look is needed.
    if (joint.some((ring) => isIn(ring, by, -SLACK))) return true;
    isNarrow ||= path.some((ring) => isDeepIn(ring, by));
  }
  return !isNarrow;
}

/** Chords stand off from the round by up to 1.2 mm at 36 in; rules allow half a millimetre. */
const SLACK = SAME_LENGTH + 1.5;
const isDeepIn = (ring: Ring, by: Point): boolean => isIn(ring, by, SLACK);

/** Whether a point lies in a clockwise convex ring, by at least so many mm. */
function isIn(ring: Ring, [x, y]: Point, by: number): boolean {
  let [ax, ay] = ring.at(-1)!;
  for (const [bx, by2] of ring) {
    const [ux, uy] = [bx - ax, by2 - ay];
    const inside = ux * (y - ay) - uy * (x - ax);
    const length = Math.hypot(ux, uy);
    if (length > 0 && inside < by * length) return false;
    [ax, ay] = [bx, by2];
  }
  return true;
}
