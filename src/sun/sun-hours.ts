import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { bedLight, castersFor } from "./bed-light.ts";
import { type BedSoil, bedSoil } from "./bed-soil.ts";
import { bedSun } from "./bed-sun.ts";
import { castersOf } from "./casters.ts";
import { emptyMask } from "./cells.ts";
import { instantsOf } from "./instants.ts";
import { lightField } from "./light-field.ts";
import { type SunOptions, settingsFor } from "./options.ts";
import type { BedSun, SunMap } from "./sun-map.ts";
import { type LitBed, yardCells, yardSun } from "./yard-sun.ts";

/**
 * Hours of direct sun a day over a season: on every 6 in of the yard, and for each bed on its soil.
 *
 * The sun is looked at every few minutes of some days that stand for the season, while its middle is above the horizon, as
 * it stands without air. Houses, sheds, walls, fences, beds, trellises and trees throw shadows; slats and crowns let their
 * share of the light through, one after the other. The yard is taken to be level. Light from the sky is not counted.
 *
 * @param garden any; one without beds has a map of the yard alone, and beds without area are left out
 * @param options defaults: the growing season of the hemisphere, 12 days, 10 minutes, cells of 6 in
 * @throws RangeError for options that cannot be
 * @source shadows by plane geometry; see `light-field.ts` for the counting
 */
export function sunHours(garden: Garden, options: SunOptions = {}): SunMap {
  const settings = settingsFor(garden.site, options);
  const instants = instantsOf(garden.site, settings);
  const casters = castersOf(garden.items);
  const cells = yardCells(garden, settings.cell);
  const onGround = settings.bareGround ? castersOf(garden.items.filter(isNoBed)) : casters;
  const ground = lightField({ cells, level: 0, soil: emptyMask(cells), casters: onGround, instants });
  const lit: LitBed[] = [];
  const beds: BedSun[] = [];
  for (const { bed, place } of bedsOf(garden, settings.cell)) {
    const light = bedLight(place, castersFor(bed, casters), instants, settings);
    lit.push({ bed, place, totals: light.totals });
    beds.push(bedSun(bed, place, light, instants, settings, light.shade));
  }
  const { season, days, step } = settings;
  return { season, days, step, yard: yardSun(garden, cells, ground.totals, lit, settings), beds };
}

/**
 * What one bed gets and what shades it: as in the map, without the map. With days by name it draws the bar of a month.
 * @returns null for a bed without area
 * @throws RangeError if there is no such bed, and for options that cannot be
 */
export function bedShade(garden: Garden, id: ItemId, options: SunOptions = {}): BedSun | null {
  const bed = bedIn(garden, id);
  const settings = settingsFor(garden.site, options);
  const place = bedSoil(bed, settings.cell);
  if (!place) return null;
  const instants = instantsOf(garden.site, settings);
  const light = bedLight(place, castersFor(bed, castersOf(garden.items)), instants, settings);
  return bedSun(bed, place, light, instants, settings, light.shade);
}

export const isNoBed = ({ kind }: Pick<Item, "kind">): boolean => kind !== "bed";

/** @throws RangeError if there is no such bed */
export function bedIn({ items }: Pick<Garden, "items">, id: ItemId): Bed {
  const bed = items.find((item) => item.id === id);
  if (bed?.kind !== "bed") throw new RangeError(`no bed in this garden is called "${id}"`);
  return bed;
}

/** Beds that have soil to look at, each with its cells. */
export const bedsOf = (
  { items }: Pick<Garden, "items">,
  cell: number,
): { readonly bed: Bed; readonly place: BedSoil }[] =>
  items.flatMap((bed) => {
    const place = bed.kind === "bed" ? bedSoil(bed, cell) : null;
    return bed.kind === "bed" && place ? [{ bed, place }] : [];
  });
