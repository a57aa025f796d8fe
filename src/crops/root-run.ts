import { practice, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { CROP_SOURCES, type Crop, type RootClass } from "./crop-table.ts";

/** What stops roots below the soil of a bed: nothing but more soil, or something they cannot pass. */
export type Below = "soil" | "hard";

/**
 * The shallow end of each root class. Published advice for single crops over paving is scarce and wide (12 to 24 in
 * for tomatoes in one extension's list), so the class decides and the gardener is told that it is practice.
 */
const OVER_HARD: Readonly<Record<RootClass, number>> = {
  shallow: 12 * INCH,
  medium: 18 * INCH,
  deep: 24 * INCH,
};

export const ROOT_RUN_SOURCES: Readonly<Record<Below, Source>> = {
  soil: CROP_SOURCES.leastBedDepth,
  hard: practice("the shallow end of the crop's root class: 12, 18 or 24 in"),
};

/**
 * Depth of soil a crop asks of a bed, mm: the bed's own depth where roots go on into open ground, the whole root run
 * where paving, a deck, a roof or a sheet stops them.
 */
export const rootRun = (crop: Crop, below: Below): number =>
  below === "soil" ? crop.leastBedDepth : OVER_HARD[crop.rootClass];
