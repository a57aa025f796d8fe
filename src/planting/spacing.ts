import { CROP_SOURCES, type Crop, cropById, type Range } from "../crops/crop-table.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Planting } from "../garden/plantings.ts";
import { fromMemory, practice, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";

/** How far apart plants stand, mm. */
export interface Spacing {
  /** From plant to plant in a row or block. */
  readonly apart: number;
  /** From row to row; in a block what follows from plants equally far from one another. */
  readonly rowsApart: number;
}

/** Crops for which no table we read gives a spacing. */
const RECALLED: Partial<Record<CropId, Range>> = {
  arugula: { least: 4 * INCH, most: 6 * INCH },
  celery: { least: 6 * INCH, most: 9 * INCH },
  "sweet-potato": { least: 12 * INCH, most: 15 * INCH },
  strawberry: { least: 12 * INCH, most: 18 * INCH },
};

export const SPACING_SOURCES = {
  bed: CROP_SOURCES.bedSpacing,
  row: practice(
    "nobody walks between the rows of a bed: where no bed spacing is printed, the spacing in the row holds both ways",
  ),
  recalled: fromMemory("extension spacing charts: arugula, celery, sweet potato and strawberry"),
  toWall: practice("half a spacing is kept to the wall, as roots and leaves there have one side alone"),
} as const satisfies Record<string, Source>;

/**
 * The spacing of a crop in a bed, least and most, mm. Charts give rows far enough apart to walk and hoe between; a bed is
 * reached from its sides, so plants stand in it equally far apart both ways.
 */
export function bedSpacing(crop: CropId): Range & { readonly source: Source } {
  const row: Crop | null = cropById(crop);
  if (row?.bedSpacing) return { ...row.bedSpacing, source: SPACING_SOURCES.bed };
  if (row?.inRow) return { ...row.inRow, source: SPACING_SOURCES.row };
  const recalled = RECALLED[crop];
  if (!recalled) throw new RangeError(`nothing tells how far apart ${crop} is set`);
  return { ...recalled, source: SPACING_SOURCES.recalled };
}

/** Rows of a block of plants equally far from one another lie nearer than the plants do. */
const STAGGERED = Math.sqrt(3) / 2;

/** Spacing as typed; what is not typed is the wider end of the crop's spacing in a bed. */
export function spacingOf({ crop, set, apart, rowsApart }: Planting): Spacing {
  const usual = bedSpacing(crop).most;
  const inRow = apart ?? usual;
  return { apart: inRow, rowsApart: set === "block" ? inRow * STAGGERED : (rowsApart ?? usual) };
}
