import type { GardenClimate } from "../garden/climate-field.ts";

/** Days' highest and lowest, °C, rain of the month, mm, humidity, of a hundred, wind, m/s; January first. */
const MONTHS: readonly (readonly [
  maxC: number,
  minC: number,
  rain: number,
  humidity: number,
  windMs: number,
])[] = [
  [28.5, 16, 22, 48, 3.4],
  [28, 16, 20, 50, 3.2],
  [25.5, 14, 26, 53, 2.9],
  [22, 11.5, 42, 58, 2.6],
  [18, 9, 64, 66, 2.5],
  [15, 7, 74, 72, 2.6],
  [14, 6.5, 70, 71, 2.8],
  [15.5, 7, 62, 67, 3],
  [18, 8.5, 54, 62, 3.2],
  [21, 10.5, 44, 56, 3.4],
  [24, 12.5, 32, 51, 3.4],
  [26.5, 14.5, 28, 49, 3.4],
];

/** Round figures of a coast with dry summers, south of the equator. Made up for the example: no station's, and said so. */
export const EXAMPLE_CLIMATE: GardenClimate = {
  station: "Example climate",
  altitude: 60,
  setting: "coast",
  gaugeHeight: 10_000,
  months: MONTHS.map(([maxC, minC, rain, humidity, windMs]) => ({
    maxC,
    minC,
    rain,
    humidity,
    sunHours: null,
    windMs,
  })),
};
