import type { Site } from "../garden/garden.ts";
import { localMidnight, monthOf } from "./day.ts";
import type { SkylinePoint, SunSettings } from "./options.ts";
import { halfTurn, sunPlace } from "./sun-place.ts";
import { type SunPosition, sunPosition } from "./sun-position.ts";
import { shadowPerHeight } from "./sunward.ts";

/** One look at the sun while it is up, standing for the minutes about it. */
export interface Instant {
  /** Index among the days looked at. */
  readonly day: number;
  /** Minutes since midnight by the mean time of the place's longitude. */
  readonly minute: number;
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

/** Every look at the sun over the days, in order, while its middle is above the horizon without air and the skyline. */
export function instantsOf(site: Site, settings: SunSettings): Instant[] {
  const { days, step, skyline, leafMonths } = settings;
  return days.flatMap((date, day) => {
    const midnight = localMidnight(date, site.longitude);
    const inLeaf = leafMonths.includes(monthOf(date));
    // The day's equation of time at noon serves to tell morning from midday.
    const noon = sunPlace(new Date(midnight + 720 * MINUTE_MS)).greenwichHourAngle + site.longitude;
    const instants: Instant[] = [];
    for (let minute = step / 2; minute < 1440; minute += step) {
      const sun = sunPosition(new Date(midnight + minute * MINUTE_MS), site.latitude, site.longitude);
      if (sun.altitude <= 0 || sun.altitude <= skylineAt(skyline, sun)) continue;
      const [perX, perY] = shadowPerHeight(sun, site.north);
      instants.push({ day, minute, inLeaf, perX, perY, part: partOfDay(halfTurn(noon) + minute / 4 - 180) });
    }
    return instants;
  });
}

function partOfDay(hourAngle: number): PartOfDay {
  if (hourAngle < -MIDDAY) return "morning";
  return hourAngle <= MIDDAY ? "midday" : "afternoon";
}

/** Height of the horizon under the sun, degrees: on straight lines between the points given, which are in order. */
function skylineAt(skyline: readonly SkylinePoint[], { azimuth }: SunPosition): number {
  const [first, last] = [skyline[0], skyline.at(-1)];
  if (!first || !last) return 0;
  const after = skyline.find((point) => point.azimuth > azimuth);
  const before = skyline.findLast((point) => point.azimuth <= azimuth);
  // Before the first point and after the last one the line runs on through north.
  const [from, to] = [
    before ?? { ...last, azimuth: last.azimuth - 360 },
    after ?? { ...first, azimuth: first.azimuth + 360 },
  ];
  const span = to.azimuth - from.azimuth;
  const share = span === 0 ? 0 : (azimuth - from.azimuth) / span;
  return from.altitude + share * (to.altitude - from.altitude);
}
