import { fromMemory, practice, type Source } from "../garden/source.ts";
import { timberById } from "./timbers.ts";

/** How long something lasts in a garden, years, from a bad case to a good one. */
export interface Life {
  readonly years: readonly [shortest: number, longest: number];
  readonly source: Source;
}

const life = (shortest: number, longest: number, source: Source): Life => ({
  years: [shortest, longest],
  source,
});

const GALVANISED = practice("galvanised mesh lasts roughly 10 years in soil");
const METAL = fromMemory(
  "makers of galvanised and aluminium-zinc panels give 20 years and more; low confidence",
);
const MASONRY = practice("blocks laid dry on level ground outlast their gardener; 40 years is taken");
const FABRIC = fromMemory("fabric beds last 3 to 5 seasons in sun; low confidence");
const LINERS = fromMemory(
  "woven fabric 5 to 10 years, polyethylene sheet under soil 10 to 20; low confidence",
);
const LOOSE = practice("bark and wood chips rot in 2 to 3 years, gravel sinks away in 15 to 25");
const YEARLY = practice("soft mulches are gone within the year");
const PAVED = practice("paving and bricks 30 years and more");
const DRIPPED = fromMemory(
  "drip line 5 to 10 years out of the sun, plain tubing and its fittings 10 to 20, timers and regulators 4 to 8; low confidence",
);
const EDGED = practice("treated boards in the ground 10 to 15 years, metal strip 20 to 30");

const TABLE: Readonly<Record<string, Life>> = {
  metal: life(20, 30, METAL),
  masonry: life(40, 60, MASONRY),
  "fabric-bed": life(3, 5, FABRIC),
  mesh: life(10, 10, GALVANISED),
  "liner-fabric": life(5, 10, LINERS),
  "liner-sheet": life(10, 20, LINERS),
  straw: life(1, 1, YEARLY),
  leaves: life(1, 1, YEARLY),
  "grass-clippings": life(1, 1, YEARLY),
  compost: life(1, 1, YEARLY),
  "wood-chips": life(2, 3, LOOSE),
  bark: life(2, 3, LOOSE),
  gravel: life(15, 25, LOOSE),
  "firm-gravel": life(15, 25, LOOSE),
  paving: life(30, 50, PAVED),
  "edging-timber": life(10, 15, EDGED),
  "edging-metal": life(20, 30, EDGED),
  "edging-brick": life(30, 50, PAVED),
  "drip-line": life(5, 10, DRIPPED),
  tubing: life(10, 20, DRIPPED),
  "tap-devices": life(4, 8, DRIPPED),
};

/** The middle of what softwoods without preservative last in soil. */
const ANY_TIMBER = life(
  5,
  10,
  practice("a timber that is not in the table is taken to last 5 to 10 years in soil"),
);

export function lifeOfTimber(id: string): Life {
  const timber = timberById(id);
  return timber ? { years: timber.life, source: timber.lifeSource } : ANY_TIMBER;
}

/**
 * How long a wall of another kind, or a material, lasts.
 * @throws RangeError for what is not in the table
 */
export function lifeOf(id: string): Life {
  const found = TABLE[id];
  if (!found) throw new RangeError(`no life is known of "${id}"`);
  return found;
}

/**
 * How often something is bought again within the horizon, after the first time: it is renewed whenever the middle of
 * its life is over, and not at the very end.
 */
export function renewals([shortest, longest]: Life["years"], horizon: number): number {
  const middle = (shortest + longest) / 2;
  return Math.max(0, Math.ceil(horizon / middle - 1e-9) - 1);
}
