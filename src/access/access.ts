import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { type Limits, limitsOf } from "../garden/limits.ts";
import type { Detail } from "./boundary.ts";
import { freeGround } from "./free-ground.ts";
import { gapsOf } from "./gaps.ts";
import { kitchenWalks } from "./kitchen-walks.ts";
import { once } from "./once.ts";
import { bedReach, reachOf } from "./reach.ts";
import { hosesOf, type Routes } from "./routes.ts";
import { roomToStand } from "./standing.ts";
import type { Access, Route } from "./types.ts";
import { waysOf } from "./ways.ts";
import { wheelchairAccess } from "./wheelchair.ts";

/**
 * Who can get where in a garden, how wide, how far, and what can be reached from there.
 *
 * Free ground and routes are worked out when they are first read, and then kept: a drag that shows neither does not
 * wait for them. (Copied to another thread, all of them are there.)
 *
 * @param options.detail "dragged" looks less closely, so that 40 beds fit in a frame; see `boundary.ts`
 * @returns facts in mm on the plan; see `types.ts` for each
 */
export function access(garden: Garden, { detail = "settled" }: { readonly detail?: Detail } = {}): Access {
  const limits = limitsOf(garden);
  const room = roomToStand(garden.gardener, limits);
  const reach = reachOf(garden.gardener, limits);
  const ways = waysOf(garden, detail);
  const canGetTo = ways.reachableAt(narrowestWalked(garden, limits));
  const walks = once(() => kitchenWalks(garden));
  const hoses = once(() => hosesOf(garden));
  const beds = garden.items.filter((item) => item.kind === "bed");
  return {
    get freeGround() {
      return freeGround(garden);
    },
    gaps: gapsOf(garden),
    beds: beds.map((bed) => {
      const kitchen = onceTo(walks, bed);
      const hose = onceTo(hoses, bed);
      return {
        id: bed.id,
        ...bedReach(bed, garden, { room, reach, canGetTo }),
        ...ways.toBed(bed.id),
        get kitchen() {
          return kitchen();
        },
        get hose() {
          return hose();
        },
      };
    }),
    wheelchair: garden.gardener.wheelchair ? wheelchairAccess(garden, ways, limits) : null,
  };
}

/** The width of way that one gets through to a standing place: less than the room one wants there. */
const narrowestWalked = ({ gardener }: Garden, limits: Limits): number =>
  gardener.wheelchair ? limits.wheelchairPinch : limits.standingRoom;

const onceTo = (routes: () => Routes, bed: Bed): (() => Route | null) => once(() => routes().walkTo(bed));
