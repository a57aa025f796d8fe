import type { CropId } from "../garden/crop-ids.ts";
import type { Planting } from "../garden/plantings.ts";
import type { Point, Ring } from "../geometry/types.ts";

/** When a planting stands in its bed. Days of a year of 365, day 1 being 1 January; `days` may run over new year. */
export interface Standing {
  readonly planting: Planting;
  /** Where it comes in the bed's list. */
  readonly index: number;
  /** The day it is sown or planted in the bed. */
  readonly from: number;
  /** How long it stands, 1 to 365. */
  readonly days: number;
  /** First day it is ready to pick, from the days the crop table gives. */
  readonly pickFrom: number;
  /** Whether the gardener typed the day, or it follows from the frosts, or from the hemisphere alone. */
  readonly dayBy: "typed" | "frosts" | "hemisphere";
}

/** A planting as it stands in its bed, to scale. Points and rings in the bed's own frame, mm. */
export interface PlantedPatch {
  readonly index: number;
  readonly crop: CropId;
  readonly standing: Standing;
  /** The ground it has: its patch within the soil's outline. */
  readonly ground: readonly Ring[];
  readonly areaMm2: number;
  /** Of the bed's soil, 0 to 1. */
  readonly share: number;
  /** Spacing as planted. */
  readonly apart: number;
  readonly rowsApart: number;
  /** Centre lines of its rows, parted where the soil is; in a block those of its plants. */
  readonly rows: readonly (readonly [Point, Point])[];
  /** Where each plant stands; none where there are so many that they are counted by their area. */
  readonly plants: readonly Point[];
  /** How many plants that is. */
  readonly count: number;
  /**
   * How many more its patch would hold if all of it were soil and nothing else stood there; 1 where it has no patch and there
   * is no room for a single plant.
   */
  readonly notPlaced: number;
}
