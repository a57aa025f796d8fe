import { contains, signedArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** What a walker of a given half-width must keep off. */
export interface KeptOff {
  /** What a walk keeps from every outline, mm. */
  readonly half: number;
  /** The yard's outline, and what stands in it. */
  readonly solids: readonly Solid[];
  readonly yard: Ring;
}

/** Ground to walk on, with the corners one may turn at. */
export interface RouteGround extends KeptOff {
  /** Half the width asked for: how far off a walker's middle is when they touch something. */
  readonly wanted: number;
  readonly turns: readonly Turn[];
}

export interface Solid {
  readonly ring: Ring;
  readonly isYard: boolean;
  /** Middle and radius of a circle about the ring: a quick way to see that a line passes far from it. */
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** A place at which a walker rounds an outline: a corner of the outline drawn `half` outside it. */
export interface Turn {
  readonly at: Point;
  /** Unit directions of the two sides that meet here; a shortest walk passes outside of both. */
  readonly before: Point;
  readonly after: Point;
  /** The corners of the outline that are rounded here, in its order: for the exact length. */
  readonly corners: readonly Point[];
  readonly ring: Ring;
}

/** Directions of the sides of an outline drawn round a corner: no coarser than this, radians. */
const TURNING = Math.PI / 8;
/** A walk may come this much nearer than half its width, mm: sides that just touch do not stop it. */
const GRAZE = 0.01;

/**
 * Ground for one half-width. Turns lie half a width from their corners and the sides between them cut in a little: by so
 * much, under 2 % of the half-width (4 mm for somebody on foot), may a walk come nearer to an outline.
 */
export function routeGround(yard: Ring, rings: readonly Ring[], wanted: number): RouteGround {
  const half = wanted * Math.cos(TURNING / 2);
  const kept = keptOff(yard, rings, half);
  const turns = kept.solids.flatMap(({ ring, isYard }) => turnsAround(ring, half, isYard));
  return { ...kept, wanted, turns: turns.filter(({ at }) => isFree(kept, at)) };
}

export const keptOff = (yard: Ring, rings: readonly Ring[], half: number): KeptOff => ({
  half,
  yard,
  solids: [solidOf(yard, true), ...rings.map((ring) => solidOf(ring, false))],
});

function solidOf(ring: Ring, isYard: boolean): Solid {
  const [sumX, sumY] = ring.reduce<Point>(([x, y], [px, py]) => [x + px, y + py], [0, 0]);
  const [x, y] = [sumX / ring.length, sumY / ring.length];
  return { ring, isYard, x, y, radius: Math.max(...ring.map(([px, py]) => Math.hypot(px - x, py - y))) };
}

const turnsByRing = new WeakMap<Ring, Map<string, readonly Turn[]>>();

function turnsAround(ring: Ring, half: number, isYard: boolean): readonly Turn[] {
  const known = turnsByRing.get(ring) ?? new Map<string, readonly Turn[]>();
  turnsByRing.set(ring, known);
  const key = `${half} ${isYard}`;
  const turns = known.get(key) ?? makeTurns(ring, isYard, half);
  known.set(key, turns);
  return turns;
}

/**
 * The outline so run that the ground to walk on lies at the left of each side, as seen. What stands in the yard is drawn
 * so (and a court within it the other way round); the yard, which is walked inside, is turned to it.
 */
const walkedRound = (ring: Ring, isYard: boolean): Ring =>
  isYard && signedArea(ring) > 0 ? [...ring].reverse() : ring;

interface Tangent {
  /** Unit direction. */
  readonly along: Point;
  /** Index of the corner it touches. */
  readonly corner: number;
}

function makeTurns(of: Ring, isYard: boolean, half: number): Turn[] {
  const ring = walkedRound(of, isYard);
  const tangents = ring.map((_, i) => tangentsAt(ring, i));
  // Outlines of many short sides are rounded in fewer, longer ones: tangents that hardly turn are left out.
  const turns: Turn[] = [];
  let pending: Tangent[] = [];
  const close = () => {
    turns.push(...turnsBetween(ring, thinned(pending), half, of));
    pending = [];
  };
  for (const atCorner of rotatedToInwardCorner(tangents)) {
    if (atCorner.length === 0) close();
    else pending.push(...atCorner);
  }
  close();
  return turns;
}

/** Starts the round at an inward corner if there is one, so that no run of outward corners is cut in two. */
function rotatedToInwardCorner(tangents: readonly Tangent[][]): readonly (readonly Tangent[])[] {
  const inward = tangents.findIndex((atCorner) => atCorner.length === 0);
  if (inward >= 0) return [...tangents.slice(inward), ...tangents.slice(0, inward)];
  const first = tangents[0]?.[0];
  return first ? [...tangents, [first]] : tangents;
}

/** Sides that touch the outline at one corner, from the side that comes in to the one that goes out; none inwards. */
function tangentsAt(ring: Ring, corner: number): Tangent[] {
  const incoming = direction(ring.at(corner - 1)!, ring[corner]!);
  const outgoing = direction(ring[corner]!, ring[(corner + 1) % ring.length]!);
  const turn = Math.atan2(
    incoming[0] * outgoing[1] - incoming[1] * outgoing[0],
    incoming[0] * outgoing[0] + incoming[1] * outgoing[1],
  );
  if (!(turn > 0)) return [];
  const parts = Math.ceil(turn / TURNING - 1e-9);
  return Array.from({ length: parts + 1 }, (_, i) => ({ along: spun(incoming, (turn * i) / parts), corner }));
}

function thinned(tangents: readonly Tangent[]): Tangent[] {
  const kept: Tangent[] = [];
  tangents.forEach((tangent, i) => {
    const [last, next] = [kept.at(-1), tangents[i + 1]];
    if (!last || !next || angle(last.along, next.along) > TURNING + 1e-9) kept.push(tangent);
  });
  return kept;
}

function turnsBetween(ring: Ring, tangents: readonly Tangent[], half: number, of: Ring): Turn[] {
  return tangents.slice(1).flatMap((after, i) => {
    const before = tangents[i]!;
    if (angle(before.along, after.along) < 1e-9) return [];
    const at = meeting(ring[before.corner]!, before.along, ring[after.corner]!, after.along, half);
    return [
      {
        at,
        before: before.along,
        after: after.along,
        corners: cornersFrom(ring, before.corner, after.corner),
        ring: of,
      },
    ];
  });
}

function cornersFrom(ring: Ring, from: number, to: number): Point[] {
  const corners = [ring[from]!];
  for (let i = from; i !== to; ) {
    i = (i + 1) % ring.length;
    corners.push(ring[i]!);
  }
  return corners;
}

/** Where two sides meet that are drawn `half` to the left of where they touch. */
function meeting(p: Point, u: Point, q: Point, v: Point, half: number): Point {
  const [px, py] = [p[0] + u[1] * half, p[1] - u[0] * half];
  const [qx, qy] = [q[0] + v[1] * half, q[1] - v[0] * half];
  const t = ((qx - px) * v[1] - (qy - py) * v[0]) / (u[0] * v[1] - u[1] * v[0]);
  return [px + t * u[0], py + t * u[1]];
}

function direction([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(bx - ax) / length, (by - ay) / length];
}

const spun = ([x, y]: Point, rad: number): Point => [
  x * Math.cos(rad) - y * Math.sin(rad),
  x * Math.sin(rad) + y * Math.cos(rad),
];

const angle = (u: Point, v: Point): number =>
  Math.atan2(u[0] * v[1] - u[1] * v[0], u[0] * v[0] + u[1] * v[1]);

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
 */
export function isClear({ solids, half }: KeptOff, [ax, ay]: Point, [bx, by]: Point): boolean {
  const [ux, uy] = [bx - ax, by - ay];
  const square = ux * ux + uy * uy;
  const keep = half - GRAZE;
  for (const { ring, x, y, radius, isYard } of solids) {
    if (!isYard) {
      const along = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * ux + (y - ay) * uy) / square));
      const away = Math.hypot(ax + along * ux - x, ay + along * uy - y);
      if (away > radius + half) continue;
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
