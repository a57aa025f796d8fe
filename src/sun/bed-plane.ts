import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { castersFor } from "./bed-light.ts";
import { bedSoil } from "./bed-soil.ts";
import { hoursPerCount } from "./bed-sun.ts";
import { castersOf } from "./casters.ts";
import { emptyMask, isSet } from "./cells.ts";
import { instantsOf } from "./instants.ts";
import { lightField } from "./light-field.ts";
import { type SunOptions, settingsFor } from "./options.ts";
import { bedIn } from "./sun-hours.ts";
import type { SunGrid } from "./sun-map.ts";
import { yardCells } from "./yard-sun.ts";

/**
 * Hours of sun all over the yard at the height of one bed's soil, without that bed: what it would get wherever it stood.
 * Unlike the map of the yard it has figures everywhere, under buildings too, where they are those of deep shade.
 *
 * @returns null for a bed without area
 * @throws RangeError if there is no such bed, and for options that cannot be
 */
export function bedPlane(garden: Garden, id: ItemId, options: SunOptions = {}): SunGrid | null {
  const bed = bedIn(garden, id);
  const settings = settingsFor(garden.site, options);
  const place = bedSoil(bed, settings.cell);
  if (!place) return null;
  const cells = yardCells(garden, settings.cell);
  const instants = instantsOf(garden.site, settings);
  const casters = castersFor(bed, castersOf(garden.items));
  const { totals } = lightField({ cells, level: place.level, soil: emptyMask(cells), casters, instants });
  const perCount = hoursPerCount(settings);
  return { ...cells, hours: Float32Array.from(totals, (total) => total * perCount) };
}

/**
 * The mean over a bed's soil, read off a plane of its own where it stands now: quick enough for every frame of a drag.
 * @returns null where none of it lies on the plane
 */
export function hoursOn(plane: SunGrid, bed: Bed): number | null {
  const place = bedSoil(bed, plane.cell);
  if (!place) return null;
  const { cells, soil } = place;
  let [sum, count] = [0, 0];
  for (let row = 0; row < cells.rows; row++) {
    for (let column = 0; column < cells.columns; column++) {
      if (!isSet(soil, cells, column, row)) continue;
      const x = (cells.origin[0] + (column + 0.5) * cells.cell - plane.origin[0]) / plane.cell - 0.5;
      const y = (cells.origin[1] + (row + 0.5) * cells.cell - plane.origin[1]) / plane.cell - 0.5;
      if (x < -0.5 || y < -0.5 || x > plane.columns - 0.5 || y > plane.rows - 0.5) continue;
      sum += between(plane, x, y);
      count++;
    }
  }
  return count > 0 ? sum / count : null;
}

/** The hours at a place given in cells, on straight lines between the middles of the four cells round it. */
function between({ columns, rows, hours }: SunGrid, x: number, y: number): number {
  const left = Math.min(columns - 1, Math.max(0, Math.floor(x)));
  const top = Math.min(rows - 1, Math.max(0, Math.floor(y)));
  const right = Math.min(columns - 1, left + 1);
  const bottom = Math.min(rows - 1, top + 1);
  const [u, v] = [Math.min(1, Math.max(0, x - left)), Math.min(1, Math.max(0, y - top))];
  const above = hours[top * columns + left]! * (1 - u) + hours[top * columns + right]! * u;
  const below = hours[bottom * columns + left]! * (1 - u) + hours[bottom * columns + right]! * u;
  return above * (1 - v) + below * v;
}
