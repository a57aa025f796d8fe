import { say } from "../words/say.ts";
import { language } from "../words/speaker.ts";
import { rounded } from "./decimals.ts";
import { FOOT, type Units } from "./length.ts";

/** Figures other than lengths, as they stand in the ledger and on the build sheet. */

const LITRES_PER_CUBIC_FOOT = (FOOT / 100) ** 3;
const CUBIC_FEET_PER_CUBIC_YARD = 27;
/** Exact since 1959. */
const KG_PER_POUND = 0.45359237;

/** Three figures that count, never more than two decimals: 3.25, 29.6, 842. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`not a figure: ${value}`);
  const size = Math.abs(value);
  const decimals = size < 10 ? 2 : size < 100 ? 1 : 0;
  // "-0" would be read as a loss.
  const text = rounded(value, decimals);
  return text === "-0" ? "0" : text;
}

/** @param mm2 square millimetres */
export const formatArea = (mm2: number, units: Units): string =>
  units === "us" ? `${figure(mm2 / FOOT ** 2)} ft²` : `${figure(mm2 / 1e6)} m²`;

/** Cubic feet, or litres up to a cubic metre. */
export const formatVolume = (litres: number, units: Units): string => {
  if (units === "us") return `${figure(litres / LITRES_PER_CUBIC_FOOT)} ft³`;
  return litres < 1000 ? `${figure(Math.round(litres))} L` : `${figure(litres / 1000)} m³`;
};

/** A volume as soil yards sell it: cubic yards or cubic metres. */
export const formatBulk = (litres: number, units: Units): string =>
  units === "us"
    ? `${figure(litres / LITRES_PER_CUBIC_FOOT / CUBIC_FEET_PER_CUBIC_YARD)} yd³`
    : `${figure(litres / 1000)} m³`;

export const formatWeight = (kg: number, units: Units): string =>
  units === "us" ? `${figure(kg / KG_PER_POUND)} lb` : `${figure(kg)} kg`;

/**
 * @param currency ISO 4217 code
 * @param cents false rounds to whole units, for totals
 * @throws RangeError for a code that is not three letters
 */
export const formatMoney = (amount: number, currency: string, cents = true): string =>
  new Intl.NumberFormat(language(), {
    style: "currency",
    currency,
    currencyDisplay: "narrowSymbol",
    ...(cents ? {} : { maximumFractionDigits: 0 }),
  }).format(amount);

/** A slope as rise over run: 0.05 is `1:20`, nothing is `level`. */
export function formatRatio(slope: number): string {
  if (!(slope >= 0)) throw new RangeError(`not a slope: ${slope}`);
  return slope === 0 ? say`level` : `1:${figure(Math.round(10 / slope) / 10)}`;
}

/** A share of the whole: 0.81 is `81 %`. */
export const formatShare = (share: number): string => `${Math.round(share * 100)} %`;

export const formatHours = (hours: number): string => `${figure(Math.round(hours * 10) / 10)} h`;
