import type { ItemId } from "../garden/fields.ts";
import type { Caster, CasterPart } from "./casters.ts";
import { type Cells, emptyMask, type Mask } from "./cells.ts";
import type { Instant } from "./instants.ts";
import { type Bounds, type Castable, castable, Raster } from "./raster.ts";

/** A part of a thing as it stands over one level plane. */
export interface StandingPart {
  readonly id: ItemId;
  readonly bodies: readonly Castable[];
  readonly lightInLeaf: number;
  readonly lightBare: number;
  readonly leafMonths: CasterPart["leafMonths"];
  /** Round all its bodies. */
  readonly bounds: Bounds;
  /** Where its shadow is drawn; all clear between two casts. */
  readonly mask: Mask;
}

/** The parts of things that stand above a level plane with cells. Parts that let all light pass are left out. */
export const standingOver = (casters: readonly Caster[], cells: Cells, level: number): StandingPart[] =>
  casters.flatMap(({ id, parts }) =>
    parts.flatMap(({ bodies, lightInLeaf, lightBare, leafMonths }) => {
      const standing = bodies.map((body) => castable(body, cells, level)).filter((body) => body !== null);
      if (standing.length === 0 || Math.min(lightInLeaf, lightBare) >= 1) return [];
      return {
        id,
        bodies: standing,
        lightInLeaf,
        lightBare,
        leafMonths,
        bounds: boundsOf(standing),
        mask: emptyMask(cells),
      };
    }),
  );

const boundsOf = (bodies: readonly Castable[]): Bounds => ({
  minX: Math.min(...bodies.map(({ minX }) => minX)),
  minY: Math.min(...bodies.map(({ minY }) => minY)),
  maxX: Math.max(...bodies.map(({ maxX }) => maxX)),
  maxY: Math.max(...bodies.map(({ maxY }) => maxY)),
  top: Math.max(...bodies.map(({ top }) => top)),
});

/** Share of direct light that passes a part at a time of year. */
export const lightOf = (
  { lightInLeaf, lightBare, leafMonths }: Pick<CasterPart, "lightInLeaf" | "lightBare" | "leafMonths">,
  { month, inLeaf }: Pick<Instant, "month" | "inLeaf">,
): number => ((leafMonths ? leafMonths.includes(month) : inLeaf) ? lightInLeaf : lightBare);

/** Casts a part's shadow into a mask. @returns whether any of the cells' rows were touched */
export function castPart(raster: Raster, part: StandingPart, { perX, perY }: Instant, mask: Mask): boolean {
  raster.forgetRows();
  if (!raster.isReached(part.bounds, perX, perY)) return false;
  for (const body of part.bodies) raster.cast(body, perX, perY, mask);
  return raster.firstRow <= raster.lastRow;
}

export const rasterOver = (cells: Cells): Raster => new Raster(cells);

/** Cells that some of the light reaches. */
export interface Dim {
  readonly mask: Mask;
  readonly light: number;
}

/**
 * Casts the shadows of parts at one look at the sun: of solid ones all into one mask, of those that let light through each
 * into its own.
 * @returns the latter that reach any cell, and the first and last row that a shadow touches; first after last for none
 */
export function castAll(
  raster: Raster,
  parts: readonly StandingPart[],
  instant: Instant,
  dark: Mask,
): { readonly dims: readonly Dim[]; readonly first: number; readonly last: number } {
  const dims: Dim[] = [];
  let [first, last] = [Infinity, -1];
  for (const part of parts) {
    const light = lightOf(part, instant);
    const mask = light <= 0 ? dark : part.mask;
    if (light >= 1 || !castPart(raster, part, instant, mask)) continue;
    if (light > 0) dims.push({ mask, light });
    first = Math.min(first, raster.firstRow);
    last = Math.max(last, raster.lastRow);
  }
  return { dims, first, last };
}
