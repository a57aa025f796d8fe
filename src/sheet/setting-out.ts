import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { say } from "../words/say.ts";

/** Two fixed points on the ground that everything is taped from. */
export interface Pegs {
  readonly p1: Point;
  readonly p2: Point;
}

/** A point of a bed by its distances from both pegs, mm. */
export interface TapedPoint {
  readonly what: string;
  readonly at: Point;
  readonly fromP1: number;
  readonly fromP2: number;
}

/**
 * The pegs stand at the ends of the yard's longest side (the upper one of two alike): every bed then lies on one
 * side of their line, so two tape lengths meet in one place only.
 */
export function pegsOf({ yard }: Pick<Garden, "yard">): Pegs {
  const sides = yard.map((start, i): readonly [Point, Point] => [start, yard[(i + 1) % yard.length]!]);
  const [first, ...others] = sides;
  if (!first) throw new RangeError("a yard has sides");
  const length = ([a, b]: readonly [Point, Point]) => distance(a, b);
  const height = ([a, b]: readonly [Point, Point]) => a[1] + b[1];
  const longest = others.reduce(
    (best, side) =>
      length(side) > length(best) + 1 ||
      (Math.abs(length(side) - length(best)) <= 1 && height(side) < height(best))
        ? side
        : best,
    first,
  );
  const [a, b] = longest;
  return a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]) ? { p1: a, p2: b } : { p1: b, p2: a };
}

/**
 * What is taped for a bed. A bed with straight sides: corner a, the one nearest P1, and corner b, of a's two
 * neighbours the one nearest P2; a free outline: all its corners in turn from a. A round bed: its middle.
 */
export function tapedPoints(bed: Bed, pegs: Pegs): readonly TapedPoint[] {
  const taped = (what: string, at: Point): TapedPoint => ({
    what,
    at,
    fromP1: distance(pegs.p1, at),
    fromP2: distance(pegs.p2, at),
  });
  switch (bed.shape.type) {
    case "oval":
    case "keyhole":
      return [taped(say`middle`, bed.at)];
    case "rectangle":
    case "l":
    case "u":
      return cornersFromA(outlineOf(bed), pegs)
        .slice(0, 2)
        .map((at, i) => taped("ab"[i]!, at));
    case "polygon":
      return cornersFromA(outlineOf(bed), pegs).map((at, i) => taped(cornerLetter(i), at));
    default: {
      const never: never = bed.shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

/** The corners in turn from the one nearest P1, first towards that neighbour which is nearer P2. */
function cornersFromA(outline: Ring, { p1, p2 }: Pegs): Ring {
  const nearest = outline.reduce(
    (best, corner, i) => (distance(corner, p1) < distance(outline[best]!, p1) ? i : best),
    0,
  );
  const fromA = [...outline.slice(nearest), ...outline.slice(0, nearest)];
  const [a, next] = fromA;
  const previous = fromA.at(-1);
  if (!a || !next || !previous || distance(next, p2) <= distance(previous, p2)) return fromA;
  return [a, ...fromA.slice(1).reverse()];
}

const LETTERS = "abcdefghjkmnpqrstuvwxyz"; // without i, l and o, which read as figures
const cornerLetter = (index: number): string =>
  index < LETTERS.length
    ? LETTERS[index]!
    : `${LETTERS[index % LETTERS.length]}${Math.floor(index / LETTERS.length) + 1}`;

/** What proves a frame true: its outer diagonals, both alike; a round one's radius. Null for a free outline. */
export function proofOf({ shape }: Bed): { readonly diagonal: number } | { readonly radius: number } | null {
  switch (shape.type) {
    case "rectangle":
    case "l":
    case "u":
      return { diagonal: Math.hypot(shape.width, shape.length) };
    case "oval":
      return Math.abs(shape.width - shape.length) < 1 ? { radius: shape.width / 2 } : null;
    case "keyhole":
      return { radius: shape.diameter / 2 };
    case "polygon":
      return null;
    default: {
      const never: never = shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}
