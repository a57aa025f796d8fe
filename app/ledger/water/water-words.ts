import {
  type BedWaterYear,
  figure,
  formatWater,
  INCH,
  MONTH_DAYS,
  type MonthNeed,
  say,
  sayCount,
  type Units,
} from "../../../src/index.ts";

/** Depth of water as rain is told: decimal inches, or millimetres. */
export const waterDepth = (mm: number, units: Units): string =>
  units === "us" ? say`${figure(mm / INCH)} in` : `${figure(mm)} mm`;

/** In the garden's measure first, then in the other: hoses and butts are sold in both. */
export const bothMeasures = (litres: number, units: Units): string =>
  `${formatWater(litres, units)} (${formatWater(litres, units === "us" ? "metric" : "us")})`;

/** What a month's need comes to in a week. */
export const aWeek = (ofMonth: number, month: number): number => (ofMonth * 7) / MONTH_DAYS[month]!;

const FOUR_WEEKS = 28;

/** How often, in whole days; a store that lasts less than two days is watered daily. */
export function everyWords(everyDays: number): string {
  const days = Math.max(1, Math.floor(everyDays));
  if (days >= FOUR_WEEKS) return say`once a month`;
  return days === 1 ? say`every day` : sayCount(days, { one: "every day", other: "every {{count}} days" });
}

/** One step of the reckoning: what it is, and its figure. */
export interface Step {
  readonly what: string;
  readonly figure: string;
}

/** How a month's water came about, from the lawn of the reference to what leaves the tap. */
export function stepsOf(
  need: MonthNeed,
  month: number,
  { areaMm2 }: BedWaterYear,
  efficiency: number,
  units: Units,
): readonly Step[] {
  const week = (mm: number) => waterDepth(aWeek(mm, month), units);
  return [
    { what: say`Reference evapotranspiration, a day`, figure: waterDepth(need.et0, units) },
    { what: say`Crop coefficient, mean of the bed`, figure: figure(need.kc) },
    { what: say`The crops give off in a week`, figure: week(need.cropEt) },
    { what: say`Rain that serves them in a week`, figure: week(need.effectiveRain) },
    { what: say`To be given in a week`, figure: week(need.need) },
    {
      what: say`Over the soil`,
      figure: formatWater((aWeek(need.need, month) * areaMm2) / 1e6, units),
    },
    { what: say`Share that reaches the roots`, figure: `${figure(efficiency * 100)} %` },
    { what: say`Leaves the tap in a week`, figure: formatWater(need.litresAWeek, units) },
  ];
}
