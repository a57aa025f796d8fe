import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { boundsOf } from "../geometry/ring.ts";
import type { Ring } from "../geometry/types.ts";
import type { BedSoil } from "./bed-soil.ts";
import { hoursPerCount } from "./bed-sun.ts";
import { casterOf } from "./casters.ts";
import { type Cells, cellMiddle, cellsOver, isSet, type Mask, maskOf } from "./cells.ts";
import type { SunSettings } from "./options.ts";
import type { SunGrid } from "./sun-map.ts";

export const yardCells = ({ yard }: Pick<Garden, "yard">, cell: number): Cells =>
  cellsOver(boundsOf(yard), cell);

/** A bed with the light that was counted on its soil. */
export interface LitBed {
  readonly bed: Bed;
  readonly place: BedSoil;
  readonly totals: Float64Array;
}

/** The yard's hours from what was counted on the ground and on the beds. */
export function yardSun(
  garden: Garden,
  cells: Cells,
  ground: Float64Array,
  beds: readonly LitBed[],
  settings: SunSettings,
): SunGrid {
  const perCount = hoursPerCount(settings);
  const hours = new Float32Array(ground.length);
  for (let i = 0; i < ground.length; i++) hours[i] = ground[i]! * perCount;
  if (!settings.bareGround) for (const bed of beds) layBed(hours, cells, bed, perCount);
  const yard = maskOf(cells, [garden.yard]);
  blank(hours, cells, (column, row) => !isSet(yard, cells, column, row));
  for (const ring of coverings(garden)) {
    const covered = maskOf(cells, [ring]);
    blank(hours, cells, (column, row) => isSet(covered, cells, column, row));
  }
  return { ...cells, hours };
}

/** The cells of a yard whose ground nothing stands on that leaves no light under it. */
export function openGround(garden: Garden, cells: Cells): Mask {
  const covered = coverings(garden).map((ring) => maskOf(cells, [ring]));
  return maskOf(cells, [garden.yard]).map((word, i) =>
    covered.reduce((open, mask) => open & ~mask[i]!, word),
  );
}

/** Cells whose middles lie on a bed show the light at its soil; on its walls, that of the soil next to them. */
function layBed(hours: Float32Array, cells: Cells, { bed, place, totals }: LitBed, perCount: number): void {
  const outline = maskOf(cells, [outlineOf(bed)]);
  eachCell(cells, (column, row, i) => {
    if (!isSet(outline, cells, column, row)) return;
    const [x, y] = cellMiddle(cells, column, row);
    const soil = nearestSoil(
      place,
      (x - place.cells.origin[0]) / place.cells.cell,
      (y - place.cells.origin[1]) / place.cells.cell,
    );
    hours[i] = totals[soil]! * perCount;
  });
}

/** Index of the soil cell nearest to a place given in cells. */
function nearestSoil({ cells, soil }: BedSoil, x: number, y: number): number {
  const column = Math.min(cells.columns - 1, Math.max(0, Math.floor(x)));
  const row = Math.min(cells.rows - 1, Math.max(0, Math.floor(y)));
  if (isSet(soil, cells, column, row)) return row * cells.columns + column;
  let [nearest, least] = [0, Infinity];
  eachCell(cells, (c, r, i) => {
    const away = (c + 0.5 - x) ** 2 + (r + 0.5 - y) ** 2;
    if (away < least && isSet(soil, cells, c, r)) [nearest, least] = [i, away];
  });
  return nearest;
}

/** What stands on the ground and leaves no light under it to speak of. */
const coverings = ({ items }: Pick<Garden, "items">): Ring[] =>
  items.flatMap((item): readonly Ring[] => {
    if (item.kind === "house" || item.kind === "shed") return [outlineOf(item)];
    if (item.kind !== "wall" && item.kind !== "fence") return [];
    const bodies = casterOf(item)?.parts.flatMap((part) => part.bodies) ?? [];
    return bodies.flatMap((body) => (body.body === "prism" ? [body.ring] : []));
  });

function blank(hours: Float32Array, cells: Cells, isBlank: (column: number, row: number) => boolean): void {
  eachCell(cells, (column, row, i) => {
    if (isBlank(column, row)) hours[i] = Number.NaN;
  });
}

function eachCell(
  { columns, rows }: Cells,
  tell: (column: number, row: number, index: number) => void,
): void {
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) tell(column, row, row * columns + column);
  }
}
