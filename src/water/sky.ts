import { word } from "../words/say.ts";
import { YEAR_DAYS } from "./calendar.ts";
import { within } from "./within.ts";

/** What the sun sends to a level place above the air on one day, and for how long. */
export interface Sky {
  /** Inverse relative distance earth to sun; about 1.033 in January, 0.967 in July. */
  readonly relativeDistance: number;
  readonly declinationRad: number;
  /** Hour angle at sunset: 0 in the polar night, pi in the polar day. */
  readonly sunsetRad: number;
  /** Extraterrestrial radiation Ra, MJ/m² a day. */
  readonly radiationMJ: number;
  /** Daylight hours N: the middle of the sun's disc over a level horizon, without refraction. */
  readonly daylightHours: number;
}

const RAD = Math.PI / 180;
/** MJ/m² a minute. */
const SOLAR_CONSTANT = 0.082;

/** The part of MJ/m² that a mm of water takes to evaporate at about 20 °C: 1 / 2.45 (FAO-56 equation 20). */
export const MM_PER_MJ = 0.408;

/**
 * Radiation above the air and daylight of a day, at any latitude of both hemispheres, the polar day and night included.
 *
 * The southern sky is the northern one of half a year later but for the earth's distance from the sun: the south gets
 * up to 7 % more in its summer and less in its winter.
 *
 * @param latitude degrees, north positive
 * @param day of the year, 1 for 1 January; 366 at most
 * @throws RangeError outside those ranges
 * @source Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, equations 21, 23, 24, 25 and 34
 */
export function skyOf(latitude: number, day: number): Sky {
  const phi = within(latitude, -90, 90, word("the latitude")) * RAD;
  const angle = (2 * Math.PI * within(day, 1, YEAR_DAYS + 1, "the day of the year")) / YEAR_DAYS;
  const relativeDistance = 1 + 0.033 * Math.cos(angle);
  const declinationRad = 0.409 * Math.sin(angle - 1.39);
  // Beyond -1 and 1 the sun does not set or does not rise.
  const cosine = -Math.tan(phi) * Math.tan(declinationRad);
  const sunsetRad = Math.acos(Math.min(1, Math.max(-1, cosine)));
  const radiationMJ =
    ((24 * 60) / Math.PI) *
    SOLAR_CONSTANT *
    relativeDistance *
    (sunsetRad * Math.sin(phi) * Math.sin(declinationRad) +
      Math.cos(phi) * Math.cos(declinationRad) * Math.sin(sunsetRad));
  return {
    relativeDistance,
    declinationRad,
    sunsetRad,
    radiationMJ: Math.max(0, radiationMJ),
    daylightHours: (24 / Math.PI) * sunsetRad,
  };
}
