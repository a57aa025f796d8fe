import type { Bed } from "../garden/kinds/bed.ts";
import type { RootRoom } from "./root-store.ts";
import { soilOfMix, soilOfTexture, type TextureId } from "./soil-water.ts";
import { atLeastZero } from "./within.ts";

/** What a bed stands on, as far as roots and water mind. */
export interface GroundBelow {
  /** Of the yard's own soil. */
  readonly texture: TextureId;
  /** False over paving, a deck or a roof, or where the bed stands on legs. */
  readonly open: boolean;
}

/**
 * The room for roots in a bed as it is filled: its mix to its real depth and the ground below where nothing is between.
 *
 * Woody stuff under a layered fill is not counted, nor ground below it: it drains and rots, and until then holds nitrogen
 * rather than water for roots. A sheet stops roots; so does fabric for a season or two, and mesh does not.
 *
 * @param soilDepth of all that is filled in, mm, as the takeoff has it
 */
export function rootRoomOf(
  { fill, bottom }: Pick<Bed, "fill" | "bottom">,
  soilDepth: number,
  below: GroundBelow,
): RootRoom {
  atLeastZero(soilDepth, "the soil of the bed");
  const own = soilOfTexture(below.texture);
  const ground = below.open && bottom.liner === null ? own : null;
  switch (fill.way) {
    case "native":
      return { depth: soilDepth, soil: own, ground };
    case "mix":
      return { depth: soilDepth, soil: soilOfMix(fill.recipe), ground };
    case "layered":
      return { depth: Math.min(fill.mixDepth, soilDepth), soil: soilOfMix(fill.recipe), ground: null };
    default:
      return unreachable(fill.way);
  }
}

const unreachable = (never: never): never => {
  throw new RangeError(`no way to fill a bed: ${JSON.stringify(never)}`);
};
