import { contains, signedArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** What a walker of a given half-width must keep off. */
export interface KeptOff {
  /** What a walk keeps from every outline, mm. */
  readonly half: number;
  /** The yard's outline first, and what stands in it. */
  readonly solids: readonly Solid[];
  readonly yard: Ring;
}

export interface Solid {
  readonly ring: Ring;
  readonly isYard: boolean;
  /** Middle and radius of a circle about the ring: a quick way to see that a line passes far from it. */
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** A walk may come this much nearer than half its width, mm: sides that just touch do not stop it. */
const GRAZE = 0.01;

export const keptOff = (yard: Ring, rings: readonly Ring[], half: number): KeptOff => ({
  half,
  yard,
  solids: [solidOf(yard, true), ...rings.map((ring) => solidOf(ring, false))],
});

const solidsByRing = new WeakMap<Ring, Solid>();

function solidOf(ring: Ring, isYard: boolean): Solid {
  const known = solidsByRing.get(ring);
  if (known?.isYard === isYard) return known;
  const [sumX, sumY] = ring.reduce<Point>(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  const [x, y] = [sumX / ring.length, sumY / ring.length];
  const radius = Math.max(...ring.map(([px, py]) => Math.hypot(px - x, py - y)));
  const solid = { ring, isYard, x, y, radius };
  solidsByRing.set(ring, solid);
  return solid;
}

/** Whether somebody of this width can stand with their middle at a point. */
export function isFree(ground: KeptOff, point: Point): boolean {
  return contains(ground.yard, point) && isClear(ground, point, point) && !standsIn(ground, point);
}

/** A court closed in by one fence is drawn as a ring of its own, run the other way: it takes one away from the count. */
function standsIn({ solids }: KeptOff, point: Point): boolean {
  let count = 0;
  for (const { ring, isYard, x, y, radius } of solids) {
    if (isYard || Math.hypot(point[0] - x, point[1] - y) > radius || !contains(ring, point)) continue;
    count += signedArea(ring) > 0 ? 1 : -1;
  }
  return count > 0;
}

/**
 * Whether a straight walk keeps half its width from every outline. Its ends are taken to be free.
 * @param among indices of the solids that can be in the way; all unless told
 */
export function isClear(
  { solids, half }: KeptOff,
  [ax, ay]: Point,
  [bx, by]: Point,
  among?: readonly number[],
): boolean {
  const ux = bx - ax;
  const uy = by - ay;
  const square = ux * ux + uy * uy;
  const keep = half - GRAZE;
  const count = among ? among.length : solids.length;
  for (let i = 0; i < count; i++) {
    const { ring, x, y, radius, isYard } = solids[among ? among[i]! : i]!;
    if (!isYard) {
      const along = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * ux + (y - ay) * uy) / square));
      const dx = ax + along * ux - x;
      const dy = ay + along * uy - y;
      if (dx * dx + dy * dy > (radius + half) * (radius + half)) continue;
    }
    if (meets(ring, ax, ay, bx, by, keep)) return false;
  }
  return true;
}

function meets(ring: Ring, ax: number, ay: number, bx: number, by: number, keep: number): boolean {
  let [px, py] = ring.at(-1) ?? [0, 0];
  const within = keep > 0 ? keep * keep : 0;
  const [left, right] = ax < bx ? [ax - keep, bx + keep] : [bx - keep, ax + keep];
  const [above, below] = ay < by ? [ay - keep, by + keep] : [by - keep, ay + keep];
  for (const [qx, qy] of ring) {
    const apart =
      (px < left && qx < left) ||
      (px > right && qx > right) ||
      (py < above && qy < above) ||
      (py > below && qy > below);
    if (
      !apart &&
      (crossing(ax, ay, bx, by, px, py, qx, qy) || near(ax, ay, bx, by, px, py, qx, qy, within))
    ) {
      return true;
    }
    [px, py] = [qx, qy];
  }
  return false;
}

/** Sides that cross properly; touching is no crossing. */
function crossing(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  px: number,
  py: number,
  qx: number,
  qy: number,
): boolean {
  const a = (qx - px) * (ay - py) - (qy - py) * (ax - px);
  const b = (qx - px) * (by - py) - (qy - py) * (bx - px);
  const p = (bx - ax) * (py - ay) - (by - ay) * (px - ax);
  const q = (bx - ax) * (qy - ay) - (by - ay) * (qx - ax);
  const touch = (GRAZE * (Math.abs(bx - ax) + Math.abs(by - ay) + Math.abs(qx - px) + Math.abs(qy - py))) / 4;
  return (
    ((a > touch && b < -touch) || (a < -touch && b > touch)) &&
    ((p > touch && q < -touch) || (p < -touch && q > touch))
  );
}

function near(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  px: number,
  py: number,
  qx: number,
  qy: number,
  within: number,
): boolean {
  if (within === 0) return false;
  return (
    toLine(ax, ay, px, py, qx, qy) < within ||
    toLine(bx, by, px, py, qx, qy) < within ||
    toLine(px, py, ax, ay, bx, by) < within ||
    toLine(qx, qy, ax, ay, bx, by) < within
  );
}

/** Distance from a point to a line from a to b, squared. */
function toLine(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [ux, uy] = [bx - ax, by - ay];
  const square = ux * ux + uy * uy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * ux + (y - ay) * uy) / square));
  return (ax + t * ux - x) ** 2 + (ay + t * uy - y) ** 2;
}
