/** Where the sun's disc stands among the stars at an instant, seen from the middle of the earth. */
export interface SunPlace {
  /** North positive, degrees. */
  readonly declination: number;
  /** How far the sun is west of due south over the meridian of Greenwich, degrees, -180 to 180. */
  readonly greenwichHourAngle: number;
  /** Astronomical units. */
  readonly distance: number;
}

const RAD = Math.PI / 180;
const SECOND_OF_ARC = 1 / 3600;

/** Noon of 1 January 2000, Universal Time, in the clock's milliseconds. */
const J2000_MS = Date.UTC(2000, 0, 1, 12);
const DAY_MS = 86_400_000;

/**
 * What the even time of the orbits is ahead of the clock, which follows the turning earth, s. Measured: 64 s in 2000,
 * 69 s in 2017 to 2026. Ten seconds move the sun by 0.4 seconds of arc.
 */
const EVEN_TIME_AHEAD = 69;

type Term = readonly [amplitude: number, phase: number, frequency: number];

/**
 * The earth's longitude as seen from the sun, 1e-8 rad: the terms above 2e-6 rad (0.4 seconds of arc) of the series VSOP87
 * (P. Bretagnon and G. Francou, 1988) as printed in J. Meeus, Astronomical Algorithms, 2nd ed. 1998, appendix III.
 */
const LONGITUDE_0: readonly Term[] = [
  [175_347_046, 0, 0],
  [3_341_656, 4.6692568, 6283.07585],
  [34_894, 4.6261, 12566.1517],
  [3497, 2.7441, 5753.3849],
  [3418, 2.8289, 3.5231],
  [3136, 3.6277, 77713.7715],
  [2676, 4.4181, 7860.4194],
  [2343, 6.1352, 3930.2097],
  [1324, 0.7425, 11506.7698],
  [1273, 2.0371, 529.691],
  [1199, 1.1096, 1577.3435],
  [990, 5.233, 5884.927],
  [902, 2.045, 26.298],
  [857, 3.508, 398.149],
  [780, 1.179, 5223.694],
  [753, 2.533, 5507.553],
  [505, 4.583, 18849.228],
  [492, 4.205, 775.523],
  [357, 2.92, 0.067],
  [317, 5.849, 11790.629],
  [284, 1.899, 796.298],
  [271, 0.315, 10977.079],
  [243, 0.345, 5486.778],
  [206, 4.806, 2544.314],
  [205, 1.869, 5573.143],
  [202, 2.458, 6069.777],
];
const LONGITUDE_1: readonly Term[] = [
  [628_331_966_747, 0, 0],
  [206_059, 2.678235, 6283.07585],
  [4303, 2.6351, 12566.1517],
  [425, 1.59, 3.523],
];
const LONGITUDE_2: readonly Term[] = [
  [52_919, 0, 0],
  [8720, 1.0721, 6283.0758],
];
/** Its distance, 1e-8 astronomical units, from the same table. */
const DISTANCE_0: readonly Term[] = [
  [100_013_989, 0, 0],
  [1_670_700, 3.0984635, 6283.07585],
  [13_956, 3.05525, 12566.1517],
  [3084, 5.1985, 77713.7715],
  [1628, 1.1739, 5753.3849],
  [1576, 2.8469, 7860.4194],
];
const DISTANCE_1: readonly Term[] = [[103_019, 1.10749, 6283.07585]];

/**
 * Where the sun stands at an instant: within 3 seconds of arc of the full theory from 1950 to 2100.
 *
 * @source longitude, nutation, aberration and obliquity: J. Meeus, Astronomical Algorithms, 2nd ed. 1998, chapters 22 and
 *   25; sidereal time: the same, chapter 12. The sun's own latitude, under 1.2 seconds of arc, is left out.
 */
export function sunPlace(at: Date): SunPlace {
  const days = (at.getTime() - J2000_MS) / DAY_MS;
  const evenDays = days + EVEN_TIME_AHEAD / 86_400;
  const T = evenDays / 36_525;
  const tau = T / 10;
  const earth = (sum(LONGITUDE_0, tau) + tau * (sum(LONGITUDE_1, tau) + tau * sum(LONGITUDE_2, tau))) * 1e-8;
  const R = (sum(DISTANCE_0, tau) + tau * sum(DISTANCE_1, tau)) * 1e-8;

  const node = (125.04452 - 1934.136261 * T) * RAD;
  const sunMean = (280.4665 + 36_000.7698 * T) * RAD;
  const moonMean = (218.3165 + 481_267.8813 * T) * RAD;
  const nutation =
    SECOND_OF_ARC *
    (-17.2 * Math.sin(node) -
      1.32 * Math.sin(2 * sunMean) -
      0.23 * Math.sin(2 * moonMean) +
      0.21 * Math.sin(2 * node));
  const tilt =
    23.4392911 -
    SECOND_OF_ARC * T * (46.815 + T * (0.00059 - 0.001813 * T)) +
    SECOND_OF_ARC *
      (9.2 * Math.cos(node) +
        0.57 * Math.cos(2 * sunMean) +
        0.1 * Math.cos(2 * moonMean) -
        0.09 * Math.cos(2 * node));

  // 0.09033: from the series' frame to that of the star catalogues; 20.4898: aberration.
  const longitude = (earth / RAD + 180 + nutation - SECOND_OF_ARC * (0.09033 + 20.4898 / R)) * RAD;
  const [sinLongitude, cosLongitude] = [Math.sin(longitude), Math.cos(longitude)];
  const rightAscension = Math.atan2(Math.cos(tilt * RAD) * sinLongitude, cosLongitude) / RAD;

  const centuries = days / 36_525;
  const sidereal =
    280.46061837 +
    360.98564736629 * days +
    centuries * centuries * (0.000387933 - centuries / 38_710_000) +
    nutation * Math.cos(tilt * RAD);
  return {
    declination: Math.asin(Math.sin(tilt * RAD) * sinLongitude) / RAD,
    greenwichHourAngle: halfTurn(sidereal - rightAscension),
    distance: R,
  };
}

function sum(terms: readonly Term[], tau: number): number {
  let total = 0;
  for (const [amplitude, phase, frequency] of terms) total += amplitude * Math.cos(phase + frequency * tau);
  return total;
}

/** The same direction, from -180 up to 180 degrees. */
export const halfTurn = (degrees: number): number => degrees - 360 * Math.round(degrees / 360);
