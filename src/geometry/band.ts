import { within } from "./clip.ts";
import { clockwise } from "./ring.ts";
import type { Point, Ring } from "./types.ts";
import { add, cross, dot, scale, subtract } from "./vector.ts";

/** How far the chords of a drawn arc may lie inside it, mm. */
const ARC_TOLERANCE = 0.05;

/** Above this many sides a line is made thick as a whole: so many strips would cross each other over and over. */
const FEW = 10;

/**
 * Rings that together cover all of some ground that lies within a distance of a line, and nothing farther off.
 *
 * A strip for each side of the line, and a sector of a circle where they leave ground between them: at the line's ends
 * and outside its bends. Sectors that lie off the ground are left out, which for most beds is nearly all of them.
 *
 * @param line two points or more; closed where it ends at its first point
 * @param distance mm
 * @param ground corners of the ground; what lies outside their hull need not be covered
 */
export function bandsAbout(line: readonly Point[], distance: number, ground: Ring): Ring[] {
  const sides = line.slice(1).flatMap((to, i) => sideFrom(line[i]!, to));
  if (sides.length > FEW) return within([line], distance);
  const strips = sides.map((side) => stripAbout(side, distance));
  const sectors = gapsBetween(sides).filter(({ at, towards }) =>
    ground.some((corner) => dot(subtract(corner, at), towards) > 0),
  );
  return [...strips, ...sectors.map((sector) => arcOf(sector, distance))];
}

interface Side {
  readonly from: Point;
  readonly to: Point;
  /** Its direction, of length 1. */
  readonly along: Point;
}

function sideFrom(from: Point, to: Point): Side[] {
  const way = subtract(to, from);
  const length = Math.hypot(...way);
  return length === 0 ? [] : [{ from, to, along: scale(way, 1 / length) }];
}

/** A quarter turn anticlockwise as seen. */
const leftOf = ([x, y]: Point): Point => [y, -x];

function stripAbout({ from, to, along }: Side, distance: number): Ring {
  const out = scale(leftOf(along), distance);
  return clockwise([add(from, out), add(to, out), subtract(to, out), subtract(from, out)]);
}

interface Sector {
  readonly at: Point;
  /** Its middle. All of it lies within a right angle of this. */
  readonly towards: Point;
  /** Its two straight edges, of length 1, clockwise from the first to the second. */
  readonly from: Point;
  readonly to: Point;
}

function gapsBetween(sides: readonly Side[]): Sector[] {
  const [first, last] = [sides[0], sides.at(-1)];
  if (!first || !last) return [];
  const bends = sides.slice(1).flatMap((side, i) => bend(sides[i]!, side));
  const isClosed = last.to[0] === first.from[0] && last.to[1] === first.from[1];
  const ends = isClosed
    ? bend(last, first)
    : [halfDisc(last.to, last.along), halfDisc(first.from, scale(first.along, -1))];
  return [...bends, ...ends];
}

const halfDisc = (at: Point, towards: Point): Sector => ({
  at,
  towards,
  from: leftOf(towards),
  to: scale(leftOf(towards), -1),
});

/** Outside a bend: to the left of one that turns right, and the other way about. */
function bend(before: Side, after: Side): Sector[] {
  const turn = cross(before.along, after.along);
  if (turn === 0) return [];
  const [a, b] = [leftOf(before.along), leftOf(after.along)];
  const [from, to] = turn > 0 ? [a, b] : [scale(b, -1), scale(a, -1)];
  return [{ at: after.from, towards: add(from, to), from, to }];
}

function arcOf({ at, from, to, towards }: Sector, distance: number): Ring {
  const half = Math.acos(Math.min(1, dot(from, towards) / Math.hypot(...towards)));
  const chords = Math.max(1, Math.ceil(half / Math.acos(1 - ARC_TOLERANCE / distance)));
  const arc = Array.from({ length: chords + 1 }, (_, i): Point => {
    if (i === 0) return add(at, scale(from, distance));
    if (i === chords) return add(at, scale(to, distance));
    const angle = (2 * half * i) / chords;
    const [c, s] = [Math.cos(angle) * distance, Math.sin(angle) * distance];
    return [at[0] + from[0] * c - from[1] * s, at[1] + from[0] * s + from[1] * c];
  });
  return [at, ...arc];
}
