import { apparentAltitude } from "./refraction.ts";
import { sunPlace } from "./sun-place.ts";

/** A direction in the sky, degrees. */
export interface SunPosition {
  /** Of the middle of the disc above a level horizon; below 0 at night. */
  readonly altitude: number;
  /** Clockwise from true north, 0 up to 360. Means little within a few degrees of straight overhead. */
  readonly azimuth: number;
}

const RAD = Math.PI / 180;

/** How far the sun looks lower from the ground than from the earth's middle at sunset, degrees: 8.794 seconds of arc. */
const PARALLAX = 8.794 / 3600;

/**
 * Where the sun stands for somebody in a garden.
 *
 * @param at the instant; its clock is Universal Time, whatever zone it is shown in
 * @param latitude, longitude degrees, north and east positive
 * @param options.refraction whether the air lifts the sun, as it does for the eye: half a degree at the horizon, nothing to
 *   speak of above 10 degrees. Left out unless asked for, and in all sums of sun hours.
 * @returns degrees: altitude of the disc's middle, and azimuth clockwise from true north. Within 0.01 degrees of the
 *   almanacs, with the air 0.02 above 5 degrees of altitude.
 * @throws RangeError for an invalid date or a place that is not on earth
 * @source hour angle and declination to altitude and azimuth: J. Meeus, Astronomical Algorithms, 2nd ed. 1998, chapter 13,
 *   written with vectors, which stay exact overhead and at the horizon; parallax: chapter 40
 */
export function sunPosition(
  at: Date,
  latitude: number,
  longitude: number,
  { refraction = false }: { readonly refraction?: boolean } = {},
): SunPosition {
  checkPlace(latitude, longitude);
  if (Number.isNaN(at.getTime())) throw new RangeError("the sun has no position at an invalid date");
  const { declination, greenwichHourAngle, distance } = sunPlace(at);
  const hour = (greenwichHourAngle + longitude) * RAD;
  const [sinDec, cosDec] = [Math.sin(declination * RAD), Math.cos(declination * RAD)];
  const [sinLat, cosLat] = [Math.sin(latitude * RAD), Math.cos(latitude * RAD)];
  const east = -cosDec * Math.sin(hour);
  const north = sinDec * cosLat - cosDec * Math.cos(hour) * sinLat;
  const up = sinLat * sinDec + cosLat * cosDec * Math.cos(hour);
  const level = Math.hypot(east, north);
  const geometric = Math.atan2(up, level) / RAD - (PARALLAX / distance) * level;
  const azimuth = Math.atan2(east, north) / RAD;
  return {
    altitude: refraction ? apparentAltitude(geometric) : geometric,
    azimuth: azimuth < 0 ? azimuth + 360 : azimuth,
  };
}

/** @throws RangeError for a place that is not on earth */
export function checkPlace(latitude: number, longitude: number): void {
  if (!(Math.abs(latitude) <= 90)) throw new RangeError(`latitude must be within ±90, not ${latitude}`);
  if (!(Math.abs(longitude) <= 360)) throw new RangeError(`longitude must be within ±360, not ${longitude}`);
}
