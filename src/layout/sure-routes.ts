import { gapsFrom } from "../access/gaps.ts";
import { isClear, isFree, type KeptOff, keptOff } from "../access/kept-off.ts";
import { TURNING } from "../access/route-turns.ts";
import { surroundingsOf } from "../access/surroundings.ts";
import type { Access, Route } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { perimeter } from "../geometry/ring.ts";
import { nearestOnSegment } from "../geometry/segment.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { SAME_LENGTH } from "../units/length.ts";

/** Routes that are walkable and short enough, though there may be shorter ones; null where none is found at once. */
export interface SureRoutes {
  readonly kitchen: (bed: Bed) => Route | null;
  readonly hose: (bed: Bed) => Route | null;
}

/** Half the thickness of a hose, mm. */
const HOSE = 6;
/** So many turns of known routes are tried, those nearest to the bed first: they are the likeliest to see it. */
const MOST_TURNS = 24;
/** A route keeps off an outline by this much more than it must, mm, so as not to be told to touch it. */
const A_HAIR = 0.02;

/**
 * Looks for a way to a bed that leaves a route known from before at one of its turns and goes straight on to the bed. If
 * that is within what is allowed, so is the shortest, which takes far longer to find.
 *
 * @param isKept whether a route of before stands after the shift too, for somebody so wide at either side
 */
export function sureRoutes(
  after: Garden,
  before: Access,
  isKept: (route: Route, half: number) => boolean,
): SureRoutes {
  const limits = limitsOf(after);
  const rings = surroundingsOf(after).obstacles.map(({ ring }) => ring);
  const onFoot = (limits.standingRoom - SAME_LENGTH) / 2;
  // Known routes keep off by no more: the sides between their turns cut in a little.
  const groundFor = (half: number) => ({
    half,
    off: keptOff(after.yard, rings, half * Math.cos(TURNING / 2)),
  });
  const [walked, led] = [groundFor(onFoot), groundFor(HOSE)];
  return {
    kitchen: (bed) => {
      const { kitchen } = turnsOf(before);
      return fromKnown(bed, { ...walked, turns: kitchen, most: limits.kitchenWalk, isKept });
    },
    hose: (bed) => {
      // Round a bed that lies against nothing the hose is led along its edge, half round it at the most.
      if (gapsFrom(bed.id, after).some(({ width }) => width < limits.together)) return null;
      const round = perimeter(outlineOf(bed)) / 2 + HOSE_CORNERS;
      const { hose } = turnsOf(before);
      const found = fromKnown(bed, { ...led, turns: hose, most: limits.hose - round, isKept });
      return found && { ...found, length: found.length + round };
    },
  };
}

/** What going round corners at its own thickness adds to a hose, mm: never more than a turn round it. */
const HOSE_CORNERS = 2 * Math.PI * HOSE;

interface Known {
  readonly turns: readonly Turn[];
  /** Half of what is led along, mm. */
  readonly half: number;
  readonly off: KeptOff;
  readonly most: number;
  readonly isKept: (route: Route, half: number) => boolean;
}

function fromKnown(bed: Bed, { turns, half, off, most, isKept }: Known): Route | null {
  const outline = outlineOf(bed);
  for (const { route, upTo, length } of nearestTo(bed, turns)) {
    const from = route.points[upTo]!;
    const end = besideOutline(from, outline, half + A_HAIR);
    if (!end || length + distance(from, end) > most) continue;
    if (!isKept(route, half) || !isFree(off, end) || !isClear(off, from, end)) continue;
    const points = [...route.points.slice(0, upTo + 1), end];
    return { from: route.from, to: bed.id, length: length + distance(from, end), points };
  }
  return null;
}

const nearestTo = ({ at }: Bed, turns: readonly Turn[]): Turn[] =>
  turns
    .map((turn) => ({ turn, away: distance(turn.route.points[turn.upTo]!, at) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, MOST_TURNS)
    .map(({ turn }) => turn);

interface Turn {
  readonly route: Route;
  readonly upTo: number;
  /** Length of the route up to there, mm. */
  readonly length: number;
}

interface AllTurns {
  readonly kitchen: readonly Turn[];
  readonly hose: readonly Turn[];
}
const turnsKnown = new WeakMap<Access, AllTurns>();

function turnsOf(before: Access): AllTurns {
  let known = turnsKnown.get(before);
  if (!known) {
    const turnsOn = (routes: readonly (Route | null)[]) =>
      withoutTwins(routes.flatMap((route) => (route ? turnsAlong(route) : [])));
    known = {
      kitchen: turnsOn(before.beds.map(({ kitchen }) => kitchen)),
      hose: turnsOn(before.beds.map(({ hose }) => hose)),
    };
    turnsKnown.set(before, known);
  }
  return known;
}

/** Routes to many beds begin alike. */
const withoutTwins = (turns: readonly Turn[]): Turn[] => [
  ...new Map(turns.map((turn) => [turn.route.points[turn.upTo]!.join(), turn])).values(),
];

/** The first point of a route is the opening itself, which stands in a wall. */
function turnsAlong(route: Route): Turn[] {
  let length = 0;
  return route.points.slice(1).map((point, i) => {
    length += distance(route.points[i]!, point);
    return { route, upTo: i + 1, length };
  });
}

/** The point so far off an outline that is nearest to another; null from within that. */
function besideOutline(from: Point, outline: Ring, off: number): Point | null {
  const foot = nearestOn(outline, from);
  const far = distance(from, foot);
  if (far <= off) return null;
  const share = off / far;
  return [foot[0] + share * (from[0] - foot[0]), foot[1] + share * (from[1] - foot[1])];
}

function nearestOn(outline: Ring, point: Point): Point {
  const feet = outline.map((corner, i) =>
    nearestOnSegment(point, corner, outline[(i + 1) % outline.length]!),
  );
  return feet.reduce((best, foot) => (distance(foot, point) < distance(best, point) ? foot : best));
}
