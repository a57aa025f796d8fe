import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { bedLight } from "./bed-light.ts";
import { castersOf } from "./casters.ts";
import { instantsOf } from "./instants.ts";
import { countOf } from "./light-field.ts";
import { type SunOptions, settingsFor } from "./options.ts";
import { sunHours } from "./sun-hours.ts";
import type { SunMap } from "./sun-map.ts";
import { openGround, yardCells } from "./yard-sun.ts";

/** What one thing in a garden costs in sun: hours a day that would be gained if it alone were not there. */
export interface SunCost {
  readonly id: ItemId;
  /** Mean over the open ground of the yard. */
  readonly yard: number;
  /** The beds it takes sun from, those it takes most from first. */
  readonly beds: readonly { readonly id: ItemId; readonly hours: number }[];
}

/** Wide enough for a mean over the yard, mm. */
const CELL = 304.8;
/** Less than this is lost in what is shown, hours. */
const LEAST = 0.005;

/**
 * What each thing costs the beds and the yard, the costliest first; things that cost nothing are left out. Two things that
 * shade the same place at once cost it nothing alone.
 *
 * @param map of this very garden, where the caller has it; what shades its beds must be in it
 */
export function sunCosts(garden: Garden, map: SunMap = sunHours(garden)): SunCost[] {
  const { season, days } = map;
  const ground = costsOfGround(garden, { season, days, cell: CELL });
  const things = new Set([
    ...ground.keys(),
    ...map.beds.flatMap(({ shade }) => (shade ?? []).map(({ id }) => id)),
  ]);
  return [...things]
    .map((id): SunCost => ({ id, yard: ground.get(id) ?? 0, beds: costsOfBeds(id, map) }))
    .filter(({ yard, beds }) => yard >= LEAST || beds.length > 0)
    .sort((a, b) => b.yard - a.yard);
}

function costsOfBeds(id: ItemId, { beds }: SunMap): SunCost["beds"] {
  return beds
    .flatMap(({ id: bed, shade }) => {
      const taken = shade?.find((one) => one.id === id);
      return taken && taken.hours >= LEAST ? [{ id: bed, hours: taken.hours }] : [];
    })
    .sort((a, b) => b.hours - a.hours);
}

/** The yard's ground looked at as if all of it were one bed. */
function costsOfGround(garden: Garden, options: SunOptions): ReadonlyMap<ItemId, number> {
  const settings = settingsFor(garden.site, options);
  const cells = yardCells(garden, settings.cell);
  const soil = openGround(garden, cells);
  if (countOf(soil) === 0) return new Map();
  const light = bedLight(
    { cells, soil, level: 0 },
    castersOf(garden.items),
    instantsOf(garden.site, settings),
    settings,
  );
  return new Map(light.shade.map(({ id, hours }) => [id, hours]));
}
