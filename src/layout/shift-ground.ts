import Flatbush from "flatbush";
import { boxOf } from "../geometry/gap.ts";
import { contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import type { Curves, GapCurves } from "./shift-curves.ts";

/** Part of a side, as shares of its length. */
export type Part = readonly [from: number, to: number];

/**
 * Where in the plane of shifts things may come to stand, as far as one can tell from each shift by itself: over nothing
 * that is forbidden, and beside everything either a joint or a path. A shift that lays a thing against another is let
 * through though it leaves a narrow gap to a third of the same cluster: the one may fill the gap to the other.
 *
 * What may not stand here stands badly for certain; what may is to be looked at more closely.
 */
export interface ShiftGround {
  readonly mayStand: (by: Point) => boolean;
  /** What of a side may be stood on. */
  readonly freeParts: (from: Point, to: Point) => readonly Part[];
}

type Sort = "forbidden" | "path" | "joint";

interface Blocker {
  readonly ring: Ring;
  readonly sort: Sort;
  /** Null for what is forbidden. */
  readonly gap: GapCurves | null;
}

/** Chords stand off from the round by up to 1.2 mm at 36 in; rules allow half a millimetre. */
const SLACK = SAME_LENGTH + 1.5;
/** Forbidden ground is drawn in by the slack, and so are paths; joints are drawn out. */
const drawnIn = (sort: Sort): number => (sort === "joint" ? -SLACK : SLACK);

export function shiftGround(curves: Curves): ShiftGround {
  const blockers: readonly Blocker[] = [
    ...curves.forbidden.map(({ ring }): Blocker => ({ ring, sort: "forbidden", gap: null })),
    ...curves.gaps.flatMap((gap) => gap.path.map((ring): Blocker => ({ ring, sort: "path", gap }))),
    ...curves.gaps.flatMap((gap) => gap.joint.map((ring): Blocker => ({ ring, sort: "joint", gap }))),
  ];
  const isForbidden = ({ gap }: Blocker) => gap === null;
  // What is forbidden leaves little of most sides: it is looked at first.
  const nearForbidden = indexOf(blockers.filter(isForbidden));
  const near = indexOf(blockers.filter((blocker) => !isForbidden(blocker)));
  const isInYard = (by: Point) => {
    const { inYard } = curves;
    return inYard === null || inYard.middles.every(([x, y]) => contains(inYard.yard, [x + by[0], y + by[1]]));
  };
  return {
    mayStand: (by) => {
      let isOver = false;
      nearForbidden(by, by, ({ ring, sort }) => {
        isOver ||= isIn(ring, by, drawnIn(sort));
      });
      if (isOver || !isInYard(by)) return false;
      const narrow = new Set<GapCurves>();
      const joined = new Set<number>();
      near(by, by, ({ ring, sort, gap }) => {
        if (!gap || !isIn(ring, by, drawnIn(sort))) return;
        if (sort === "path") narrow.add(gap);
        else joined.add(gap.cluster);
      });
      return [...narrow].every(({ excusedBy }) => excusedBy.some((cluster) => joined.has(cluster)));
    },
    freeParts: (from, to) => {
      const forbidden: Part[] = [];
      let isAllTaken = false;
      nearForbidden(from, to, ({ ring, sort }) => {
        if (isAllTaken) return;
        const part = partWithin(ring, from, to, drawnIn(sort));
        if (!part) return;
        forbidden.push(part);
        isAllTaken = part[0] <= 0 && part[1] >= 1;
      });
      let left = isAllTaken ? [] : less(WHOLE, forbidden);
      if (left.length === 0) return left;
      const paths = new Map<GapCurves, Part[]>();
      const joints = new Map<number, Part[]>();
      near(from, to, ({ ring, sort, gap }) => {
        const part = gap && partWithin(ring, from, to, drawnIn(sort));
        if (!part) return;
        if (sort === "path") pushTo(paths, gap, part);
        else pushTo(joints, gap.cluster, part);
      });
      for (const [{ excusedBy }, narrow] of paths) {
        if (left.length === 0) break;
        const excused = excusedBy.flatMap((cluster) => joints.get(cluster) ?? []);
        left = less(left, less(narrow, excused));
      }
      return left;
    },
  };
}

function pushTo<K>(lists: Map<K, Part[]>, key: K, part: Part): void {
  const list = lists.get(key);
  if (list) list.push(part);
  else lists.set(key, [part]);
}

const WHOLE: readonly Part[] = [[0, 1]];

type Near = (a: Point, b: Point, meet: (blocker: Blocker) => void) => void;

/** Meets all whose bounds meet those of a line. */
function indexOf(blockers: readonly Blocker[]): Near {
  if (blockers.length === 0) return () => undefined;
  const index = new Flatbush(blockers.length);
  for (const { ring } of blockers) {
    const { minX, minY, maxX, maxY } = boxOf(ring);
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  return ([ax, ay], [bx, by], meet) => {
    index.search(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by), (i) => {
      meet(blockers[i]!);
      return false;
    });
  };
}

/** A convex ring as what its sides leave, and a circle in it: most of what is asked about lies deep inside, or far off. */
interface Convex {
  /** Three numbers a side: inside a x + b y >= c, all in mm. */
  readonly sides: Float64Array;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

const convexes = new WeakMap<Ring, Convex>();

function convexOf(ring: Ring): Convex {
  let known = convexes.get(ring);
  if (known) return known;
  const found: number[] = [];
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    if (length === 0) return;
    const [a, b] = [-(by - ay) / length, (bx - ax) / length];
    found.push(a, b, a * ax + b * ay);
  });
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const sides = Float64Array.from(found);
  known = { sides, x, y, radius: depthIn(sides, x, y) };
  convexes.set(ring, known);
  return known;
}

/** How deep within its sides a point lies, mm; below 0 outside. */
function depthIn(sides: Float64Array, x: number, y: number): number {
  let depth = Infinity;
  for (let i = 0; i < sides.length; i += 3)
    depth = Math.min(depth, sides[i]! * x + sides[i + 1]! * y - sides[i + 2]!);
  return depth;
}

/** Whether a point lies in a ring's circle by at least so many mm, and in the ring for certain. */
const isDeepIn = ({ x, y, radius }: Convex, [px, py]: Point, by: number): boolean =>
  radius > by && (px - x) ** 2 + (py - y) ** 2 <= (radius - by) ** 2;

/** Whether a point lies in a ring by at least so many mm. */
function isIn(ring: Ring, point: Point, by: number): boolean {
  const convex = convexOf(ring);
  if (isDeepIn(convex, point, by)) return true;
  const { sides } = convex;
  for (let i = 0; i < sides.length; i += 3)
    if (sides[i]! * point[0] + sides[i + 1]! * point[1] - sides[i + 2]! < by) return false;
  return true;
}

const ALL: Part = [0, 1];

/** The part of a line that lies in a ring by at least so many mm; null for none. */
function partWithin(ring: Ring, start: Point, end: Point, deep: number): Part | null {
  const convex = convexOf(ring);
  if (isDeepIn(convex, start, deep) && isDeepIn(convex, end, deep)) return ALL;
  const { sides } = convex;
  const [ax, ay] = start;
  const [bx, by] = end;
  let [from, to] = [0, 1];
  for (let i = 0; i < sides.length; i += 3) {
    const a = sides[i]! * ax + sides[i + 1]! * ay - sides[i + 2]! - deep;
    const b = sides[i]! * bx + sides[i + 1]! * by - sides[i + 2]! - deep;
    if (a < 0 && b < 0) return null;
    if (a < 0) from = Math.max(from, a / (a - b));
    else if (b < 0) to = Math.min(to, a / (a - b));
    if (from >= to) return null;
  }
  return [from, to];
}

/** Parts less other parts. */
function less(parts: readonly Part[], taken: readonly Part[]): readonly Part[] {
  let left = parts;
  for (const [from, to] of taken) {
    left = left.flatMap((part): readonly Part[] => {
      if (to <= part[0] || from >= part[1]) return [part];
      const before: readonly Part[] = from > part[0] ? [[part[0], from]] : [];
      return to < part[1] ? [...before, [to, part[1]]] : before;
    });
    if (left.length === 0) break;
  }
  return left;
}
