import type { Site } from "../garden/garden.ts";
import { localMidnight, monthOf } from "./day.ts";
import type { SunSettings } from "./options.ts";
import { skylineAt } from "./skyline.ts";
import { halfTurn, sunPlace } from "./sun-place.ts";
import { sunPosition } from "./sun-position.ts";
import { shadowPerHeight } from "./sunward.ts";

/** One look at the sun while it is up, standing for the minutes about it. */
export interface Instant {
  /** Index among the days looked at. */
  readonly day: number;
  /** Minutes since midnight by the mean time of the place's longitude. */
  readonly minute: number;
  /** 1 for January. */
  readonly month: number;
  /** Whether trees that do not say for themselves are in leaf. */
  readonly inLeaf: boolean;
  /** How far shadows lie from under a point for each mm of its height. */
  readonly perX: number;
  readonly perY: number;
  readonly part: PartOfDay;
}

export type PartOfDay = "morning" | "midday" | "afternoon";

const MINUTE_MS = 60_000;
/** Midday is from 10 to 2 by the sun: 30 degrees either side of south, or of north in the southern hemisphere. */
const MIDDAY = 30;

interface Remembered {
  readonly asked: string;
  readonly instants: readonly Instant[];
}
const remembered = new WeakMap<Site, Remembered[]>();
/** The live ones, the settled ones, those of the months and some more. */
const MOST_REMEMBERED = 6;

/**
 * Every look at the sun over the days, in order, while its middle is above the horizon without air and the skyline.
 * Remembered by the site, which stays the same while anything in the garden is changed.
 */
export function instantsOf(site: Site, settings: SunSettings): readonly Instant[] {
  const known = remembered.get(site) ?? [];
  remembered.set(site, known);
  const { days, step, skyline, leafMonths } = settings;
  const asked = JSON.stringify([days, step, skyline, leafMonths]);
  let found = known.find((one) => one.asked === asked);
  if (!found) {
    found = { asked, instants: looksAt(site, settings) };
    known.unshift(found);
    known.length = Math.min(known.length, MOST_REMEMBERED);
  }
  return found.instants;
}

function looksAt(site: Site, settings: SunSettings): Instant[] {
  const { days, step, skyline, leafMonths } = settings;
  return days.flatMap((date, day) => {
    const midnight = localMidnight(date, site.longitude);
    const month = monthOf(date);
    const inLeaf = leafMonths.includes(month);
    // The day's equation of time at noon serves to tell morning from midday.
    const noon = sunPlace(new Date(midnight + 720 * MINUTE_MS)).greenwichHourAngle + site.longitude;
    const instants: Instant[] = [];
    for (let minute = step / 2; minute < 1440; minute += step) {
      const sun = sunPosition(new Date(midnight + minute * MINUTE_MS), site.latitude, site.longitude);
      if (sun.altitude <= 0 || sun.altitude <= skylineAt(skyline, sun.azimuth)) continue;
      const [perX, perY] = shadowPerHeight(sun, site.north);
      const part = partOfDay(halfTurn(noon) + minute / 4 - 180);
      instants.push({ day, minute, month, inLeaf, perX, perY, part });
    }
    return instants;
  });
}

function partOfDay(hourAngle: number): PartOfDay {
  if (hourAngle < -MIDDAY) return "morning";
  return hourAngle <= MIDDAY ? "midday" : "afternoon";
}
