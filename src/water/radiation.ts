import { word } from "../words/say.ts";
import { airTemperature } from "./air.ts";
import type { Sky } from "./sky.ts";
import { atLeastZero, within } from "./within.ts";

/** How much sun got through, as measured: hours of bright sunshine a day, or radiation on level ground, MJ/m² a day. */
export type Sunshine =
  | { readonly measured: "hours"; readonly hours: number }
  | { readonly measured: "radiation"; readonly radiationMJ: number };

/** Where the place lies: air over the sea evens out the day's temperatures. */
export type Setting = "interior" | "coast";

/** Adjustment coefficient kRs, °C^-0.5 (FAO-56, chapter 3, for equation 50). */
const TEMPERATURE_FACTOR: Readonly<Record<Setting, number>> = { interior: 0.16, coast: 0.19 };
/** Share of the radiation that a grass reference throws back. */
const ALBEDO = 0.23;
/** Stefan-Boltzmann, MJ/(K⁴ m² day). */
const STEFAN_BOLTZMANN = 4.903e-9;
const KELVIN = 273.16;

/**
 * Solar radiation Rs on level ground from hours of bright sunshine, MJ/m² a day, with the coefficients 0.25 and 0.50 for
 * places where nobody fitted better ones.
 * @param hours 0 up to the daylight hours of the day, of which rounding is forgiven
 * @source FAO-56 (Allen et al. 1998) equation 35
 */
export function radiationFromHours(hours: number, { radiationMJ, daylightHours }: Sky): number {
  // Printed hours may stand a rounding over the computed day.
  within(hours, 0, daylightHours + 0.1, word("the hours of sunshine"));
  if (daylightHours === 0) return 0;
  return (0.25 + 0.5 * Math.min(1, hours / daylightHours)) * radiationMJ;
}

/**
 * Solar radiation Rs guessed from the day's range of temperature, MJ/m² a day: clear days are warm and clear nights cold.
 * For means over a month or at least ten days; on islands it misleads.
 * @source FAO-56 equation 50 (Hargreaves); never more than a clear sky lets through
 */
export function radiationFromRange(
  maxC: number,
  minC: number,
  sky: Sky,
  altitudeM: number,
  setting: Setting,
): number {
  const range = atLeastZero(maxC - minC, word("the maximum temperature over the minimum"));
  const guessed = TEMPERATURE_FACTOR[setting] * Math.sqrt(range) * sky.radiationMJ;
  return Math.min(guessed, clearSkyMJ(sky, altitudeM));
}

/** Radiation under a clear sky Rso, MJ/m² a day. @source FAO-56 equation 37 */
export const clearSkyMJ = ({ radiationMJ }: Sky, altitudeM: number): number =>
  (0.75 + 2e-5 * within(altitudeM, -450, 9000, word("the altitude"))) * radiationMJ;

/** What grass keeps of the solar radiation, Rns, MJ/m² a day. @source FAO-56 equation 38 */
export const netShortwaveMJ = (solarMJ: number): number =>
  (1 - ALBEDO) * atLeastZero(solarMJ, word("the radiation"));

/**
 * What the ground loses to the sky, Rnl, MJ/m² a day.
 * @param clearShare radiation against that of a clear sky, Rs / Rso, 0 to 1
 * @source FAO-56 equation 39
 */
export function netLongwaveMJ(maxC: number, minC: number, vapour: number, clearShare: number): number {
  const hot = airTemperature(maxC, word("the highest temperature")) + KELVIN;
  const cold = airTemperature(minC, word("the lowest temperature")) + KELVIN;
  return (
    STEFAN_BOLTZMANN *
    ((hot ** 4 + cold ** 4) / 2) *
    (0.34 - 0.14 * Math.sqrt(atLeastZero(vapour, word("the vapour pressure")))) *
    (1.35 * within(clearShare, 0, 1, word("the share of clear sky")) - 0.35)
  );
}

/**
 * Share of a clear day's radiation, 0 to 1. In the polar night there is nothing to compare: half is taken, the middle of
 * what FAO-56 gives for nights (0.4 to 0.6 in damp places); evaporation is next to nothing then either way.
 */
export const clearShareOf = (solarMJ: number, clearMJ: number): number =>
  clearMJ > 0 ? Math.min(1, solarMJ / clearMJ) : 0.5;

/**
 * Heat that goes into the ground over a month, G, MJ/m² a day, from the mean temperatures of the months about it. Over a day
 * it may be taken as none (FAO-56 equation 42).
 * @source FAO-56 equation 43
 */
export const soilHeatMJ = (monthBeforeC: number, monthAfterC: number): number =>
  0.07 * (airTemperature(monthAfterC, "the next month") - airTemperature(monthBeforeC, "the month before"));

/** The same where the month to come is not known, from this month and the one before. @source FAO-56 equation 44 */
export const soilHeatSinceMJ = (monthBeforeC: number, monthC: number): number =>
  0.14 * (airTemperature(monthC, "the month") - airTemperature(monthBeforeC, "the month before"));
