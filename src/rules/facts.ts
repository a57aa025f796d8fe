import type { Place } from "../access/place.ts";
import type { Access } from "../access/types.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden, Gardener, Site } from "../garden/garden.ts";
import type { GroundUnder } from "../garden/ground-under.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Limits } from "../garden/limits.ts";
import type { DripPlan } from "../irrigation/types.ts";
import type { BedSun } from "../sun/sun-map.ts";
import type { Takeoff } from "../takeoff/types.ts";
import type { Units } from "../units/length.ts";

/** Everything a rule may ask for. Each is computed at most once a check, and only if some rule needs it. */
export interface Facts {
  readonly garden: Garden;
  readonly items: readonly Item[];
  readonly beds: readonly Bed[];
  readonly site: Site;
  readonly gardener: Gardener;
  readonly limits: Limits;
  readonly units: Units;
  /** What each bed stands on. */
  readonly grounds: ReadonlyMap<ItemId, readonly GroundUnder[]>;
  /** What stands in the way of what. */
  readonly place: Place;
  readonly access: Access;
  readonly takeoff: Takeoff;
  /** Lines, main and zones of the beds that are watered by drip; only slow rules may ask for it. */
  readonly drip: DripPlan;
  /** What the sun gives each bed over the season and what takes it; beds without area have none. */
  readonly sun: ReadonlyMap<ItemId, BedSun>;
}
