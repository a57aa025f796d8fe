import { isSimple } from "../geometry/simple.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** One side of a yard as it was measured, and the corner at its end. */
export interface Leg {
  /** mm */
  readonly length: number;
  /**
   * The turn at the end of the side, before the next is walked: degrees, to the right above 0, to the left below. 90 is a
   * square corner of an outline walked clockwise. At the last side: the turn that leads back into the first.
   */
  readonly turn: number;
}

/** What was walked, and by how much it fails to close. */
export interface Traverse {
  /** Corners as measured, from the start on the first; one more than there are sides, the last being where the walk ended. */
  readonly walked: readonly Point[];
  /** The end less the start, mm. */
  readonly misclosure: Point;
  /** Its length, mm. */
  readonly gap: number;
  readonly perimeter: number;
  /** How far all turns together are from one whole turn to the right or left, degrees. */
  readonly turnError: number;
  /** The outline with the error spread, from the start on; clockwise or not as it was walked. */
  readonly closed: Ring;
}

const FEWEST_SIDES = 3;

/**
 * An outline from its side lengths and the turns between them, with the error of measuring spread over it.
 *
 * Turns first: what they are off a whole turn is shared alike among all corners. Then the compass rule (Bowditch): what the
 * walk still misses its start by is taken back from each corner in proportion to the way walked up to it.
 *
 * @param legs at least three sides, in the order they were walked
 * @param start of the first side on the plan, mm
 * @param heading of the first side, degrees clockwise from up the plan
 * @throws RangeError for fewer than three sides, a length that is not above nothing, turns that make no outline, or an
 *   outline that crosses itself once it is closed
 * @source the compass rule, as in any surveying handbook (N. Bowditch, 1808)
 */
export function traverse(legs: readonly Leg[], start: Point, heading: number): Traverse {
  if (legs.length < FEWEST_SIDES) throw new RangeError("an outline has at least three sides");
  const nothing = legs.findIndex(({ length }) => !(length > 0 && Number.isFinite(length)));
  if (nothing >= 0) throw new RangeError(`side ${nothing + 1} must be longer than nothing`);

  const turned = legs.reduce((sum, { turn }) => sum + turn, 0);
  const whole = turned < 0 ? -360 : 360;
  const turnError = turned - whole;
  if (Math.abs(turnError) > MOST_TURN_ERROR) {
    throw new RangeError(
      `the turns add up to ${Math.round(Math.abs(turned))}°, where an outline turns 360° once round: one is misread or missing`,
    );
  }
  const walked = walk(legs, start, heading, 0);
  const even = walk(legs, start, heading, -turnError / legs.length);
  const closed = compassRule(even, legs);
  if (!isSimple(closed)) throw new RangeError("the outline crosses itself: a turn goes the wrong way");
  const end = walked[walked.length - 1]!;
  const misclosure: Point = [end[0] - start[0], end[1] - start[1]];
  return {
    walked,
    misclosure,
    gap: Math.hypot(...misclosure),
    perimeter: legs.reduce((sum, { length }) => sum + length, 0),
    turnError,
    closed,
  };
}

/** Beyond this a corner is missing or has the wrong sign: spreading it would only hide that. */
const MOST_TURN_ERROR = 45;

function walk(legs: readonly Leg[], start: Point, heading: number, correction: number): Point[] {
  const points: Point[] = [start];
  let [x, y] = start;
  let bearing = heading;
  for (const { length, turn } of legs) {
    const angle = (bearing * Math.PI) / 180;
    x += length * Math.sin(angle);
    y -= length * Math.cos(angle);
    points.push([x, y]);
    bearing += turn + correction;
  }
  return points;
}

/** Each corner moved back by its share of the error, as far as the walk had come; the end, which is the start, left out. */
function compassRule(points: readonly Point[], legs: readonly Leg[]): Ring {
  const end = points[points.length - 1]!;
  const start = points[0]!;
  const [ex, ey] = [end[0] - start[0], end[1] - start[1]];
  const perimeter = legs.reduce((sum, { length }) => sum + length, 0);
  let come = 0;
  return points.slice(0, -1).map(([x, y], i): Point => {
    if (i > 0) come += legs[i - 1]!.length;
    const share = come / perimeter;
    return [x - ex * share, y - ey * share];
  });
}

/**
 * An outline as sides and turns: what `traverse` takes, for a table that begins with the yard as it is drawn.
 * @returns the heading of the first side, degrees clockwise from up, and the legs
 */
export function legsOf(ring: Ring): { readonly heading: number; readonly legs: readonly Leg[] } {
  const bearings = ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    return (Math.atan2(to[0] - from[0], from[1] - to[1]) * 180) / Math.PI;
  });
  const legs = ring.map((from, i): Leg => {
    const to = ring[(i + 1) % ring.length]!;
    const next = bearings[(i + 1) % ring.length]!;
    return { length: Math.hypot(to[0] - from[0], to[1] - from[1]), turn: halfTurn(next - bearings[i]!) };
  });
  return { heading: bearings[0] ?? 0, legs };
}

const halfTurn = (degrees: number): number => degrees - 360 * Math.round(degrees / 360);
