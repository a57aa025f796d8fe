import { access } from "../access/access.ts";
import { once } from "../access/once.ts";
import type { Access, BedAccess, Route } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxDistance, boxOf, gapBetween } from "../geometry/gap.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Box, Ring } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { sureRoutes } from "./sure-routes.ts";

/**
 * The ways of a garden in which some beds have been shifted. Routes take longest: those to beds that stay are taken
 * over from before the shift wherever no shifted bed has come to stand on them, and others are as short as is allowed
 * wherever that is seen at once. (Such a route may not be the shortest; one that is too long is.)
 *
 * @param before ways of the garden before the shift
 */
export function accessAfter(after: Garden, before: Access, shifted: ReadonlySet<ItemId>): Access {
  const found = access(after);
  const outlines = after.items.filter(({ id }) => shifted.has(id)).map(outlineOfShifted);
  const half = limitsOf(after).standingRoom / 2;
  const clear = new Map<Route, boolean>();
  const isStillClear = (route: Route, room: number): boolean => {
    const known = clear.get(route) ?? isClearOf(route, outlines, room);
    clear.set(route, known);
    return known;
  };
  const sure = sureRoutes(after, before, isStillClear);
  const beds = new Map(
    after.items.flatMap((item) => (item.kind === "bed" ? [[item.id, item] as const] : [])),
  );
  const earlier = new Map(before.beds.map((bed) => [bed.id, bed]));
  return {
    get freeGround() {
      return found.freeGround;
    },
    gaps: found.gaps,
    wheelchair: found.wheelchair,
    beds: found.beds.map((bed): BedAccess => {
      const was = shifted.has(bed.id) ? undefined : earlier.get(bed.id);
      const kept = (route: (of: BedAccess) => Route | null, room: number) => {
        const known = was ? route(was) : null;
        return known && isStillClear(known, room) ? known : null;
      };
      const own = beds.get(bed.id)!;
      // Where no door lets anybody through to the bed, there is no walk to look for.
      const isShut = bed.fromDoor !== null && bed.fromDoor.width < 2 * half - 2 * SAME_LENGTH;
      const kitchen = once(() =>
        isShut ? null : (kept((of) => of.kitchen, half) ?? sure.kitchen(own) ?? bed.kitchen),
      );
      const hose = once(() => kept((of) => of.hose, HOSE) ?? sure.hose(own) ?? bed.hose);
      // Field by field: spreading would set the search for its routes going.
      return {
        id: bed.id,
        standing: bed.standing,
        reach: bed.reach,
        outOfReach: bed.outOfReach,
        outOfReachAreaMm2: bed.outOfReachAreaMm2,
        farthest: bed.farthest,
        closedBy: bed.closedBy,
        fromGate: bed.fromGate,
        fromDoor: bed.fromDoor,
        get kitchen() {
          return kitchen();
        },
        get hose() {
          return hose();
        },
      };
    }),
  };
}

/** Half the thickness of a hose, mm. */
const HOSE = 6;

const outlineOfShifted = (item: Garden["items"][number]): Ring =>
  item.kind === "bed" || item.kind === "shed" ? outlineOf(item) : [item.at];

/** Whether no outline comes within `room` mm of a route. */
function isClearOf(route: Route, outlines: readonly Ring[], room: number): boolean {
  const near = outlines.filter((outline) => boxDistance(boxAbout(route), boxOf(outline)) < room);
  if (near.length === 0) return true;
  return route.points.slice(1).every((to, i) => {
    const leg: Ring = [route.points[i]!, to];
    const box = boundsOf(leg);
    return near.every(
      (outline) => boxDistance(box, boxOf(outline)) >= room || gapBetween(leg, outline).width >= room,
    );
  });
}

const boxes = new WeakMap<Route, Box>();

function boxAbout(route: Route): Box {
  const box = boxes.get(route) ?? boundsOf(route.points);
  boxes.set(route, box);
  return box;
}
