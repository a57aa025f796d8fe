import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
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
 * other. Widths are clear distances straight out from the bed, the least along the last 4 ft of each side.
 *
 * An L, a U and a free shape are taken by their bounds in their own frame; so is a round bed.
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
  const frame = ownFrame(bed);
  const { obstacles, yard, near } = surroundingsOf(garden);
  const outline = outlineOf(bed);
  const rings = [
    yard,
    ...near(boxOf(outline), SIGHT)
      .map((i) => obstacles[i]!)
      .filter(({ id }) => id !== bed.id)
      .map(({ ring }) => ring),
  ];
  return endsOf(frame, element).flatMap((end) => {
    const [approach, turn, leave] = [end.before, end.across, end.after].map((strip) =>
      clearOut(strip, rings),
    );
    if (approach === undefined || turn === undefined || leave === undefined) return [];
    if (Math.min(approach, turn, leave) < narrowest - SAME_LENGTH) return [];
    return [{ around: bed.id, at: end.at, element: end.width, approach, turn, leave }];
  });
}

/** A rectangle on the plan: a middle, half sizes along its own axes, and how it is turned. */
interface Frame {
  readonly bed: Bed;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

function ownFrame(bed: Bed): Frame {
  const local = outlineOf(bed).map(([x, y]) => {
    const [dx, dy] = [x - bed.at[0], y - bed.at[1]];
    const rad = (-bed.turn * Math.PI) / 180;
    return [dx * Math.cos(rad) - dy * Math.sin(rad), dx * Math.sin(rad) + dy * Math.cos(rad)] as const;
  });
  return { bed, ...boxOf(local) };
}

/** A stretch of side, from one point to another, with the ground to be measured at its left as seen. */
interface Strip {
  readonly from: Point;
  readonly to: Point;
}

interface End {
  readonly at: Point;
  readonly width: number;
  readonly before: Strip;
  readonly across: Strip;
  readonly after: Strip;
}

function endsOf({ bed, minX, minY, maxX, maxY }: Frame, element: number): End[] {
  // Clockwise as seen, so that the outside lies at the left of each side.
  const corners = (
    [
      [minX, minY],
      [maxX, minY],
      [maxX, maxY],
      [minX, maxY],
    ] as const
  ).map((corner) => placed(corner, bed.at, bed.turn));
  return corners.flatMap((from, i): End[] => {
    const to = corners[(i + 1) % 4]!;
    const width = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (width >= element - SAME_LENGTH) return [];
    const beyond = corners[(i + 2) % 4]!;
    const before = corners[(i + 3) % 4]!;
    return [
      {
        at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
        width,
        before: { from: towards(from, before), to: from },
        across: { from, to },
        after: { from: to, to: towards(to, beyond) },
      },
    ];
  });
}

function towards(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = Math.min(1, APPROACH / length);
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

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
