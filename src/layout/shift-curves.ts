import { barriersOf, bars, type Movable } from "../access/barriers.ts";
import { roundZone } from "../access/clear-zones.ts";
import { obstaclesOf } from "../access/obstacles.ts";
import { roomToStand } from "../access/standing.ts";
import { surroundingsOf } from "../access/surroundings.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type Limits, limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { convexPieces } from "../geometry/convex-pieces.ts";
import { boxDistance, boxOf } from "../geometry/gap.ts";
import { boundsOf, centroid } from "../geometry/ring.ts";
import { isNear } from "../geometry/shift.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { sumsOf, sumsOfSides, within } from "./shift-sums.ts";

/**
 * In the plane of shifts, where something about a shifted thing changes: the shifts at which it is just so far from one
 * thing that stays. All rings are convex.
 */
export interface Curves {
  /** Shifts that bring it over what it must not stand on or near. */
  readonly forbidden: readonly Forbidden[];
  /** One for each thing that stays (and each side of the yard) beside which a gap must be a joint or a path. */
  readonly gaps: readonly GapCurves[];
  /** Where ways become wide enough for a barrow or a wheelchair, where routes are just short enough, where patches begin. */
  readonly others: readonly Ring[];
  /** A point well inside each shifted thing, which has to come to lie in the yard; null where the yard is left out. */
  readonly inYard: { readonly yard: Ring; readonly middles: readonly Point[] } | null;
}

export interface Forbidden {
  readonly ring: Ring;
  /** The rule that forbids it. */
  readonly rule: PlaceRule;
}

/** The rules of position that say of every shift by itself whether it will do, those first that are easiest to live with. */
export const PLACE_RULES = [
  "near-old-paint",
  "near-walnut",
  "bed-in-tree-roots",
  "narrow-path",
  "blocked-tap",
  "bed-in-path",
  "blocked-door",
  "overlapping",
  "outside-yard",
] as const;
export type PlaceRule = (typeof PLACE_RULES)[number];

export interface GapCurves {
  /** What stands near each other stands in one cluster: only there can one thing fill the gap to another. */
  readonly cluster: number;
  /** A narrow gap is no snag where a thing of one of these clusters is joined to the bed: that may fill it. */
  readonly excusedBy: readonly number[];
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
    // One bed's clusters are nothing to another's.
    gaps: each.flatMap(({ gaps }, i) =>
      gaps.map((gap) => ({
        ...gap,
        cluster: gap.cluster * each.length + i,
        excusedBy: gap.excusedBy.map((cluster) => cluster * each.length + i),
      })),
    ),
    others: each.flatMap(({ others }) => others),
    inYard: { yard: garden.yard, middles: shifted.map((movable) => middleIn(outlineOf(movable))) },
  };
}

/** The middle of a convex piece of an outline, since that of an L or a U may lie outside of it. */
const middleIn = (outline: Ring): Point => centroid(convexPieces([outline])[0] ?? outline);

/** The same with one rule left out: what would do if it were not for that rule. */
export function withoutRule(curves: Curves, rule: PlaceRule): Curves {
  return {
    ...curves,
    forbidden: curves.forbidden.filter((forbidden) => forbidden.rule !== rule),
    gaps: rule === "narrow-path" ? [] : curves.gaps,
    inYard: rule === "outside-yard" ? null : curves.inYard,
  };
}

function curvesOfOne(
  garden: Garden,
  movable: Movable,
  ids: ReadonlySet<ItemId>,
  far: number,
): Omit<Curves, "inYard"> {
  const limits = limitsOf(garden);
  const outline = outlineOf(movable);
  const [joint, path, ...wider] = widthsOf(garden, limits);
  const inReach = (ring: Ring, by = 0) => isNear(outline, ring, far + by);
  const grown = (rings: readonly Ring[], by: number) => rings.map((ring) => within(ring, by, movable.turn));
  const forbid = (rule: PlaceRule, rings: readonly Ring[]) => rings.map((ring) => ({ ring, rule }));

  const near = obstaclesOf(garden).filter(
    ({ id, ring }) => !ids.has(id) && inReach(ring, Math.max(path, ...wider)),
  );
  const solids = near.map(({ ring }) => sumsOf(outline, ring));
  const { yard } = surroundingsOf(garden);
  const sides = sumsOfSides(outline, yard);
  const over = [...solids, ...sides];
  const zones = barriersOf(garden).flatMap((barrier) => {
    if (barrier.what === "thing" || !inReach(barrier.ring) || !bars(barrier, movable, garden)) return [];
    return forbid(ZONE_RULE[barrier.what], sumsOf(outline, barrier.ring));
  });
  const off = keptOff(garden, limits, movable).filter(({ ring, by }) => inReach(ring, by));
  const patches = garden.items.flatMap((item) => (item.kind === "ground" ? [outlineOf(item)] : []));
  return {
    forbidden: [
      ...forbid("overlapping", solids.flat()),
      ...forbid("outside-yard", sides.flat()),
      ...zones,
      ...off.flatMap(({ ring, by, rule }) => forbid(rule, grown(sumsOf(outline, ring), by))),
    ],
    gaps:
      movable.kind === "bed"
        ? clustersOf(
            near.map(({ ring }) => ring),
            yard,
            path,
          ).map((clusters, i) => ({
            ...clusters,
            joint: grown(over[i]!, joint),
            path: grown(over[i]!, path),
          }))
        : [],
    others: [
      ...over.flatMap((rings) => wider.flatMap((width) => grown(rings, width))),
      ...patches.filter((ring) => inReach(ring)).flatMap((ring) => sumsOf(outline, ring)),
    ],
  };
}

/**
 * The clusters of things that stand less than a path apart, judged by their bounds: what fills a gap narrower than a
 * path stands in it. The yard's outline fills nothing, but is one thing: beside one side joined to it no other counts.
 * @returns for each ring and then for each side of the yard
 */
function clustersOf(
  rings: readonly Ring[],
  yard: Ring,
  path: number,
): Pick<GapCurves, "cluster" | "excusedBy">[] {
  const boxes = rings.map(boxOf);
  const found = rings.map((_, i) => i);
  boxes.forEach((box, i) => {
    for (let j = 0; j < i; j++) {
      const [own, other] = [found[i]!, found[j]!];
      if (own === other || boxDistance(box, boxes[j]!) >= path) continue;
      for (let k = 0; k <= i; k++) if (found[k] === own) found[k] = other;
    }
  });
  const ofYard = rings.length;
  return [
    ...found.map((cluster) => ({ cluster, excusedBy: [cluster] })),
    ...yard.map((corner, i) => {
      const side = boundsOf([corner, yard[(i + 1) % yard.length]!]);
      const near = found.filter((_, k) => boxDistance(boxes[k]!, side) < path);
      return { cluster: ofYard, excusedBy: [ofYard, ...new Set(near)] };
    }),
  ];
}

const ZONE_RULE = {
  "keep-clear": "overlapping",
  path: "bed-in-path",
  opening: "blocked-door",
  tap: "blocked-tap",
} as const satisfies Record<string, PlaceRule>;

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

interface KeptOff {
  readonly ring: Ring;
  readonly by: number;
  readonly rule: PlaceRule;
}

/** What a bed in the ground is to be so far from. */
function keptOff(garden: Garden, limits: Limits, movable: Movable): KeptOff[] {
  if (movable.kind !== "bed" || movable.legs !== null) return [];
  const trees = garden.items.flatMap((item): KeptOff[] => {
    if (item.kind !== "tree") return [];
    const roots = (limits.rootZone * item.canopy) / 2;
    const ground = { ring: roundZone(item.at, roots), by: 0, rule: "bed-in-tree-roots" as const };
    if (item.species !== "black-walnut") return [ground];
    return [ground, { ring: roundZone(item.at, limits.walnut), by: 0, rule: "near-walnut" }];
  });
  const painted = new Set(
    garden.items.filter((item) => "oldPaint" in item && item.oldPaint).map(({ id }) => id),
  );
  const walls = obstaclesOf(garden)
    .filter(({ id }) => painted.has(id))
    .map(({ ring }): KeptOff => ({ ring, by: limits.oldPaint, rule: "near-old-paint" }));
  return [...trees, ...walls];
}
