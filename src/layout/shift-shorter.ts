import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Point } from "../geometry/types.ts";
import { scale, subtract } from "../geometry/vector.ts";
import type { Snag } from "../rules/rule.ts";
import { curvesOf } from "./shift-curves.ts";
import { shiftGround } from "./shift-ground.ts";
import type { Trial, Tried } from "./shift-trial.ts";

/** A shift after which the beds stand well, but something is wrong with reach or ways. */
export interface Failed {
  readonly by: Point;
  readonly why: "reach" | "closed" | "ways";
  /** Told where it had to be worked out in any case. */
  readonly snag: Snag | null;
}

/** Shorter by less than this is no matter, mm. */
const CLOSE_ENOUGH = 1;
/** Of the shorter shifts that did not do, so many of the nearest are gone towards, and so many times over. */
const MOST_TOWARDS = 3;
const MOST_ROUNDS = 4;

/**
 * How much soil is within reach, how wide the ways of others are and how long a route is changes between curves too. From
 * a shift that does, one goes towards the shorter ones that did not, for as long as it does; and on from there.
 */
export function shortened(
  garden: Garden,
  ids: ReadonlySet<ItemId>,
  trial: Trial,
  { found, failed }: { readonly found: Point; readonly failed: readonly Failed[] },
): Point {
  if (!failed.some(({ by }) => isShorter(by, found))) return found;
  const { mayStand } = shiftGround(curvesOf(garden, ids, Math.hypot(...found)));
  const seen = new Set<Failed>();
  let best = found;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const from = best;
    const near = failed
      .filter((other) => isShorter(other.by, from) && !seen.has(other))
      .sort((a, b) => apart(a.by, from) - apart(b.by, from));
    for (const other of near.slice(0, MOST_TOWARDS)) {
      seen.add(other);
      if (!isShorter(other.by, best)) continue;
      const better = lastSound(trial, { sound: from, best, other }, mayStand);
      if (isShorter(better, best)) best = better;
    }
    if (best === from) break;
  }
  return best;
}

const isShorter = (by: Point, than: Point): boolean => Math.hypot(...by) < Math.hypot(...than) - CLOSE_ENOUGH;
const apart = (a: Point, b: Point): number => Math.hypot(...subtract(a, b));

/** As far as the test says it does that told the other did not; where others say it does not there, as far as all do. */
function lastSound(
  trial: Trial,
  { sound, best, other }: { readonly sound: Point; readonly best: Point; readonly other: Failed },
  mayStand: (by: Point) => boolean,
): Point {
  const { by, why } = other;
  const isQuick = (at: Point) => mayStand(at) && !fails(trial.at(at));
  const isLikely = (at: Point) => isQuick(at) && (why === "reach" || !trial.at(at).closesWay());
  const isSoundOnGround = (at: Point) =>
    isLikely(at) && !trial.at(at).standsBadly() && trial.at(at).wrongOnGround() === null;
  const isWhole = (at: Point) => isSoundOnGround(at) && trial.at(at).wrongSun() === null;
  // To hold a shift to every rule takes longest, to the sun above all: only one that would be better.
  const held = (at: Point) => !isShorter(at, best) || isWhole(at);
  const likely = lastOf(why === "ways" ? isSoundOnGround : isLikely, sound, by);
  return held(likely) ? likely : lastOf(isWhole, sound, likely);
}

/** Whether one of the quick tests says already that a shift does not do. */
const fails = (tried: Tried): boolean => tried.hasNarrowGap() || tried.losesReach();

function towards(from: Point, to: Point, far: number): Point {
  const share = Math.min(1, far / apart(from, to));
  return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
}

function lastOf(isGood: (by: Point) => boolean, sound: Point, unsound: Point): Point {
  let [good, bad] = [sound, unsound];
  // As a rule the shift found lies where it can go no farther.
  if (!isGood(towards(sound, unsound, 2 * CLOSE_ENOUGH))) return sound;
  while (apart(good, bad) > CLOSE_ENOUGH) {
    const middle = scale([good[0] + bad[0], good[1] + bad[1]], 1 / 2);
    if (isGood(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
