import { word } from "../words/say.ts";
import { airTemperature, saturationKPa } from "./air.ts";
import { within } from "./within.ts";

/** How damp the air is, in whichever way it was measured. Shares of saturation are in percent, as gauges show them. */
export type Humidity =
  | { readonly measured: "vapour"; readonly kPa: number }
  | { readonly measured: "dew-point"; readonly celsius: number }
  | { readonly measured: "range"; readonly maxPercent: number; readonly minPercent: number }
  | { readonly measured: "max"; readonly maxPercent: number }
  | { readonly measured: "mean"; readonly meanPercent: number };

/**
 * Actual vapour pressure ea, kPa. Where nothing was measured the dew point is taken to be the night's lowest temperature,
 * which holds where the ground is watered; in dry country the dew point lies 2 to 3 °C lower and this is too damp.
 *
 * @param maxC mean daily maximum, °C
 * @param minC mean daily minimum, °C
 * @throws RangeError for shares outside 0 to 100 %, a maximum under the minimum, or air that holds more than it can
 * @source FAO-56 (Allen et al. 1998) equations 14 (dew point), 17 (range), 18 (max), 19 (mean) and 48 (nothing measured)
 */
export function vapourKPa(humidity: Humidity | null, maxC: number, minC: number): number {
  const atMax = saturationKPa(maxC);
  const atMin = saturationKPa(minC);
  if (!humidity) return atMin;
  switch (humidity.measured) {
    case "vapour":
      return within(humidity.kPa, 0, atMax, word("the vapour pressure"));
    case "dew-point":
      return saturationKPa(
        within(airTemperature(humidity.celsius, word("the dew point")), -90, maxC, word("the dew point")),
      );
    case "range": {
      const max = percent(humidity.maxPercent);
      const min = within(humidity.minPercent, 0, humidity.maxPercent, word("the lowest humidity")) / 100;
      return (atMin * max + atMax * min) / 2;
    }
    case "max":
      return atMin * percent(humidity.maxPercent);
    case "mean":
      return (percent(humidity.meanPercent) * (atMax + atMin)) / 2;
    default:
      return unreachable(humidity);
  }
}

/**
 * Lowest relative humidity of the day, percent: the vapour there is against what the air could hold at its hottest.
 * @source FAO-56 equations 10 and 64
 */
export const lowestHumidityPercent = (vapour: number, maxC: number): number =>
  Math.min(100, (100 * vapour) / saturationKPa(maxC));

const percent = (share: number): number => within(share, 0, 100, word("the humidity")) / 100;

const unreachable = (never: never): never => {
  throw new RangeError(`no kind of humidity: ${JSON.stringify(never)}`);
};
