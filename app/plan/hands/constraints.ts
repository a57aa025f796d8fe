import { add, cross, distance, dot, type Point, scale, subtract } from "../../../src/index.ts";
import type { Body, Face } from "./bodies.ts";

/** A line drawn while something is held in place, and the words beside it. */
export interface Guide {
  readonly kind: "line" | "gap";
  readonly from: Point;
  readonly to: Point;
  readonly label: string | null;
}

/** One thing a displacement may meet: it has to carry the moving thing this far along the normal. */
export interface Constraint {
  readonly normal: Point;
  readonly along: number;
  /** What is preferred where several lie near: a smaller number wins over a larger distance. */
  readonly weight: number;
  /** The line to draw where it is met, once the thing has been displaced. */
  guide(by: Point): Guide;
}

/** A gap worth leaving: its width, and why. */
export interface WantedGap {
  readonly width: number;
  readonly label: string;
}

/** Directions nearer than this count as one: the sine of a third of a degree. */
const PARALLEL = 0.006;
/** How far apart things may be and still be lined up, mm. */
const ALIGN_SIGHT = 12_000;
const GAP_WEIGHT = 0.7;
const MIDDLE_WEIGHT = 1.2;

/**
 * Everything within the tolerance that a body carried by about `by` could be lined up with or kept away from.
 * What lies farther off is left out at once: a large garden has thousands of pairs of edges.
 */
export function constraintsOn(
  moving: Pick<Body, "faces" | "solid"> & { readonly middle: Point | null },
  others: readonly Body[],
  gaps: readonly WantedGap[],
  by: Point,
  tolerance: number,
): Constraint[] {
  const found: Constraint[] = [];
  const axes = ownAxes(moving.faces);
  const isNear = (normal: Point, along: number) => Math.abs(dot(normal, by) - along) <= tolerance;
  for (const other of others) {
    const wanted = moving.solid && other.solid ? gaps : TOUCHING;
    for (const face of moving.faces) {
      for (const still of other.faces) {
        if (Math.abs(cross(face.normal, still.normal)) > PARALLEL) continue;
        const { normal } = still;
        const apart = dot(normal, subtract(face.from, still.from));
        if (dot(face.normal, normal) > 0) {
          if (isNear(normal, -apart) && areInSight(carry(face, by), still)) found.push(inLine(face, still));
          continue;
        }
        for (const gap of wanted) {
          const along = gap.width - apart;
          if (isNear(normal, along) && spansMeet(carry(face, by), still)) {
            found.push(gapBetween(face, still, gap, along));
          }
        }
      }
    }
    if (moving.middle && other.of !== "yard") found.push(...middles(axes, moving.middle, other, by, isNear));
  }
  return found;
}

/** What cannot be walked between can still be joined edge to edge. */
const TOUCHING: readonly WantedGap[] = [{ width: 0, label: "" }];

/** A point that is held on the line of a face. */
export const pointOnLine = (point: Point, { normal, from, to }: Face): Constraint => ({
  normal,
  along: dot(normal, subtract(from, point)),
  weight: 1,
  guide: (by) => ({ kind: "line", ...spanOf([from, to, add(point, by)], tangent(normal)), label: null }),
});

/** A point held level with another along an axis. */
export const levelWith = (point: Point, other: Point, normal: Point): Constraint => ({
  normal,
  along: dot(normal, subtract(other, point)),
  weight: 1,
  guide: (by) => ({ kind: "line", from: other, to: add(point, by), label: null }),
});

function gapBetween(face: Face, still: Face, { width, label }: WantedGap, along: number): Constraint {
  const { normal } = still;
  return {
    normal,
    along,
    weight: GAP_WEIGHT,
    guide(by) {
      const { low, high } = sharedSpan(carry(face, by), still);
      const onStill = (at: number) => add(still.from, scale(tangent(normal), at));
      if (width === 0) return { kind: "line", from: onStill(low), to: onStill(high), label: null };
      const foot = onStill((low + high) / 2);
      return { kind: "gap", from: foot, to: add(foot, scale(normal, width)), label };
    },
  };
}

function inLine(face: Face, still: Face): Constraint {
  const { normal } = still;
  return {
    normal,
    along: dot(normal, subtract(still.from, face.from)),
    weight: 1,
    guide(by) {
      const { from, to } = carry(face, by);
      return { kind: "line", ...spanOf([from, to, still.from, still.to], tangent(normal)), label: null };
    },
  };
}

function middles(
  axes: readonly Point[],
  middle: Point,
  other: Body,
  by: Point,
  isNear: (normal: Point, along: number) => boolean,
): Constraint[] {
  if (distance(add(middle, by), other.middle) > ALIGN_SIGHT) return [];
  const apart = subtract(other.middle, middle);
  return axes
    .filter((normal) => isNear(normal, dot(normal, apart)))
    .map((normal) => ({
      normal,
      along: dot(normal, apart),
      weight: MIDDLE_WEIGHT,
      guide: (carriedBy) => ({ kind: "line", from: other.middle, to: add(middle, carriedBy), label: null }),
    }));
}

/** The two directions a thing is lined up along: those of its first edge, or of the plan. */
function ownAxes(faces: readonly Face[]): readonly Point[] {
  const first = faces[0]?.normal ?? [0, -1];
  return [first, tangent(first)];
}

const carry = ({ normal, from, to }: Face, by: Point): Face => ({
  normal,
  from: add(from, by),
  to: add(to, by),
});
/** A quarter turn clockwise. */
const tangent = ([x, y]: Point): Point => [-y, x];
const areInSight = (a: Face, b: Face) =>
  Math.min(distance(a.from, b.from), distance(a.from, b.to), distance(a.to, b.from)) < ALIGN_SIGHT;

function spansMeet(carried: Face, still: Face): boolean {
  const { low, high } = sharedSpan(carried, still);
  return high > low;
}

/** Where two parallel faces stand opposite each other, as distances along the still one. */
function sharedSpan(carried: Face, still: Face): { readonly low: number; readonly high: number } {
  const t = tangent(still.normal);
  const on = (p: Point) => dot(t, subtract(p, still.from));
  const a = [on(carried.from), on(carried.to)] as const;
  const b = [0, on(still.to)] as const;
  return {
    low: Math.max(Math.min(...a), Math.min(...b)),
    high: Math.min(Math.max(...a), Math.max(...b)),
  };
}

/** The two points of a list that lie farthest apart along a direction. */
function spanOf(points: readonly Point[], direction: Point): { from: Point; to: Point } {
  const sorted = [...points].sort((a, b) => dot(a, direction) - dot(b, direction));
  return { from: sorted[0]!, to: sorted.at(-1)! };
}
