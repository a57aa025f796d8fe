import type { Site } from "../garden/garden.ts";
import { leafMonths } from "./leaf.ts";
import { ANY_YEAR, type Season, sampleDays, seasonDays, seasonOf } from "./season.ts";
import type { SkylinePoint } from "./skyline.ts";

/** What sun hours are wanted of. All have defaults, most of them from the site. */
export interface SunOptions {
  /** The site's; the growing season of the hemisphere where it has none. */
  readonly season?: Season;
  /** The year the season starts in; 2026, which is as good as any other. */
  readonly year?: number;
  /** How many days stand for the season, or which days by name ("2026-06-21"). */
  readonly days?: number | readonly string[];
  /** Minutes from one look at the sun to the next, a whole number of times in a day. */
  readonly step?: number;
  /** Side of the yard's cells, mm. */
  readonly cell?: number;
  /** Months in leaf, 1 for January, of trees that drop their leaves and do not say when; those of the hemisphere. */
  readonly leafMonths?: readonly number[];
  /** The site's. Straight lines from point to point all the way round; a level horizon where there is none. */
  readonly skyline?: readonly SkylinePoint[];
  /** The yard's cells as if there were no beds, which throw a fringe of shade round themselves; false unless asked for. */
  readonly bareGround?: boolean;
}

/**
 * For while something is dragged: within 1 minute a day of the settled answer on the mean, 6 at the worst, but for what the
 * other days bring, 1.4 on the mean.
 */
export const SUN_LIVE = { days: 12, step: 10 } as const;
/** For when the hand rests but still holds: within half a minute a day of all days of the season on the mean. */
export const SUN_CLOSER = { days: 24, step: 5 } as const;
/** For when the hand lets go: the mean over all days of the season within a third of a minute. */
export const SUN_SETTLED = { days: 24, step: 2 } as const;

/** 6 in. */
const CELL = 152.4;
/** More cells along a side than any screen has points to show them. */
const SMALLEST_CELL = 10;
const MINUTES = 1440;

/** Options with nothing left open. */
export interface SunSettings {
  readonly season: Season;
  readonly days: readonly string[];
  readonly step: number;
  readonly cell: number;
  readonly leafMonths: readonly number[];
  readonly skyline: readonly SkylinePoint[];
  readonly bareGround: boolean;
}

/** @throws RangeError naming the option that cannot be */
export function settingsFor(site: Site, options: SunOptions): SunSettings {
  const { season = seasonOf(site), year = ANY_YEAR, step = SUN_LIVE.step, cell = CELL } = options;
  const { days = SUN_LIVE.days, skyline = site.skyline } = options;
  if (!(step > 0 && Number.isInteger(MINUTES / step))) {
    throw new RangeError(`a day must hold a whole number of steps, not ${MINUTES / step} of ${step} minutes`);
  }
  if (!(cell >= SMALLEST_CELL))
    throw new RangeError(`cells must be at least ${SMALLEST_CELL} mm, not ${cell}`);
  const chosen = typeof days === "number" ? sampleDays(seasonDays(season, year), days) : days;
  if (chosen.length === 0) throw new RangeError("sun hours need at least one day");
  return {
    season,
    days: chosen,
    step,
    cell,
    leafMonths: options.leafMonths ?? leafMonths(site.latitude),
    skyline,
    bareGround: options.bareGround ?? false,
  };
}
