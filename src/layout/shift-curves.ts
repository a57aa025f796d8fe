import { barriersOf, bars, type Movable } from "../access/barriers.ts";
import { roundZone } from "../access/clear-zones.ts";
import { obstaclesOf } from "../access/obstacles.ts";
import { roomToStand } from "../access/standing.ts";
import { surroundingsOf } from "../access/surroundings.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type Limits, limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { convexSum } from "../geometry/convex.ts";
import { ROUND_CHORDS } from "../geometry/shape.ts";
import { blockedShifts, isNear, shiftsOverSides } from "../geometry/shift.ts";
import type { Point, Ring } from "../geometry/types.ts";

/**
 * In the plane of shifts, where something about a shifted thing changes: the shifts at which it is just so far from one
 * thing that stays. All rings are convex.
 */
export interface Curves {
  /** Shifts that bring it over what it must not stand on or near. */
  readonly forbidden: readonly Ring[];
  /** One for each thing that stays (and each side of the yard) beside which a gap must be a joint or a path. */
  readonly gaps: readonly GapCurves[];
  /** Where ways become wide enough for a barrow or a wheelchair, where routes are just short enough, where patches begin. */
  readonly others: readonly Ring[];
}

export interface GapCurves {
  /** A joint within, a gap outside. */
  readonly joint: readonly Ring[];
  /** A gap within, a path outside. */
  readonly path: readonly Ring[];
}

/** @param far only what can be met by a shift of at most so many mm is looked at */
export function curvesOf(garden: Garden, ids: ReadonlySet<ItemId>, far: number): Curves {
  const shifted = garden.items.filter(
    (item): item is Movable => ids.has(item.id) && (item.kind === "bed" || item.kind === "shed"),
  );
  const each = shifted.map((movable) => curvesOfOne(garden, movable, ids, far));
  return {
    forbidden: each.flatMap(({ forbidden }) => forbidden),
    gaps: each.flatMap(({ gaps }) => gaps),
    others: each.flatMap(({ others }) => others),
  };
}

function curvesOfOne(garden: Garden, movable: Movable, ids: ReadonlySet<ItemId>, far: number): Curves {
  const limits = limitsOf(garden);
  const outline = outlineOf(movable);
  const [joint, path, ...wider] = widthsOf(garden, limits);
  const inReach = (ring: Ring, by = 0) => isNear(outline, ring, far + by);

  const solids = obstaclesOf(garden).filter(
    ({ id, ring }) => !ids.has(id) && inReach(ring, Math.max(path, ...wider)),
  );
  const sides = shiftsOverSides(outline, surroundingsOf(garden).yard);
  const over = [...solids.map(({ ring }) => blockedShifts(outline, ring)), ...sides];
  const grown = (rings: readonly Ring[], by: number) => rings.map((ring) => within(ring, by, movable.turn));

  const zones = barriersOf(garden)
    .filter((barrier) => barrier.what !== "thing" && inReach(barrier.ring) && bars(barrier, movable, garden))
    .flatMap(({ ring }) => blockedShifts(outline, ring));
  const off = keptOff(garden, limits, movable).filter(({ ring, by }) => inReach(ring, by));
  const patches = garden.items.flatMap((item) => (item.kind === "ground" ? [outlineOf(item)] : []));
  return {
    forbidden: [
      ...over.flat(),
      ...zones,
      ...off.flatMap(({ ring, by }) => grown(blockedShifts(outline, ring), by)),
    ],
    gaps:
      movable.kind === "bed"
        ? over.map((rings) => ({ joint: grown(rings, joint), path: grown(rings, path) }))
        : [],
    others: [
      ...over.flatMap((rings) => wider.flatMap((width) => grown(rings, width))),
      ...patches.filter((ring) => inReach(ring)).flatMap((ring) => blockedShifts(outline, ring)),
    ],
  };
}

/** A joint at most, a path at least, and what wheels ask of ways. */
function widthsOf({ gardener }: Garden, limits: Limits): readonly [number, number, ...number[]] {
  const path = roomToStand(gardener, limits);
  const wheels = [
    ...(gardener.barrow ? [limits.barrowWay] : []),
    ...(gardener.wheelchair
      ? [
          limits.wheelchairPinch,
          limits.turnApproach,
          limits.turnAt,
          limits.turnAtException,
          limits.turningCircle,
        ]
      : []),
  ];
  return [limits.together, path, ...new Set(wheels.filter((width) => width > path))];
}

/** What a bed in the ground is to be so far from. */
function keptOff(garden: Garden, limits: Limits, movable: Movable): { ring: Ring; by: number }[] {
  if (movable.kind !== "bed" || movable.legs !== null) return [];
  const trees = garden.items.flatMap((item) => {
    if (item.kind !== "tree") return [];
    const roots = (limits.rootZone * item.canopy) / 2;
    const far = item.species === "black-walnut" ? Math.max(roots, limits.walnut) : roots;
    return [{ ring: roundZone(item.at, far), by: 0 }];
  });
  const painted = new Set(
    garden.items.filter((item) => "oldPaint" in item && item.oldPaint).map(({ id }) => id),
  );
  const walls = obstaclesOf(garden)
    .filter(({ id }) => painted.has(id))
    .map(({ ring }) => ({ ring, by: limits.oldPaint }));
  return [...trees, ...walls];
}

/** All within `by` mm of a convex ring, its round corners drawn with chords outside of the true round. */
function within(ring: Ring, by: number, turn: number): Ring {
  return by > 0 ? convexSum(ring, disc(by, turn)) : ring;
}

/** Turned along with the thing, so that it is exact for gaps square to its sides. */
function disc(radius: number, turn: number): Ring {
  const outer = radius / Math.cos(Math.PI / ROUND_CHORDS);
  return Array.from({ length: ROUND_CHORDS }, (_, i): Point => {
    const angle = ((2 * i + 1) / ROUND_CHORDS) * Math.PI + (turn * Math.PI) / 180;
    return [outer * Math.cos(angle), outer * Math.sin(angle)];
  });
}
