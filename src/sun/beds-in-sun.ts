import type { ItemId } from "../garden/fields.ts";
import type { Garden, Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { bedLight, castersFor } from "./bed-light.ts";
import { bedSoil } from "./bed-soil.ts";
import { bedSun } from "./bed-sun.ts";
import { type Caster, castersOf } from "./casters.ts";
import { instantsOf } from "./instants.ts";
import { SUN_LIVE, type SunSettings, settingsFor } from "./options.ts";
import type { BedSun } from "./sun-map.ts";

interface Remembered {
  readonly site: Site;
  readonly casters: readonly Caster[];
  readonly sun: BedSun;
}

const remembered = new WeakMap<Bed, Remembered>();

/**
 * What the sun gives each bed of a garden and what takes it, as in the live map but without the yard: within a minute a day
 * of looking every minute. Beds without area are left out. Remembered by the bed while the site and all that throws shadows
 * stay the same things.
 */
export function bedsInSun({ items, site }: Pick<Garden, "items" | "site">): ReadonlyMap<ItemId, BedSun> {
  const settings = settingsFor(site, SUN_LIVE);
  const casters = castersOf(items);
  const found = new Map<ItemId, BedSun>();
  for (const bed of items) {
    const sun = bed.kind === "bed" ? sunOn(bed, site, castersFor(bed, casters), settings) : null;
    if (sun) found.set(sun.id, sun);
  }
  return found;
}

function sunOn(bed: Bed, site: Site, casters: readonly Caster[], settings: SunSettings): BedSun | null {
  const before = remembered.get(bed);
  if (before && before.site === site && sameCasters(before.casters, casters)) return before.sun;
  const place = bedSoil(bed, settings.cell);
  if (!place) return null;
  const instants = instantsOf(site, settings);
  const light = bedLight(place, casters, instants, settings);
  const sun = bedSun(bed, place, light, instants, settings, light.shade);
  remembered.set(bed, { site, casters, sun });
  return sun;
}

const sameCasters = (a: readonly Caster[], b: readonly Caster[]): boolean =>
  a.length === b.length && a.every((caster, i) => caster === b[i]);
