import Flatbush from "flatbush";
import { boxOf } from "../geometry/gap.ts";
import { boundsOf } from "../geometry/ring.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import type { Curves } from "./shift-curves.ts";
import type { ShiftGround } from "./shift-ground.ts";

/** Shifts longer than `inner` mm and no longer than `far` mm. */
export interface Belt {
  readonly inner: number;
  readonly far: number;
}

/**
 * The shifts at which a smallest shift can lie, the shortest first: of all shifts between which nothing changes, the
 * shortest is where a curve comes nearest to no shift at all, or where two curves cross. Only those that may stand.
 *
 * Each side is first cut down to what of it may be stood on: in a full yard that leaves little, and few crossings.
 */
export function placesOn(curves: Curves, ground: ShiftGround, belt: Belt): Point[] {
  const rings = [
    ...curves.forbidden.map(({ ring }) => ring),
    ...curves.gaps.flatMap(({ joint, path }) => [...joint, ...path]),
    ...curves.others,
  ];
  const near = rings.filter((ring) => isInBelt(ring, belt));
  const pieces = near.flatMap((ring, of) => sidesNear(ring, of, belt).flatMap(freePieces(ground)));
  const found = [...near.flatMap((ring) => nearestOn(ring)), ...crossingsOf(pieces)];
  return withoutTwins(sorted(found, belt)).filter(ground.mayStand);
}

/**
 * Shifts that lay a thing along another, close by close: how much soil is within reach changes as one is slid along the
 * other, without any curve being crossed.
 */
export function slidesOn({ gaps }: Curves, ground: ShiftGround, belt: Belt): Point[] {
  const every = Math.max(CLOSE, belt.far / SLIDES);
  const rings = gaps.flatMap(({ joint }) => joint).filter((ring) => isInBelt(ring, belt));
  const sides = rings.flatMap((ring, of) => sidesNear(ring, of, belt));
  const found = sides.flatMap(freePieces(ground)).flatMap(({ from, to }): Point[] => {
    const parts = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / every);
    return Array.from({ length: parts }, (_, i) => along(from, to, (i + 0.5) / parts));
  });
  return sorted(found, belt).filter(ground.mayStand);
}

/** How close by each other slides are, mm, and how many of them to a long way. */
const CLOSE = 30;
const SLIDES = 20;

function sorted(places: readonly Point[], { inner, far }: Belt): Point[] {
  const measured = places.map((at) => ({ at, length: Math.hypot(at[0], at[1]) }));
  return measured
    .filter(({ length }) => length >= inner && length <= far)
    .sort((a, b) => a.length - b.length)
    .map(({ at }) => at);
}

const along = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [
  ax + share * (bx - ax),
  ay + share * (by - ay),
];

interface Side {
  readonly from: Point;
  readonly to: Point;
  /** Number of the ring it is a side of. */
  readonly of: number;
}

/** Whether some of a ring can lie in a belt, judged by its bounds. */
function isInBelt(ring: Ring, { inner, far }: Belt): boolean {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const nearest = Math.hypot(Math.max(0, minX, -maxX), Math.max(0, minY, -maxY));
  const farthest = Math.hypot(Math.max(-minX, maxX), Math.max(-minY, maxY));
  return nearest <= far && farthest >= inner;
}

function sidesNear(ring: Ring, of: number, { inner, far }: Belt): Side[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    if (Math.hypot(from[0], from[1]) < inner && Math.hypot(to[0], to[1]) < inner) return [];
    const near = nearestOnSegment(NO_SHIFT, from, to);
    return Math.hypot(near[0], near[1]) <= far ? [{ from, to, of }] : [];
  });
}

const NO_SHIFT: Point = [0, 0];

const freePieces =
  (ground: ShiftGround) =>
  ({ from, to, of }: Side): Side[] =>
    ground
      .freeParts(from, to)
      .map(([start, end]) => ({ from: along(from, to, start), to: along(from, to, end), of }));

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

function withoutTwins(places: readonly Point[]): Point[] {
  const seen = new Set<string>();
  return places.filter(([x, y]) => {
    const key = `${Math.round(x / TWINS)} ${Math.round(y / TWINS)}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
