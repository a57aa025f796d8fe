import {
  type BedMonth,
  type BestPlace,
  bedMonths,
  bedPlane,
  bestPlace,
  type Garden,
  type ItemId,
  SUN_CLOSER,
  SUN_LIVE,
  SUN_SETTLED,
  type SunCost,
  type SunGrid,
  type SunMap,
  sunCosts,
  sunFollowing,
  sunHours,
} from "../../src/index.ts";
import { type GardenDelta, withDelta } from "../live/delta.ts";

/**
 * How closely to look. "following" is for while one thing is dragged: what the others leave is kept, so that each move
 * takes a small part of "live", which looks as closely. "closer" is for a hand that rests while it holds; "settled" is as
 * close as it gets.
 */
export type Closeness = "following" | "live" | "closer" | "settled";

/** Questions about the sun in one garden after another, each told as what has changed since the one before. */
export interface SunAnswers {
  /** The yard's cells are those of bare ground: a bed's frame shades a foot of path, which would draw a fringe round it. */
  hours(delta: GardenDelta, closeness: Closeness): SunMap;
  plane(delta: GardenDelta, id: ItemId): SunGrid | null;
  bedMonths(delta: GardenDelta, id: ItemId): readonly BedMonth[];
  sunCosts(delta: GardenDelta): readonly SunCost[];
  bestPlace(delta: GardenDelta, id: ItemId): BestPlace | null;
}

/** One thing that has been taken hold of. */
interface Followed {
  readonly id: ItemId;
  readonly follow: (moved: Garden) => SunMap;
  /** The garden it was last followed to: the next one is followed if nothing but that thing has changed since. */
  readonly to: Garden;
}

export function createSunAnswers(): SunAnswers {
  let garden: Garden | null = null;
  let followed: Followed | null = null;

  const told = (delta: GardenDelta): Garden => {
    garden = withDelta(garden, delta);
    return garden;
  };

  const following = (delta: GardenDelta): SunMap => {
    const before = garden;
    const now = told(delta);
    const id = onlyChanged(delta) ?? (followed?.to === before && isUnchanged(delta) ? followed.id : null);
    if (id === null) return sunHours(now, LIVE);
    const follow =
      followed && followed.id === id && followed.to === before
        ? followed.follow
        : sunFollowing(now, id, LIVE);
    followed = { id, follow, to: now };
    return follow(now);
  };

  return {
    hours(delta, closeness) {
      if (closeness === "following") return following(delta);
      followed = null;
      return sunHours(told(delta), LOOKS[closeness]);
    },
    plane: (delta, id) => bedPlane(told(delta), id, SUN_LIVE),
    bedMonths: (delta, id) => bedMonths(told(delta), id),
    sunCosts: (delta) => sunCosts(told(delta)),
    bestPlace: (delta, id) => bestPlace(told(delta), id),
  };
}

const LIVE = { ...SUN_LIVE, bareGround: true };
const LOOKS = {
  live: LIVE,
  closer: { ...SUN_CLOSER, bareGround: true },
  settled: { ...SUN_SETTLED, bareGround: true },
} as const;

const isUnchanged = ({ rest, order, changed }: GardenDelta): boolean =>
  rest === null && order === null && changed.length === 0;

/** The one thing that a delta tells of; null where it tells of more, or of less. */
function onlyChanged({ rest, order, changed }: GardenDelta): ItemId | null {
  const [only, another] = changed;
  return rest === null && order === null && only && !another ? only.id : null;
}
