import { access } from "../access/access.ts";
import type { Access, BedAccess, Route } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxDistance, boxOf, gapBetween } from "../geometry/gap.ts";
import type { Ring } from "../geometry/types.ts";

/**
 * The ways of a garden in which some beds have been shifted. Routes take longest: those to beds that stay are taken
 * over from before the shift wherever no shifted bed has come to stand on them. (Such a route may have become shorter,
 * never longer.)
 *
 * @param before ways of the garden before the shift
 */
export function accessAfter(after: Garden, before: Access, shifted: ReadonlySet<ItemId>): Access {
  const found = access(after);
  const outlines = after.items.filter(({ id }) => shifted.has(id)).map(outlineOfShifted);
  const half = limitsOf(after).standingRoom / 2;
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
        return known && isClearOf(known, outlines, room) ? known : route(bed);
      };
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
          return kept(({ kitchen }) => kitchen, half);
        },
        get hose() {
          return kept(({ hose }) => hose, HOSE);
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
function isClearOf({ points }: Route, outlines: readonly Ring[], room: number): boolean {
  return points.slice(1).every((to, i) => {
    const leg: Ring = [points[i]!, to];
    return outlines.every(
      (outline) => boxDistance(boxOf(leg), boxOf(outline)) >= room || gapBetween(leg, outline).width >= room,
    );
  });
}
