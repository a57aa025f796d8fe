import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf, gapOfOutlines } from "../geometry/gap.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance, midpoint } from "../geometry/vector.ts";
import { FOOT, SAME_LENGTH } from "../units/length.ts";
import { surroundingsOf } from "./surroundings.ts";
import type { WheelchairAccess } from "./types.ts";

type HalfTurnAt = WheelchairAccess["halfTurns"][number];

/** Ways wider than this need no turn rule; what lies farther off is not looked at, mm. */
const SIGHT = 6 * FOOT;
/** How much of a side before and after the end counts as the way into and out of the turn, mm. */
const APPROACH = 4 * FOOT;

/**
 * The half turns round the ends of a bed narrower than the limit: up along one side, round the end and back along the
 * other. An end is a run of its real outline that turns about by half a turn without a bay in it: the short side of a
 * rectangle, the end of each arm of an L or a U, any half of a round. What is turned around is as wide there as the run.
 *
 * Widths are clear distances straight out from each side of the run (from a round, whichever way): the least from those
 * that face as the first side does, along its last 4 ft, from those at the end, and from those that face as the last.
 *
 * @param narrowest width below which a side is no way, and there is no turn to be made
 * @returns one for each end that can be turned around, with widths capped at 6 ft
 */
export function halfTurnsRound(
  bed: Bed,
  garden: Pick<Garden, "items" | "yard">,
  element: number,
  narrowest: number,
): HalfTurnAt[] {
  const { obstacles, yard, near } = surroundingsOf(garden);
  const outline = outlineOf(bed);
  const ends = endsOf(sidesOf(outline)).filter(({ width }) => width < element - SAME_LENGTH);
  if (ends.length === 0) return [];
  const rings = [
    yard,
    ...near(boxOf(outline), SIGHT)
      .map((i) => obstacles[i]!)
      .filter(({ id }) => id !== bed.id)
      .map(({ ring }) => ring),
  ];
  const isRound = bed.shape.type === "oval";
  const whole = new Map<Strip, number>();
  const clear = (strip: Strip): number => {
    const known = whole.get(strip) ?? (isRound ? clearAbout(strip, rings) : clearOut(strip, rings));
    whole.set(strip, known);
    return known;
  };
  return ends.flatMap((end) => {
    const [approach, turn, leave] = [end.before, end.across, end.after].map((strips) =>
      Math.min(SIGHT, ...strips.map(clear)),
    ) as [number, number, number];
    if (Math.min(approach, turn, leave) < narrowest - SAME_LENGTH) return [];
    return [{ around: bed.id, at: end.at, element: end.width, approach, turn, leave }];
  });
}

/** A stretch of side, from one point to another, with the ground to be measured at its left as seen. */
interface Strip {
  readonly from: Point;
  readonly to: Point;
}

interface OutlineSide extends Strip {
  /** By how much the next side turns off from this one, degrees: over 0 at an outer corner, under 0 into a bay. */
  readonly turns: number;
}

function sidesOf(outline: Ring): OutlineSide[] {
  const strips = outline
    .map((from, i): Strip => ({ from, to: outline[(i + 1) % outline.length]! }))
    .filter(({ from, to }) => distance(from, to) > SAME_LENGTH);
  const heading = ({ from, to }: Strip) => (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  return strips.map((strip, i) => {
    const turns = heading(strips[(i + 1) % strips.length]!) - heading(strip);
    return { ...strip, turns: ((((turns + 180) % 360) + 360) % 360) - 180 };
  });
}

interface End {
  readonly at: Point;
  readonly width: number;
  readonly before: readonly Strip[];
  readonly across: readonly Strip[];
  readonly after: readonly Strip[];
}

const HALF_TURN = 180;
/** A run that turns by so many degrees less or more than half a turn is an end too: a bed may taper. */
const TAPER = 45;
/**
 * Sides of a run that are turned off by less than this from its first count to the way before the turn, degrees, and so
 * at its other end: a quarter of the half turn is left for the turn itself.
 */
const SAME_WAY = 67.5;

/** One for each side at which a run begins that turns by half a turn, as nearly as any run from there does. */
function endsOf(sides: readonly OutlineSide[]): End[] {
  return sides.flatMap((_, first) => {
    const run = [{ side: sides[first]!, turned: 0 }];
    for (let k = 1; k < sides.length; k++) {
      const { side, turned } = run.at(-1)!;
      const on = turned + side.turns;
      if (side.turns < 0 || on > HALF_TURN + TAPER) break;
      if (turned >= HALF_TURN - TAPER && Math.abs(on - HALF_TURN) > Math.abs(turned - HALF_TURN)) break;
      run.push({ side: sides[(first + k) % sides.length]!, turned: on });
    }
    const whole = run.at(-1)!.turned;
    return whole < HALF_TURN - TAPER ? [] : [endFrom(run, whole)];
  });
}

function endFrom(
  run: readonly { readonly side: OutlineSide; readonly turned: number }[],
  whole: number,
): End {
  const [opening, closing] = [run[0]!.side, run.at(-1)!.side];
  const before = { from: towards(opening.to, opening.from), to: opening.to };
  const after = { from: closing.from, to: towards(closing.from, closing.to) };
  const inner = run.slice(1, -1);
  const across = inner.filter(({ turned }) => turned >= SAME_WAY && turned <= whole - SAME_WAY);
  // Across the way one goes at the end: halfway between the first side's heading and the last's.
  const heading = Math.atan2(opening.to[1] - opening.from[1], opening.to[0] - opening.from[0]);
  const over = heading + (whole / 2) * (Math.PI / 180);
  const places = [before.from, opening.to, ...inner.map(({ side }) => side.to), after.to];
  const along = places.map(([x, y]) => x * Math.cos(over) + y * Math.sin(over));
  const middle = across.length > 0 ? across.map(({ side }) => midpoint(side.from, side.to)) : [opening.to];
  return {
    at: middle[Math.floor(middle.length / 2)]!,
    width: Math.max(...along) - Math.min(...along),
    before: [before, ...inner.filter(({ turned }) => turned < SAME_WAY).map(({ side }) => side)],
    across: across.map(({ side }) => side),
    after: [...inner.filter(({ turned }) => turned > whole - SAME_WAY).map(({ side }) => side), after],
  };
}

function towards(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = Math.min(1, APPROACH / length);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

/** Clear distance from a stretch of side whichever way, mm: a chord of a round faces nothing quite squarely. */
const clearAbout = ({ from, to }: Strip, rings: readonly Ring[]): number =>
  Math.min(SIGHT, ...rings.map((ring) => gapOfOutlines([from, to], ring).width));

/** Clear distance straight out from a stretch of side, mm; `SIGHT` where nothing is nearer. */
function clearOut({ from, to }: Strip, rings: readonly Ring[]): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const local = ([x, y]: Point): Point => [
    ux * (x - from[0]) + uy * (y - from[1]),
    uy * (x - from[0]) - ux * (y - from[1]),
  ];
  let least = SIGHT;
  for (const ring of rings) {
    let previous = local(ring.at(-1)!);
    for (const corner of ring) {
      const point = local(corner);
      least = Math.min(least, nearestOut(previous, point, length));
      previous = point;
    }
  }
  return least;
}

/** How far out the part of a line lies that is over 0 to `length` along; Infinity where it is not, or lies behind. */
function nearestOut(a: Point, b: Point, length: number): number {
  const [low, high] = a[0] <= b[0] ? [a, b] : [b, a];
  // Touching at an end of the stretch only is beside it, not before it.
  if (high[0] <= SAME_LENGTH || low[0] >= length - SAME_LENGTH) return Infinity;
  const outAt = (along: number) =>
    high[0] === low[0]
      ? Math.min(low[1], high[1])
      : low[1] + ((along - low[0]) / (high[0] - low[0])) * (high[1] - low[1]);
  const outs = [outAt(Math.max(0, low[0])), outAt(Math.min(length, high[0]))];
  const out = Math.min(...outs);
  return out > -SAME_LENGTH ? Math.max(0, out) : Infinity;
}
