import { distance } from "../geometry/vector.ts";
import type { PlantedPatch } from "./types.ts";

/** What is read off a planting: how many plants, in how many rows, and how long those are together. */
export interface PlantCount {
  readonly plants: number;
  /** Rows, or lines of a block; a row that the soil parts counts once for each part. */
  readonly rows: number;
  /** Of all rows together, mm: the plants in them times their spacing. */
  readonly rowLength: number;
}

export const plantCount = ({ count, rows }: Pick<PlantedPatch, "count" | "rows">): PlantCount => ({
  plants: count,
  rows: rows.length,
  rowLength: rows.reduce((sum, [from, to]) => sum + distance(from, to), 0),
});
