import { type StandingPiece, standingPieces, stretchesOf } from "../access/standing.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { isAnyFarther } from "../geometry/farthest.ts";
import type { Point } from "../geometry/types.ts";
import { subtract } from "../geometry/vector.ts";

interface Known {
  readonly reach: number;
  readonly isFarther: boolean;
}
const known = new WeakMap<readonly StandingPiece[], Known>();

/** From where soil is to be within reach. */
export interface Reaching {
  /** Room that somebody needs beside a bed, mm. */
  readonly room: number;
  /** mm */
  readonly reach: number;
}

/**
 * Whether soil of a bed is farther than a reach from where there is room to be beside it, whether one can get there or
 * not. Less than all that `bedReach` tells, and sooner: a search asks it of place after place.
 *
 * @param unmoved the same bed in another place, whose soil has been looked at before
 * @returns true where there is room nowhere; false for a bed whose walls leave no room for soil
 */
export function isSoilFarther(
  bed: Bed,
  garden: Pick<Garden, "items" | "yard">,
  { room, reach }: Reaching,
  unmoved: Bed = bed,
): boolean {
  // The very same pieces as long as nothing near the bed has moved.
  const pieces = standingPieces(bed, garden, room);
  const before = known.get(pieces);
  if (before?.reach === reach) return before.isFarther;
  const by = subtract(bed.at, unmoved.at);
  const back = (point: Point) => subtract(point, by);
  const lines = stretchesOf(pieces).map((stretch) => (bed === unmoved ? stretch : stretch.map(back)));
  const isFarther = isAnyFarther(frameOf(unmoved).inside, lines, reach);
  known.set(pieces, { reach, isFarther });
  return isFarther;
}
