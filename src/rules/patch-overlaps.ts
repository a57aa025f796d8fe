import type { Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { plantsOf } from "../planting/plants.ts";
import { lieOver } from "../planting/standings.ts";
import type { PlantedPatch } from "../planting/types.ts";
import { meetInTime } from "../planting/year-day.ts";

/** Two plantings of a bed that lie over one another while both stand; the first in the list has the ground. */
export interface PatchOverlap {
  readonly first: PlantedPatch;
  readonly second: PlantedPatch;
}

/** Where patches lie over one another at the same time, so that the later in the list loses plants by it. */
export function patchOverlaps(bed: Bed, site: Site): readonly PatchOverlap[] {
  const patches = plantsOf(bed, site);
  return patches.flatMap((second) =>
    second.notPlaced === 0
      ? []
      : patches
          .slice(0, second.index)
          .filter(
            (first) =>
              lieOver(first.standing.planting, second.standing.planting) &&
              meetInTime(first.standing, second.standing),
          )
          .map((first) => ({ first, second })),
  );
}
