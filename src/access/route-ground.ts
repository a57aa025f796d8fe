import type { Ring } from "../geometry/types.ts";
import { isFree, type KeptOff, keptOff, type Solid } from "./kept-off.ts";
import { type Legs, legsFrom } from "./route-sight.ts";
import { outermost, TURNING, type Turn, type TurningGround, turnsAround } from "./route-turns.ts";

/** Ground to walk on, with the corners one may turn at. */
export interface RouteGround extends TurningGround {
  /** Half the width asked for: how far off a walker's middle is when they touch something. */
  readonly wanted: number;
  /** Index into `solids` of what has this outline. */
  readonly numberOf: ReadonlyMap<Ring, number>;
  /** Straight walks on from a turn; worked out when first asked for, for all searches on this ground. */
  readonly legsFrom: (turn: number) => Legs;
}

/**
 * Ground for one half-width. Turns lie half a width from their corners and the sides between them cut in a little: by so
 * much, under 2 % of the half-width (4 mm for somebody on foot), may a walk come nearer to an outline.
 */
export function routeGround(yard: Ring, rings: readonly Ring[], wanted: number): RouteGround {
  const half = wanted * Math.cos(TURNING / 2);
  const kept = keptOff(yard, rings, half);
  const turns: Turn[] = [];
  const turnsOf = kept.solids.map((solid) => {
    const free = freeTurns(kept, solid);
    turns.push(...free);
    return free.map((_, i) => turns.length - free.length + i);
  });
  const known: Legs[] = [];
  const ground: RouteGround = {
    ...kept,
    wanted,
    turns,
    turnsOf,
    numberOf: new Map(kept.solids.map(({ ring }, i) => [ring, i])),
    legsFrom: (turn) => {
      known[turn] ??= legsFrom(ground, turns[turn]!.at, turns[turn]!);
      return known[turn];
    },
  };
  return ground;
}

interface FreeTurns {
  readonly half: number;
  readonly near: readonly Solid[];
  readonly turns: readonly Turn[];
}
const freeTurnsOf = new WeakMap<Solid, FreeTurns[]>();
/** A bed's turns are asked for at the widths of a walker, a wheelchair and a hose. */
const MOST_WIDTHS = 3;

/** The turns of a solid that nothing stands upon; the same as long as all that is near it stays the same. */
function freeTurns(kept: KeptOff, solid: Solid): readonly Turn[] {
  const { half, solids, yard } = kept;
  const reach = outermost(solid, half) + half;
  const near = solid.isYard
    ? solids
    : solids.filter(
        ({ x, y, radius, isYard }) =>
          isYard || (x - solid.x) ** 2 + (y - solid.y) ** 2 <= (reach + radius) ** 2,
      );
  const before = freeTurnsOf.get(solid) ?? [];
  const same = before.find((other) => other.half === half && sameList(other.near, near));
  if (same) return same.turns;
  const among: KeptOff = { half, yard, solids: near };
  const turns = turnsAround(solid.ring, half, solid.isYard).filter(({ at }) => isFree(among, at));
  freeTurnsOf.set(solid, [{ half, near, turns }, ...before].slice(0, MOST_WIDTHS));
  return turns;
}

const sameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a.length === b.length && a.every((thing, i) => thing === b[i]);
