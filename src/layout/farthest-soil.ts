import { type StandingPiece, standingPieces, stretchesOf } from "../access/standing.ts";
import { frameOf } from "../garden/frame.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { farthestFrom } from "../geometry/farthest.ts";

const known = new WeakMap<readonly StandingPiece[], number>();

/**
 * How far the farthest soil of a bed is from where there is room to be beside it, mm, whether one can get there or not.
 * Less than all that `bedReach` tells, and sooner: a search asks it of place after place.
 * @returns Infinity where there is room nowhere; 0 for a bed whose walls leave no room for soil
 */
export function farthestSoil(bed: Bed, garden: Pick<Garden, "items" | "yard">, room: number): number {
  // The very same pieces as long as nothing near the bed has moved.
  const pieces = standingPieces(bed, garden, room);
  let far = known.get(pieces);
  if (far === undefined) {
    far = farthestFrom(frameOf(bed).inside, stretchesOf(pieces))?.distance ?? 0;
    known.set(pieces, far);
  }
  return far;
}
