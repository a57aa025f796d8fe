import { shiftIntoPlace } from "../access/shift-into-place.ts";
import type { Route } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { limitsOf } from "../garden/limits.ts";
import { applyOps } from "../garden/operations.ts";
import type { Point } from "../geometry/types.ts";
import { add, distance, subtract } from "../geometry/vector.ts";
import { FOOT, SAME_LENGTH } from "../units/length.ts";
import type { Facts } from "./facts.ts";
import type { WayOut } from "./rule.ts";
import { soundlyChanged, wishesOf } from "./sound-change.ts";

/** Where along the route the bed is put to the trial, as shares of the length that is allowed, the farthest first. */
const TRIALS = [0.95, 0.8, 0.6, 0.4];
/** How far round each of these places free ground is looked for, mm. */
const ROUND_ABOUT = 12 * FOOT;

/**
 * Moves a bed along its own route to free ground that is near enough, as a way out. Each place is tried before it is
 * offered: the route is measured anew, and the bed stands in order there.
 * @param lengthOf route to the bed in another garden, mm; Infinity where there is none
 */
export function moveNearer(
  facts: Pick<Facts, "garden" | "access">,
  bed: Bed,
  route: Route,
  {
    limit,
    label,
    lengthOf,
  }: { limit: number; label: string; lengthOf: (garden: Garden, bed: Bed) => number },
): WayOut[] {
  for (const share of TRIALS) {
    const by = shiftNear(facts.garden, bed, pointAlong(route.points, share * limit));
    if (!by) continue;
    const ops = [{ op: "move" as const, id: bed.id, by }];
    const after = soundlyChanged(facts, ops, [bed.id]);
    const moved = after?.items.find(({ id }) => id === bed.id);
    if (after && moved?.kind === "bed" && lengthOf(after, moved) <= limit + SAME_LENGTH)
      return [{ label, ops }];
  }
  return [];
}

/** The shift that puts a bed on the free ground nearest to a point, with room to be beside it. */
function shiftNear(garden: Garden, bed: Bed, to: Point): Point | null {
  const there = subtract(to, bed.at);
  const moved = applyOps(garden, [{ op: "move", id: bed.id, by: there }]);
  const room = Math.max(wishesOf(garden).room, limitsOf(garden).standingRoom);
  const on = shiftIntoPlace(moved, bed.id, { most: ROUND_ABOUT, room });
  return on && add(there, on);
}

/** The point so far along a line of points; its last where the line is shorter. */
function pointAlong(points: readonly Point[], far: number): Point {
  let left = far;
  for (let i = 0; i + 1 < points.length; i++) {
    const [from, to] = [points[i]!, points[i + 1]!];
    const length = distance(from, to);
    if (length >= left && length > 0) {
      const share = left / length;
      return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    }
    left -= length;
  }
  return points.at(-1)!;
}
