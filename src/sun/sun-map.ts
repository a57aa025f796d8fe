import type { ItemId } from "../garden/fields.ts";
import type { Point } from "../geometry/types.ts";
import type { Cells } from "./cells.ts";
import type { PartOfDay } from "./instants.ts";
import type { Season } from "./season.ts";

/** Hours of direct sun a day over a season, for the whole yard and for each bed. */
export interface SunMap {
  readonly season: Season;
  /** The days that stand for the season, "2026-06-21". */
  readonly days: readonly string[];
  /** Minutes from one look at the sun to the next. */
  readonly step: number;
  readonly yard: SunGrid;
  /** In the order of the garden. */
  readonly beds: readonly BedSun[];
}

/** Square cells over the yard. */
export interface SunGrid extends Cells {
  /**
   * Hours a day on the mean, row by row; on a bed at the height of its soil, elsewhere on the ground. NaN where there is
   * nothing to say: outside the yard, and under a building, a wall or a fence.
   */
  readonly hours: Float32Array;
}

/** What a bed gets. Hours are hours of full sun a day: an hour under slats that pass a third counts as 20 minutes. */
export interface BedSun {
  readonly id: ItemId;
  /** Height of its soil above the ground, mm: where the light is looked at. */
  readonly soil: number;
  /** Mean over its soil and the season. */
  readonly hours: number;
  /** The spot with the least, and where it is on the plan. */
  readonly worst: { readonly hours: number; readonly at: Point };
  /** The mean again, by the time of day: midday is from 10 to 2 by the sun. They add up to it. */
  readonly parts: Readonly<Record<PartOfDay, number>>;
  /** Mean over its soil for each day looked at, in their order. */
  readonly byDay: readonly DayHours[];
  readonly bestDay: DayHours;
  readonly worstDay: DayHours;
  /** What shades it, the one that costs it most first. Null while something else is dragged: ask `bedShade`. */
  readonly shade: readonly Shade[] | null;
}

export interface DayHours {
  readonly day: string;
  readonly hours: number;
}

/** What one thing does to a bed. */
export interface Shade {
  readonly id: ItemId;
  /** Hours a day the bed would gain if this alone were not there. Two things that shade it at once cost it nothing alone. */
  readonly hours: number;
  /** When its shadow takes at least half of the bed's sun, whatever else shades it then. */
  readonly spells: readonly Spell[];
}

/** A time without a break on one of the days looked at. */
export interface Spell {
  readonly day: string;
  /** Minutes since midnight by the mean time of the place's longitude: four minutes for each degree off the zone's own. */
  readonly from: number;
  readonly to: number;
}
