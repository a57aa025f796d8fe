import { type CropWater, ON_SUPPORTS_HEIGHT, type Stages } from "./crop-water.ts";
import { aboveZero, atLeastZero, within } from "./within.ts";

/** The crop coefficient of every day of a season: flat, rising, flat, falling (FAO-56, figure 34). */
export interface KcCurve {
  readonly stages: Stages;
  readonly initial: number;
  readonly mid: number;
  readonly end: number;
}

/** The air in which a stage is spent. */
export interface StageAir {
  /** At 2 m, m/s. */
  readonly windMs: number;
  readonly lowestHumidityPercent: number;
}

/**
 * Stages that together take so many days, in the printed proportion. FAO-56 asks for lengths as they are in the place: the
 * days a crop stands are what its grower knows.
 */
export function stagesOver(stages: Stages, days: number): Stages {
  const factor = aboveZero(days, "the days of a season") / seasonDaysOf(stages);
  return [stages[0] * factor, stages[1] * factor, stages[2] * factor, stages[3] * factor];
}

export const seasonDaysOf = (stages: Stages): number =>
  aboveZero(
    stages.reduce((sum, days) => sum + atLeastZero(days, "the days of a stage"), 0),
    "the days of a season",
  );

/**
 * A tabled coefficient of the mid or late stage carried over to other air: windy dry air draws more, and more from a tall
 * crop. Coefficients under 0.45, of crops left to dry out, are kept as they are.
 *
 * The equation holds for wind of 1 to 6 m/s, lowest humidity of 20 to 80 % and crops of 0.1 to 10 m; what lies beyond is
 * taken at the end of the range.
 *
 * @param height of the crop, mm
 * @throws RangeError for a wind under 0 or a humidity outside 0 to 100 %
 * @source Allen, Pereira, Raes and Smith 1998, FAO-56, equations 62 and 65
 */
export function kcInAir(tabled: number, height: number, air: StageAir): number {
  aboveZero(tabled, "the crop coefficient");
  const wind = clamp(atLeastZero(air.windMs, "the wind"), 1, 6);
  const humidity = clamp(within(air.lowestHumidityPercent, 0, 100, "the humidity"), 20, 80);
  const metres = clamp(aboveZero(height, "the height of the crop") / 1000, 0.1, 10);
  if (tabled < 0.45) return tabled;
  return tabled + (0.04 * (wind - 2) - 0.004 * (humidity - 45)) * (metres / 3) ** 0.3;
}

/**
 * The coefficients of a crop through a season of so many days, in the air of its mid and late stages.
 *
 * @param season `initial` is the tabled coefficient of the first stage or one worked out from how the soil is wetted and mulched
 */
export function kcCurve(
  crop: CropWater,
  season: { readonly days: number; readonly onSupports: boolean; readonly initial: number },
  air: { readonly mid: StageAir; readonly late: StageAir },
): KcCurve {
  const climbs = season.onSupports && crop.kcMidOnSupports !== null;
  const height = climbs ? ON_SUPPORTS_HEIGHT : crop.height;
  const mid = climbs && crop.kcMidOnSupports !== null ? crop.kcMidOnSupports : crop.kcMid;
  return {
    stages: stagesOver(crop.stages, season.days),
    initial: atLeastZero(season.initial, "the initial crop coefficient"),
    mid: kcInAir(mid, height, air.mid),
    end: kcInAir(crop.kcEnd, height, air.late),
  };
}

/**
 * The coefficient on a day of the season; 0 outside it.
 * @param day after planting, fractions allowed: 0 at planting
 * @source FAO-56 equation 66
 */
export function kcOn({ stages, initial, mid, end }: KcCurve, day: number): number {
  const [first, second, third] = stages;
  const last = seasonDaysOf(stages);
  if (!(day >= 0 && day <= last)) return 0;
  if (day <= first) return initial;
  if (day < first + second) return initial + ((day - first) / second) * (mid - initial);
  const fallsFrom = first + second + third;
  if (day <= fallsFrom) return mid;
  return mid + ((day - fallsFrom) / (last - fallsFrom)) * (end - mid);
}

const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
