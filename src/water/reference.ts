import { word } from "../words/say.ts";
import {
  airPressureKPa,
  airTemperature,
  meanSaturationKPa,
  psychrometricConstant,
  saturationSlope,
} from "./air.ts";
import { clearShareOf, clearSkyMJ, netLongwaveMJ, netShortwaveMJ } from "./radiation.ts";
import { MM_PER_MJ, type Sky } from "./sky.ts";
import { atLeastZero, within } from "./within.ts";

/** The weather of a day, or of a month's mean day, with nothing left to estimate. */
export interface Weather {
  /** Mean daily maximum and minimum, °C. */
  readonly maxC: number;
  readonly minC: number;
  readonly vapourKPa: number;
  /** Radiation on level ground, MJ/m² a day. */
  readonly solarMJ: number;
  /** At 2 m, m/s. */
  readonly windMs: number;
  /** Into the ground, MJ/m² a day. */
  readonly soilHeatMJ: number;
}

/** What the equation was made of, in the order a person would check it by hand; kPa, kPa/°C and MJ/m² a day. */
export interface ReferenceSteps {
  readonly slope: number;
  readonly psychrometric: number;
  readonly saturationKPa: number;
  readonly clearSkyMJ: number;
  readonly netShortwaveMJ: number;
  readonly netLongwaveMJ: number;
  readonly netMJ: number;
  /** Reference evapotranspiration ET0, mm a day; never below zero. */
  readonly et0: number;
}

/**
 * Reference evapotranspiration of a day by the FAO Penman-Monteith equation: what a well-watered short green grass gives to
 * the air.
 *
 * For daily to monthly means. Dew is not counted: where the equation comes out below zero, zero is given.
 *
 * @throws RangeError for a minimum above the maximum, a wind outside 0 to 100 m/s, or radiation below zero
 * @source Allen, Pereira, Raes and Smith 1998, FAO Irrigation and Drainage Paper 56, equation 6
 */
export function penmanMonteith(weather: Weather, sky: Sky, altitudeM: number): ReferenceSteps {
  const { maxC, minC, vapourKPa, solarMJ, windMs } = weather;
  const meanC = meanTemperature(maxC, minC);
  within(windMs, 0, 100, word("the wind"));
  const slope = saturationSlope(meanC);
  const psychrometric = psychrometricConstant(airPressureKPa(altitudeM));
  const saturationKPa = meanSaturationKPa(maxC, minC);
  const clear = clearSkyMJ(sky, altitudeM);
  const shortwave = netShortwaveMJ(solarMJ);
  const longwave = netLongwaveMJ(maxC, minC, vapourKPa, clearShareOf(solarMJ, clear));
  const netMJ = shortwave - longwave;
  const byHeat = MM_PER_MJ * slope * (netMJ - weather.soilHeatMJ);
  const byDryness = psychrometric * (900 / (meanC + 273)) * windMs * (saturationKPa - vapourKPa);
  const et0 = (byHeat + byDryness) / (slope + psychrometric * (1 + 0.34 * windMs));
  return {
    slope,
    psychrometric,
    saturationKPa,
    clearSkyMJ: clear,
    netShortwaveMJ: shortwave,
    netLongwaveMJ: longwave,
    netMJ,
    et0: Math.max(0, et0),
  };
}

/**
 * Reference evapotranspiration from temperatures alone, mm a day: for means over a week or more, best over a month. It
 * gives too little where it blows (over 3 m/s) and too much where the air is damp.
 *
 * @param maxC mean daily maximum, °C
 * @param minC mean daily minimum, °C
 * @throws RangeError for a minimum above the maximum
 * @source FAO-56 equation 52 (Hargreaves and Samani 1985), Ra as mm of water; zero below -17.8 °C
 */
export function hargreaves(maxC: number, minC: number, { radiationMJ }: Sky): number {
  const meanC = meanTemperature(maxC, minC);
  return Math.max(0, 0.0023 * (meanC + 17.8) * Math.sqrt(maxC - minC) * MM_PER_MJ * radiationMJ);
}

/** Mean of the day's ends, as FAO-56 has it (equation 9). @throws RangeError for a minimum above the maximum */
export function meanTemperature(maxC: number, minC: number): number {
  airTemperature(minC, word("the lowest temperature"));
  airTemperature(maxC, word("the highest temperature"));
  atLeastZero(maxC - minC, word("the highest temperature over the lowest"));
  return (maxC + minC) / 2;
}
