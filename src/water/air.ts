import { word } from "../words/say.ts";
import { aboveZero, within } from "./within.ts";

/**
 * The state of the air, by the equations of FAO-56 (Allen, Pereira, Raes and Smith 1998), chapter 3. Temperatures in °C,
 * pressures in kPa.
 */

/** Colder or hotter air than this was never measured. */
export const airTemperature = (celsius: number, what: string): number => within(celsius, -90, 60, what);

/** Saturation vapour pressure e° at a temperature, kPa. @source FAO-56 equation 11 */
export const saturationKPa = (celsius: number): number =>
  0.6108 * Math.exp((17.27 * airTemperature(celsius, word("the temperature"))) / (celsius + 237.3));

/**
 * Mean saturation vapour pressure es of a day, kPa: from both ends of the day's range, since that of the mean temperature
 * would be too low.
 * @source FAO-56 equation 12
 */
export const meanSaturationKPa = (maxC: number, minC: number): number =>
  (saturationKPa(maxC) + saturationKPa(minC)) / 2;

/** Slope of the saturation curve, kPa/°C, at the mean temperature. @source FAO-56 equation 13 */
export const saturationSlope = (celsius: number): number =>
  (4098 * saturationKPa(celsius)) / (celsius + 237.3) ** 2;

/**
 * Pressure of the air by height above the sea, kPa, for a standard atmosphere at 20 °C.
 * @param altitudeM metres; -450 (the lowest dry land) to 9000
 * @source FAO-56 equation 7
 */
export const airPressureKPa = (altitudeM: number): number =>
  101.3 * ((293 - 0.0065 * within(altitudeM, -450, 9000, word("the altitude"))) / 293) ** 5.26;

/** Psychrometric constant, kPa/°C. @source FAO-56 equation 8 */
export const psychrometricConstant = (pressureKPa: number): number =>
  0.665e-3 * aboveZero(pressureKPa, word("the air pressure"));

/** Mean of more than 2000 stations, taken where nobody measured the wind (FAO-56, chapter 3). */
export const USUAL_WIND_MS = 2;

/**
 * Wind at 2 m above grass from the wind at another height, m/s.
 * @param windMs 0 to 100 m/s
 * @param height of the gauge over the ground, mm; 500 (lower the formula has no meaning) to 200 000
 * @source FAO-56 equation 47
 */
export function windAt2m(windMs: number, height: number): number {
  const heightM = within(height, 500, 200_000, word("the height of the wind gauge")) / 1000;
  return (within(windMs, 0, 100, word("the wind")) * 4.87) / Math.log(67.8 * heightM - 5.42);
}
