import type { Bed } from "../garden/kinds/bed.ts";

/** What of a bed stands in the yard already, and what is left to do. */
export interface Standing {
  /** Courses of boards or blocks; a wall of another kind counts as one. */
  readonly courses: number;
  readonly coursesNew: number;
  /** Depth of soil that is in it, mm. */
  readonly soilDepth: number;
  /** Soil is in it: nothing can be laid under it any more. */
  readonly filled: boolean;
}

/** A bed may stand with fewer courses than are drawn, to be raised; more than are drawn are taken as drawn. */
export function standingOf({ already, wall }: Pick<Bed, "already" | "wall">): Standing {
  const drawn = wall.made === "boards" || wall.made === "masonry" ? wall.courses : 1;
  const courses = Math.min(already?.courses ?? 0, drawn);
  const soilDepth = already?.soilDepth ?? 0;
  return { courses, coursesNew: drawn - courses, soilDepth, filled: soilDepth > 0 };
}
