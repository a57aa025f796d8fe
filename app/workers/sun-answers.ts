import {
  type Garden,
  type Item,
  SUN_LIVE,
  SUN_SETTLED,
  type SunGrid,
  type SunMap,
  sunHours,
} from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

export interface SunAnswer {
  readonly map: SunMap;
  /** Hours on the bare ground, as it would be without the beds; null where they are as in the answer before. */
  readonly ground: SunGrid | null;
}

interface KnownGround {
  readonly garden: Garden;
  readonly standing: readonly Item[];
  readonly settled: boolean;
}

/**
 * Answers questions about one garden after another, each told as what has changed since the one before.
 *
 * Lines of equal hours are wanted of the bare ground: a bed's frame shades a foot of path beside it, which would only
 * draw a fringe round every bed. So they stay as they are, and are not worked out anew, while beds are moved.
 */
export function createSunAnswers(): (delta: GardenDelta, settled: boolean) => SunAnswer {
  let garden: Garden | null = null;
  let known: KnownGround | null = null;

  return (delta, settled) => {
    garden = withDelta(garden, delta);
    const options = settled ? SUN_SETTLED : SUN_LIVE;
    const map = sunHours(garden, options);
    const standing = garden.items.filter(({ kind }) => kind !== "bed");
    if (known && sameGround(known, garden, standing) && (known.settled || !settled)) {
      return { map, ground: null };
    }
    known = { garden, standing, settled };
    return { map, ground: sunHours({ ...garden, items: standing }, options).yard };
  };
}

const sameGround = ({ garden, standing }: KnownGround, now: Garden, standingNow: readonly Item[]): boolean =>
  garden.yard === now.yard &&
  garden.site === now.site &&
  standing.length === standingNow.length &&
  standing.every((item, i) => item === standingNow[i]);
