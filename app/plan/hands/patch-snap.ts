import type { Box, Garden, Point, Units } from "../../../src/index.ts";
import { finestStep, type Hand, SNAP_PIXELS } from "./gesture.ts";
import { gridStep, toStep } from "./grid.ts";
import { type Bed, type Patch, patchWithin, sidesOf, soilBox } from "./patches.ts";

/** What sides of a place are held to: the soil's edges, the sides of other places, else round measures from the soil's corner. */
export interface PatchGrid {
  readonly soil: Box;
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly step: number;
  /** mm; 0 leaves the sides of others alone. */
  readonly tolerance: number;
}

/** @param index the planting whose place is pulled, -1 for a new one */
export function patchGrid(
  bed: Bed,
  index: number,
  { units }: Pick<Garden, "units">,
  { free }: Pick<Hand, "free">,
  pixels: number,
): PatchGrid | null {
  const soil = soilBox(bed);
  if (!soil) return null;
  const others = bed.plantings.flatMap(({ patch }, i) => (patch && i !== index ? [sidesOf(patch)] : []));
  return {
    soil,
    xs: [soil, ...others].flatMap(({ minX, maxX }) => [minX, maxX]),
    ys: [soil, ...others].flatMap(({ minY, maxY }) => [minY, maxY]),
    step: stepOf(units, free, pixels),
    tolerance: free ? 0 : SNAP_PIXELS / pixels,
  };
}

const stepOf = (units: Units, free: boolean, pixels: number): number =>
  free ? finestStep(units) : gridStep(units, pixels);

/** A corner of a place, in the bed's own frame: held, and never off the soil's box. */
export const heldCornerOf = ([x, y]: Point, grid: PatchGrid): Point => [
  heldAt(x, grid.xs, grid.soil.minX, grid.soil.maxX, grid),
  heldAt(y, grid.ys, grid.soil.minY, grid.soil.maxY, grid),
];

function heldAt(
  value: number,
  lines: readonly number[],
  least: number,
  most: number,
  { step, tolerance }: PatchGrid,
): number {
  const within = Math.min(most, Math.max(least, value));
  return nearest(within, lines, tolerance) ?? Math.min(most, toStep(within, step, least));
}

function nearest(value: number, lines: readonly number[], tolerance: number): number | null {
  let best: number | null = null;
  for (const line of lines) {
    const off = Math.abs(line - value);
    if (off <= tolerance && (best === null || off < Math.abs(best - value))) best = line;
  }
  return best;
}

/** A place carried by so much: its first or its last sides are held, and it stays on the soil's box as far as it fits. */
export function heldPatchAt(patch: Patch, [dx, dy]: Point, grid: PatchGrid): Patch {
  const before = sidesOf(patch);
  const x = carriedSide(before.minX, before.maxX, dx, grid.xs, grid.soil.minX, grid.soil.maxX, grid);
  const y = carriedSide(before.minY, before.maxY, dy, grid.ys, grid.soil.minY, grid.soil.maxY, grid);
  return patchWithin({
    minX: before.minX + x,
    maxX: before.maxX + x,
    minY: before.minY + y,
    maxY: before.maxY + y,
  });
}

function carriedSide(
  first: number,
  last: number,
  by: number,
  lines: readonly number[],
  least: number,
  most: number,
  { step, tolerance }: PatchGrid,
): number {
  const wish = Math.max(least - first, Math.min(most - last, by));
  const [start, end] = [nearest(first + wish, lines, tolerance), nearest(last + wish, lines, tolerance)];
  const starts = start === null ? null : start - first;
  const ends = end === null ? null : end - last;
  if (starts !== null && (ends === null || Math.abs(starts - wish) <= Math.abs(ends - wish))) return starts;
  if (ends !== null) return ends;
  return Math.max(least - first, Math.min(most - last, toStep(first + wish, step, least) - first));
}
