import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import { boxOf } from "../geometry/gap.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { add, scale, turned } from "../geometry/vector.ts";
import { obstaclesOf } from "./obstacles.ts";

/** A gate or door, and where somebody stands who has just come through it. */
export interface Entrance {
  readonly id: ItemId;
  readonly kind: "gate" | "door";
  readonly kitchen: boolean;
  readonly width: number;
  /** The middle of the opening. */
  readonly opening: Point;
  /**
   * Just inside: on free ground in the yard, clear of what the opening is let into. One place as a rule; two where the
   * yard goes on at both sides of a gate; none where something stands right against the opening, or it is nowhere
   * near the yard's ground.
   */
  readonly starts: readonly Start[];
}

export interface Start {
  readonly at: Point;
  /** Unit vector out of the opening, into the yard. */
  readonly into: Point;
  /** +1 where the leaf, if it swings "out", swings to this side. */
  readonly side: 1 | -1;
}

/** How deep a house wall, a fence or a misplaced opening may lie before the free ground begins, mm. */
const DEEPEST = 1000;
/** Half a pace off the wall, mm; less where something stands nearer. A way begins with whoever touches this point. */
const OFF_THE_WALL = 150;
/** Free ground thinner than this is a joint, mm. */
const A_JOINT = 2;

/** Gates and doors in the garden's order. */
export function entrancesOf(garden: Pick<Garden, "items" | "yard">): readonly Entrance[] {
  const openings = garden.items.filter((item) => item.kind === "gate" || item.kind === "door");
  if (openings.length === 0) return [];
  // As if gates were closed: a start point lies beyond the fence's thickness, so that the fence's own opening, which
  // the gate rules judge, narrows no way.
  const closed = obstaclesOf({ items: garden.items.filter((item) => item.kind !== "gate") });
  const solid = closed.map(({ ring }) => ring);
  return openings.map((item) => ({
    id: item.id,
    kind: item.kind,
    kitchen: item.kind === "door" && item.kitchen,
    width: item.width,
    opening: item.at,
    starts: startsRemembered(item, garden.yard, solid),
  }));
}

interface Known {
  readonly yard: Ring;
  readonly near: readonly Ring[];
  readonly starts: readonly Start[];
}

const known = new WeakMap<Gate | Door, Known>();

/** What moves elsewhere leaves the starts as they are, the very values. */
function startsRemembered(item: Gate | Door, yard: Ring, solid: readonly Ring[]): readonly Start[] {
  const near = solid.filter((ring) => touchesReach(ring, item.at));
  const before = known.get(item);
  const isSame =
    before?.yard === yard &&
    before.near.length === near.length &&
    before.near.every((ring, i) => ring === near[i]);
  if (isSame) return before.starts;
  const starts = startsOf(item, yard, near);
  known.set(item, { yard, near, starts });
  return starts;
}

/** @param near what stands within `DEEPEST` of the opening */
function startsOf(item: Gate | Door, yard: Ring, near: readonly Ring[]): readonly Start[] {
  const tried = ([1, -1] as const).map((side): Start | null => {
    const into = turned([0, side], item.turn);
    const at = firstFree(item.at, into, yard, near);
    return at && { at, into, side };
  });
  const [out, back] = tried;
  // A door leads out of its house; only one put in the wrong way round is taken to lead the other way.
  if (item.kind === "door" && out) return [out];
  if (item.kind === "door") return back ? [back] : [];
  return tried.filter((start) => start !== null);
}

/** The first free ground along a line from the opening, or null if there is none within `DEEPEST`. */
function firstFree(from: Point, into: Point, yard: Ring, near: readonly Ring[]): Point | null {
  const stops = [yard, ...near].flatMap((ring) => crossings(from, into, ring));
  const sorted = [0, ...stops.filter((t) => t > 0 && t < DEEPEST).sort((a, b) => a - b), DEEPEST];
  for (let i = 0; i + 1 < sorted.length; i++) {
    const [start, end] = [sorted[i]!, sorted[i + 1]!];
    if (end - start < A_JOINT) continue;
    const point = add(from, scale(into, start + Math.min(OFF_THE_WALL, (end - start) / 2)));
    if (contains(yard, point) && !near.some((ring) => contains(ring, point))) return point;
  }
  return null;
}

/** Whether any of a ring can lie within `DEEPEST` of a point. */
function touchesReach(ring: Ring, [x, y]: Point): boolean {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  return minX <= x + DEEPEST && maxX >= x - DEEPEST && minY <= y + DEEPEST && maxY >= y - DEEPEST;
}

/** How far along a line a ring's sides are met, mm, within `DEEPEST` either way. */
function crossings([x, y]: Point, [ux, uy]: Point, ring: Ring): number[] {
  const met: number[] = [];
  let [ax, ay] = ring.at(-1) ?? [0, 0];
  let a = ux * (ay - y) - uy * (ax - x);
  for (const [bx, by] of ring) {
    const b = ux * (by - y) - uy * (bx - x);
    if (a > 0 !== b > 0) {
      const t = a / (a - b);
      const along = ux * (ax + t * (bx - ax) - x) + uy * (ay + t * (by - ay) - y);
      if (Math.abs(along) < DEEPEST) met.push(along);
    }
    [ax, ay, a] = [bx, by, b];
  }
  return met;
}
