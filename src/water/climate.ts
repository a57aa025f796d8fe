import { say, word } from "../words/say.ts";
import { airTemperature, USUAL_WIND_MS, windAt2m } from "./air.ts";
import { MONTHS, middleOf } from "./calendar.ts";
import { type Humidity, lowestHumidityPercent, vapourKPa } from "./humidity.ts";
import {
  radiationFromHours,
  radiationFromRange,
  type Setting,
  type Sunshine,
  soilHeatMJ,
} from "./radiation.ts";
import { hargreaves, meanTemperature, penmanMonteith } from "./reference.ts";
import { type Sky, skyOf } from "./sky.ts";
import { atLeastZero } from "./within.ts";

/** What a person knows of a month: temperatures and rain always, the rest where a station near by tells it. */
export interface MonthWeather {
  /** Mean daily maximum and minimum, °C. */
  readonly maxC: number;
  readonly minC: number;
  /** Of the whole month, mm. */
  readonly rain: number;
  readonly humidity: Humidity | null;
  readonly sunshine: Sunshine | null;
  /** Mean wind, m/s, and the height of the gauge over the ground, mm. */
  readonly wind: { readonly ms: number; readonly height: number } | null;
}

/** January first. */
export type Climate = readonly MonthWeather[];

export interface Place {
  /** Degrees, north positive. */
  readonly latitude: number;
  /** Above the sea, m. */
  readonly altitudeM: number;
  readonly setting: Setting;
}

export type Guessed = "humidity" | "sunshine" | "wind";

/** A month's mean day as the crop coefficients and the soil want it. */
export interface ReferenceMonth {
  /** Reference evapotranspiration, mm a day. */
  readonly et0: number;
  readonly method: "penman-monteith" | "hargreaves";
  /** What the first method had to guess, or the second did without. */
  readonly guessed: readonly Guessed[];
  /** At 2 m, m/s. */
  readonly windMs: number;
  readonly lowestHumidityPercent: number;
}

/**
 * Reference evapotranspiration of each month. Penman-Monteith where of humidity, sunshine and wind at least one was
 * measured, the missing ones guessed as FAO-56 says (dew point at the night's lowest, radiation from the day's range, 2 m/s
 * of wind); Hargreaves where temperatures are all there is.
 *
 * @returns twelve months, January first
 * @throws RangeError unless there are twelve months, each possible
 * @source FAO-56 (Allen et al. 1998), chapters 3 and 4
 */
export function referenceMonths(climate: Climate, place: Place): readonly ReferenceMonth[] {
  if (climate.length !== 12) throw new RangeError(`a climate has twelve months, not ${climate.length}`);
  return MONTHS.map((month) => referenceMonth(climate, month, place));
}

function referenceMonth(climate: Climate, month: number, place: Place): ReferenceMonth {
  const weather = climate[month]!;
  atLeastZero(weather.rain, word("the rain of a month"));
  const { maxC, minC, humidity, sunshine, wind } = weather;
  meanTemperature(maxC, minC);
  const sky = skyOf(place.latitude, middleOf(month));
  const vapour = vapourKPa(humidity, maxC, minC);
  const windMs = wind ? windAt2m(wind.ms, wind.height) : USUAL_WIND_MS;
  const guessed: Guessed[] = [];
  if (!humidity) guessed.push("humidity");
  if (!sunshine) guessed.push("sunshine");
  if (!wind) guessed.push("wind");
  const known = { guessed, windMs, lowestHumidityPercent: lowestHumidityPercent(vapour, maxC) };
  if (guessed.length === 3) return { ...known, method: "hargreaves", et0: hargreaves(maxC, minC, sky) };
  const steps = penmanMonteith(
    {
      maxC,
      minC,
      vapourKPa: vapour,
      solarMJ: solarMJ(weather, sky, place),
      windMs,
      soilHeatMJ: soilHeatMJ(meanOf(climate[(month + 11) % 12]!), meanOf(climate[(month + 1) % 12]!)),
    },
    sky,
    place.altitudeM,
  );
  return { ...known, method: "penman-monteith", et0: steps.et0 };
}

function solarMJ({ sunshine, maxC, minC }: MonthWeather, sky: Sky, { altitudeM, setting }: Place): number {
  if (!sunshine) return radiationFromRange(maxC, minC, sky, altitudeM, setting);
  if (sunshine.measured === "hours") return radiationFromHours(sunshine.hours, sky);
  const solar = atLeastZero(sunshine.radiationMJ, word("the radiation"));
  if (solar > sky.radiationMJ) {
    const most = sky.radiationMJ.toFixed(1);
    const wrong = say`no more than ${most} MJ/m² reaches the place, not ${solar}`;
    throw new RangeError(wrong);
  }
  return solar;
}

const meanOf = ({ maxC, minC }: MonthWeather): number =>
  (airTemperature(maxC, word("the highest temperature")) +
    airTemperature(minC, word("the lowest temperature"))) /
  2;
