import { frameOf } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { boundsOf } from "../geometry/ring.ts";
import { type Cells, cellsOver, type Mask, maskOf } from "./cells.ts";
import { countOf } from "./light-field.ts";

/** A bed's soil as cells, and the height it lies at. */
export interface BedSoil {
  readonly cells: Cells;
  readonly soil: Mask;
  readonly level: number;
}

/** Fewer cells than this say too little about a bed's corners. */
const FEWEST = 24;
const MOST = 4096;
/** A bed that is drawn a hair wide still has some soil when its cells are a millimetre or so. */
const MOST_HALVINGS = 8;

/**
 * Cells over a bed's soil, half as wide as the yard's; wider on a field, narrower on a very small or thin bed.
 * A bed whose walls leave no room inside is looked at all over.
 * @returns null for an outline without area
 */
export function bedSoil(bed: Bed, yardCell: number): BedSoil | null {
  const { inside, outside, soilDepth } = frameOf(bed);
  const rings = inside.length > 0 ? inside : [outside];
  const box = boundsOf(rings.flat());
  const area = (box.maxX - box.minX) * (box.maxY - box.minY);
  let cell = Math.max(yardCell / 2, Math.sqrt(area / MOST));
  for (let halvings = 0; halvings <= MOST_HALVINGS; halvings++, cell /= 2) {
    const cells = cellsOver(box, cell);
    const soil = maskOf(cells, rings);
    const count = countOf(soil);
    if (count >= FEWEST || (halvings === MOST_HALVINGS && count > 0)) {
      return { cells, soil, level: (bed.legs ?? 0) + soilDepth };
    }
  }
  return null;
}
