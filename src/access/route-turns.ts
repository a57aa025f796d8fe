import { signedArea } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import type { KeptOff, Solid } from "./kept-off.ts";

/** What is to be kept off, with the places at which it is rounded. */
export interface TurningGround extends KeptOff {
  readonly turns: readonly Turn[];
  /** Of each solid: its turns, as indices into `turns`. */
  readonly turnsOf: readonly (readonly number[])[];
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
export const TURNING = Math.PI / 8;
/** Below this two directions are the same, radians. */
const SAME_DIRECTION = 1e-9;

const turnsByRing = new WeakMap<Ring, Map<string, readonly Turn[]>>();

const WIDER = 1 / Math.cos(TURNING / 2);

/** Farther from the middle of a solid than this nobody turns about it: its turns are corners of a wider outline. */
export const outermost = ({ radius }: Solid, half: number): number => (radius + half) * WIDER + 1;

/** All turns round an outline, whatever else stands there. */
export function turnsAround(ring: Ring, half: number, isYard: boolean): readonly Turn[] {
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
  /** Indices of the corners it touches: one, or both ends of a side. */
  readonly first: number;
  readonly last: number;
}

function makeTurns(of: Ring, isYard: boolean, half: number): Turn[] {
  const ring = walkedRound(of, isYard);
  const tangents = ring.map((_, i) => tangentsAt(ring, i));
  // Outlines of many short sides are rounded in fewer, longer ones: tangents that hardly turn are left out.
  const turns: Turn[] = [];
  let pending: Tangent[] = [];
  const close = () => {
    turns.push(...turnsBetween(ring, thinned(merged(pending)), half, of));
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
  return Array.from({ length: parts + 1 }, (_, i) => ({
    along: spun(incoming, (turn * i) / parts),
    first: corner,
    last: corner,
  }));
}

/** The same line touches the corners at both ends of a side. */
function merged(tangents: readonly Tangent[]): Tangent[] {
  const lines: Tangent[] = [];
  for (const tangent of tangents) {
    const before = lines.at(-1);
    if (before && angle(before.along, tangent.along) < SAME_DIRECTION) {
      lines[lines.length - 1] = { ...before, last: tangent.last };
    } else lines.push(tangent);
  }
  return lines;
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
    const at = meeting(ring[before.last]!, before.along, ring[after.first]!, after.along, half);
    return [
      {
        at,
        before: before.along,
        after: after.along,
        corners: cornersFrom(ring, before.last, after.first),
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
