import { fromMemory, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { atLeastZero } from "./within.ts";

export const EFFECTIVE_RAIN_SOURCE: Source = fromMemory(
  "USDA Soil Conservation Service, Technical Release 21 (1967), as in the National Engineering Handbook part 623, chapter 2",
);

/** The factor was fitted to stores of 0.75 to 7.5 in; a larger one is taken as 7.5 in, a smaller one by the same curve. */
const MOST_STORE_IN = 7.5;

/**
 * Rain of a month that serves the crop, mm: what neither runs through nor is gone before it is wanted. Fitted to 50 years of
 * daily balances at 22 stations of the United States; a mean over years, not a promise for one.
 *
 * @param rain of the month, mm
 * @param cropEt evapotranspiration of the crop over the month, mm
 * @param store usable storage D, mm: the water that may be taken between two waterings
 * @returns never more than fell nor than the crop gives off
 * @throws RangeError for amounts below zero
 */
export function effectiveRain(rain: number, cropEt: number, store: number): number {
  const fell = atLeastZero(rain, "the rain");
  const wanted = atLeastZero(cropEt, "the water given off");
  const inches = atLeastZero(store, "the store") / INCH;
  // The equation is printed in inches.
  const byRain = 0.70917 * (fell / INCH) ** 0.82416 - 0.11556;
  const byNeed = 10 ** ((0.02426 * wanted) / INCH);
  const served = storageFactor(Math.min(inches, MOST_STORE_IN)) * byRain * byNeed * INCH;
  return Math.min(fell, wanted, Math.max(0, served));
}

/** 1 for a store of 3 in. */
const storageFactor = (inches: number): number =>
  0.531747 + 0.295164 * inches - 0.057697 * inches ** 2 + 0.003804 * inches ** 3;
