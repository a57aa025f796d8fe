import { daysSince1970 } from "./day.ts";
import { halfTurn, sunPlace } from "./sun-place.ts";
import { checkPlace, sunPosition } from "./sun-position.ts";

/** A day's sun at a place. */
export interface SunTimes {
  /** The sun at its highest, due south or due north. */
  readonly noon: Date;
  /** Null where the sun does not rise in the half day before noon. */
  readonly rise: Date | null;
  /** Null where the sun does not set in the half day after noon. */
  readonly set: Date | null;
  /** Hours of the day with the sun up: 0 in the polar night, 24 in the polar day. */
  readonly dayLength: number;
  /** Whether the sun stays up or stays down all day; null on a day with a rise or a set. */
  readonly polar: "day" | "night" | null;
}

/**
 * Altitude of the middle of the disc when its upper edge shows at the horizon through plain air: 34' of refraction and
 * 16' of half a disc, as the almanacs have it (J. Meeus, Astronomical Algorithms, 2nd ed. 1998, chapter 15).
 */
const UPPER_EDGE = -0.8333;

const MINUTE_MS = 60_000;
const HALF_DAY_MS = 12 * 60 * MINUTE_MS;
/** Degrees of hour angle to the clock's milliseconds. */
const MS_PER_DEGREE = HALF_DAY_MS / 180;

/**
 * Sunrise, noon, sunset and the length of the day.
 *
 * @param day "2026-06-21": the day of the place's own sun, from midnight to midnight by local mean time. Its sunset may
 *   fall on another date by Universal Time.
 * @param latitude, longitude degrees, north and east positive
 * @param options.refraction true: the upper edge of the disc as it shows through the air, as almanacs print it. False: the
 *   middle of the disc over a level horizon without air, as sun hours are counted; the day is then 7 minutes shorter at the
 *   equator and 20 at 60 degrees in June.
 * @throws RangeError for a day that is none or a place that is not on earth
 */
export function sunTimes(
  day: string,
  latitude: number,
  longitude: number,
  { refraction = true }: { readonly refraction?: boolean } = {},
): SunTimes {
  checkPlace(latitude, longitude);
  const horizon = refraction ? UPPER_EDGE : 0;
  const noon = transit(
    daysSince1970(day) * 2 * HALF_DAY_MS + HALF_DAY_MS - longitude * 4 * MINUTE_MS,
    longitude,
  );
  const above = (ms: number) => sunPosition(new Date(ms), latitude, longitude).altitude - horizon;
  const [before, after] = [noon - HALF_DAY_MS, noon + HALF_DAY_MS];
  const rise = crossing(above, before, noon);
  const set = crossing(above, noon, after);
  const polar = rise === null && set === null ? (above(noon) > 0 ? "day" : "night") : null;
  const up = polar === "night" ? 0 : (set ?? after) - (rise ?? before);
  return {
    noon: new Date(noon),
    rise: rise === null ? null : new Date(rise),
    set: set === null ? null : new Date(set),
    dayLength: up / (60 * MINUTE_MS),
    polar,
  };
}

function transit(near: number, longitude: number): number {
  let ms = near;
  // The clock sun and the real one part by 17 minutes at most; each round leaves a thousandth of the error.
  for (let round = 0; round < 3; round++) {
    ms -= halfTurn(sunPlace(new Date(ms)).greenwichHourAngle + longitude) * MS_PER_DEGREE;
  }
  return Math.round(ms);
}

/** The millisecond at which a function changes sign between two instants, or null if it has the same at both. */
function crossing(of: (ms: number) => number, from: number, to: number): number | null {
  const rises = of(to) > 0;
  if (of(from) > 0 === rises) return null;
  let [low, high] = [from, to];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (of(middle) > 0 === rises) high = middle;
    else low = middle;
  }
  return high;
}
