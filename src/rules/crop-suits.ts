import { type Crop, cropById } from "../crops/crop-table.ts";
import type { ItemId } from "../garden/fields.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import { type GroundUnder, groundsUnder } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { type Limits, limitsOf } from "../garden/limits.ts";
import type { Planting } from "../garden/plantings.ts";
import { plantsOf } from "../planting/plants.ts";
import { bedsInSun } from "../sun/beds-in-sun.ts";
import type { BedSun } from "../sun/sun-map.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { belowBed } from "./below-bed.ts";
import { SAME_HOURS, sunAskedBy } from "./crop-sun.ts";
import { holdsUp } from "./crop-support.ts";
import { stoppedByMesh } from "./long-roots.ts";
import { followsItsFamily } from "./rotation.ts";
import { inSeason } from "./season-fit.ts";

interface Circumstances {
  readonly limits: Limits;
  readonly grounds: ReadonlyMap<ItemId, readonly GroundUnder[]>;
  readonly sun: ReadonlyMap<ItemId, BedSun>;
}

const known = new WeakMap<Garden, Circumstances>();

function circumstancesOf(garden: Garden): Circumstances {
  let found = known.get(garden);
  if (!found) {
    found = { limits: limitsOf(garden), grounds: groundsUnder(garden), sun: bedsInSun(garden) };
    known.set(garden, found);
  }
  return found;
}

/**
 * Whether a crop would do in a bed as it stands: soil deep enough over what is below it, no mesh in the way of a long root,
 * sun enough, held up, and no kin there last year. Asked where ways out are looked for, never while something is dragged:
 * it works out the sun.
 */
export function suits(crop: Crop, bed: Bed, garden: Garden): boolean {
  const { limits, grounds, sun } = circumstancesOf(garden);
  const below = belowBed(bed, grounds.get(bed.id) ?? [], limits);
  const hours = sun.get(bed.id)?.hours ?? Infinity;
  return (
    frameOf(bed).soilDepth >= below.asks(crop) - SAME_LENGTH &&
    !stoppedByMesh(crop, bed) &&
    hours >= sunAskedBy(crop, limits) - SAME_HOURS &&
    holdsUp(bed, crop) &&
    !followsItsFamily(crop, bed)
  );
}

/** Whether the crops of some plantings would do in a bed as it stands. */
export const cropsSuit = (plantings: readonly Planting[], bed: Bed, garden: Garden): boolean =>
  plantings.every(({ crop }) => {
    const row = cropById(crop);
    return row !== null && suits(row, bed, garden);
  });

/** Whether plantings would all do in a bed: their crops suit it, they have room in it, and their time is in season. */
export function allSuit(plantings: readonly Planting[], bed: Bed, garden: Garden): boolean {
  const planted = {
    ...bed,
    plantings: [...bed.plantings.filter((one) => !plantings.includes(one)), ...plantings],
  };
  return (
    cropsSuit(plantings, bed, garden) &&
    plantsOf(planted, garden.site).every(
      ({ count, standing }) =>
        count > 0 && (!plantings.includes(standing.planting) || inSeason(standing, garden.site)),
    )
  );
}
