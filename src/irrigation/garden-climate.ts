import type { GardenClimate } from "../garden/climate-field.ts";
import type { Garden } from "../garden/garden.ts";
import { type MonthWeather, type ReferenceMonth, referenceMonths } from "../water/climate.ts";

/** A garden's climate as the water of its beds is reckoned by it, January first. */
export interface KnownClimate {
  readonly reference: readonly ReferenceMonth[];
  /** Of each month, mm. */
  readonly rain: readonly number[];
}

/** Null where nobody has given a climate; what is wrong with it where there can be none like it. */
export type ClimateFound = KnownClimate | { readonly problem: string } | null;

const known = new WeakMap<GardenClimate, { readonly latitude: number; readonly found: ClimateFound }>();

/** The climate a garden has been given; remembered by the climate itself. */
export function climateOf({ climate, site }: Pick<Garden, "climate" | "site">): ClimateFound {
  if (climate === null) return null;
  const before = known.get(climate);
  if (before?.latitude === site.latitude) return before.found;
  const found = workedOut(climate, site.latitude);
  known.set(climate, { latitude: site.latitude, found });
  return found;
}

function workedOut(
  { months, altitude, setting, gaugeHeight }: GardenClimate,
  latitude: number,
): ClimateFound {
  const weather = months.map(
    ({ maxC, minC, rain, humidity, sunHours, windMs }): MonthWeather => ({
      maxC,
      minC,
      rain,
      humidity: humidity === null ? null : { measured: "mean", meanPercent: humidity },
      sunshine: sunHours === null ? null : { measured: "hours", hours: sunHours },
      wind: windMs === null ? null : { ms: windMs, height: gaugeHeight },
    }),
  );
  try {
    const reference = referenceMonths(weather, { latitude, altitudeM: altitude, setting });
    return { reference, rain: months.map(({ rain }) => rain) };
  } catch (error) {
    // A file may hold what no station ever measured, such as a wind gauge an inch over the ground.
    if (error instanceof RangeError) return { problem: error.message };
    throw error;
  }
}
