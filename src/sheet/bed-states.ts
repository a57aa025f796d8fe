import type { Bed } from "../garden/kinds/bed.ts";

/** What a sheet has to do with a bed: it is built now, it is there when this stage begins, or it comes later. */
export type BedState = "build" | "stands" | "later";

/**
 * @param stage the stage the sheet is of, or "all" for everything that is yet to be built
 */
export function bedState(bed: Bed, stage: number | "all"): BedState {
  if (stage !== "all" && bed.stage !== stage) return bed.stage < stage ? "stands" : "later";
  return standsWhole(bed) ? "stands" : "build";
}

/** Courses a wall has as it is drawn; one for a wall that has none. */
export const coursesOf = ({ wall }: Bed): number => ("courses" in wall ? wall.courses : 1);

/** Its wall stands in the yard already, as high as it is drawn. */
export const standsWhole = (bed: Bed): boolean =>
  bed.already !== null && bed.already.courses >= coursesOf(bed);

/** Courses that stand already, of a bed that is raised by more; 0 for a new one. */
export const coursesStanding = (bed: Bed): number => Math.min(bed.already?.courses ?? 0, coursesOf(bed));
