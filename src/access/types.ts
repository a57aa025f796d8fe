import type { ItemId } from "../garden/fields.ts";
import type { Point, Region, Ring } from "../geometry/types.ts";

/** How somebody gets about; each needs another width (limits: standingRoom, kneelingWay, barrowWay, wheelchairWay). */
export type Purpose = "foot" | "kneel" | "barrow" | "wheelchair";

/** What bounds a gap: a thing in the yard, or the yard's own outline. */
export type Side = ItemId | "yard";

/** The narrowest place between two things that stand apart. */
export interface Gap {
  readonly between: readonly [Side, Side];
  readonly width: number;
  /** Where it is narrowest, on the first and on the second outline: the ends of a dimension line. */
  readonly from: Point;
  readonly to: Point;
}

/** The widest way there is from an entrance to a bed. */
export interface Way {
  /** The gate or door it starts from. */
  readonly entrance: ItemId;
  /** Clear width at its narrowest place, mm; 0 where the bed is sealed off. */
  readonly width: number;
  /** That narrowest place; null only where nothing on the way is narrower than the search looks (never for width 0). */
  readonly narrowest: Gap | null;
}

/** A walk along free ground round what stands in it. */
export interface Route {
  readonly from: ItemId;
  readonly to: ItemId;
  readonly length: number;
  readonly points: readonly Point[];
}

/** Part of a bed's outside edge, as a line of points, at which somebody can stand, kneel or sit. */
export type Stretch = readonly Point[];

export interface BedAccess {
  readonly id: ItemId;
  /** Where the gardener can really get to and stand: the standing edges. */
  readonly standing: readonly Stretch[];
  /** Reach that applies (adult, child or seated gardener: the least of those who garden here), mm. */
  readonly reach: number;
  /** Soil beyond reach from every standing edge. */
  readonly outOfReach: readonly Region[];
  readonly outOfReachAreaMm2: number;
  /** The soil farthest from any standing edge, and how far that is; Infinity where no edge can be stood at. */
  readonly farthest: { readonly at: Point; readonly distance: number };
  /** What closes edges of this bed off, most of the edge first. */
  readonly closedBy: readonly Side[];
  /** The widest way from any gate and from any door; null where the garden has none. */
  readonly fromGate: Way | null;
  readonly fromDoor: Way | null;
  /** Walk from the kitchen door (any door where none is marked) to the bed; null without a door or without a way. */
  readonly kitchen: Route | null;
  /** Hose from the nearest tap along the ground to the bed's far corner; null without a tap or without a way. */
  readonly hose: Route | null;
}

/** A place where a wheelchair can turn: a circle, or a T (60 in square, 36 in arms) turned by `turn` degrees. */
export type TurningSpace =
  | { readonly kind: "circle"; readonly at: Point; readonly diameter: number }
  | { readonly kind: "t"; readonly at: Point; readonly turn: number; readonly outline: Ring };

/** Facts about getting around one garden: what `access(garden)` answers. */
export interface Access {
  /** Yard less everything that stands in it. */
  readonly freeGround: readonly Region[];
  /** Every pair of things (a bed on at least one side) nearer than `GAP_SIGHT`, and each bed to the yard's outline. */
  readonly gaps: readonly Gap[];
  readonly beds: readonly BedAccess[];
  /** What the wheelchair rules look at; null where no wheelchair is used. */
  readonly wheelchair: WheelchairAccess | null;
}

export interface WheelchairAccess {
  /** The nearest turning space to each bed that a wheelchair can get to, within `near` of its standing edge; null if none fits. */
  readonly turningAt: readonly { readonly bed: ItemId; readonly space: TurningSpace | null }[];
  /** Ends of ways where one has to turn or back out. */
  readonly deadEnds: readonly { readonly at: Point; readonly space: TurningSpace | null }[];
  /** Half turns round the end of a bed narrower than the limit, with the widths before, at and after it. */
  readonly halfTurns: readonly {
    readonly around: ItemId;
    readonly at: Point;
    readonly element: number;
    readonly approach: number;
    readonly turn: number;
    readonly leave: number;
  }[];
  /** Short pinches on the widest ways: width, length along the way, and the run to the next pinch. */
  readonly pinches: readonly {
    readonly bed: ItemId;
    readonly gap: Gap;
    readonly run: number;
    readonly toNext: number | null;
  }[];
  /** Ground along the way to each bed that is soft or steep: one for each bed and piece of ground, where it is worst. */
  readonly ground: readonly WayGround[];
  /** Longest run of way narrower than a passing space without one, by bed. */
  readonly passing: readonly { readonly bed: ItemId; readonly run: number; readonly at: Point }[];
}

/** Gaps wider than this are of no interest to any rule, mm. */
export const GAP_SIGHT = 1600;

/** A place on a way, and the ground there. */
export interface WayGround {
  readonly bed: ItemId;
  /** The path or patch one goes on; null for the yard at large. */
  readonly on: ItemId | null;
  readonly at: Point;
  readonly firm: boolean;
  /** Rise over run along the way and across it. */
  readonly along: number;
  readonly across: number;
  /** The way to the bed, as it is walked: what a firm path would have to follow. */
  readonly route: Route;
}
