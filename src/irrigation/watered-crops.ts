import type { Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { plantsOf } from "../planting/plants.ts";
import type { WateredCrop } from "../water/bed-need.ts";
import { YEAR_DAYS } from "../water/calendar.ts";

/**
 * What grows in a bed as its water is reckoned: each planting with its share of the soil and its days in the bed.
 *
 * Ground is shared out by clipping, in whole micrometres: where the parts of a day come to a little more than all of the
 * soil, they count for all of it.
 */
export function wateredCrops(bed: Bed, site: Site): readonly WateredCrop[] {
  const crops = plantsOf(bed, site)
    .filter(({ areaMm2 }) => areaMm2 > 0)
    .map(
      ({ crop, share, standing: { from, days } }): WateredCrop => ({
        crop,
        plantedOn: from,
        days,
        share: Math.min(1, share),
        onSupports: bed.trellis !== null,
      }),
    );
  const filled = filledByDay(crops);
  return crops.map((crop) => ({
    ...crop,
    share: crop.share / Math.max(1, ...daysOf(crop).map((day) => filled[day]!)),
  }));
}

/** Days of the year as they are counted in a list, the first of January at 0. */
const daysOf = ({ plantedOn, days }: WateredCrop): number[] =>
  Array.from({ length: days }, (_, day) => (plantedOn - 1 + day) % YEAR_DAYS);

function filledByDay(crops: readonly WateredCrop[]): readonly number[] {
  const filled = new Array<number>(YEAR_DAYS).fill(0);
  for (const crop of crops) for (const day of daysOf(crop)) filled[day]! += crop.share;
  return filled;
}

/** Whether anything grows in each month, January first. */
export function growsIn(
  crops: readonly WateredCrop[],
  monthOfDay: (day: number) => number,
): readonly boolean[] {
  const grows = new Array<boolean>(12).fill(false);
  for (const crop of crops) for (const day of daysOf(crop)) grows[monthOfDay(day + 1)] = true;
  return grows;
}
