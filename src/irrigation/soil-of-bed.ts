import type { Bed } from "../garden/kinds/bed.ts";
import { signedArea } from "../geometry/ring.ts";
import type { Ring } from "../geometry/types.ts";
import { ownSoil } from "../planting/share-ground.ts";

/** The soil of a bed in its own frame. */
export interface BedSoil {
  /** Outer rings clockwise, holes the other way round. */
  readonly rings: readonly Ring[];
  readonly areaMm2: number;
}

interface Known {
  readonly wall: Bed["wall"];
  readonly soil: BedSoil;
}

const known = new WeakMap<Bed["shape"], Known>();

/** Remembered by shape and wall: a bed that is moved or turned keeps its soil, the very value. */
export function soilOfBed(bed: Bed): BedSoil {
  const before = known.get(bed.shape);
  if (before?.wall === bed.wall) return before.soil;
  const rings = ownSoil(bed);
  const soil = {
    rings,
    areaMm2: Math.max(
      0,
      rings.reduce((sum, ring) => sum + signedArea(ring), 0),
    ),
  };
  known.set(bed.shape, { wall: bed.wall, soil });
  return soil;
}
