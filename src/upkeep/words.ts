import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { monthDayOf } from "../planting/year-day.ts";
import { figure } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";
import { listed } from "../words/phrases.ts";
import { countedWord, say, sayCount } from "../words/say.ts";
import { language } from "../words/speaker.ts";

export { capital as capitalised, listed } from "../words/phrases.ts";

/** How days, beds and small amounts are told in the tasks of a year. */

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** "26 Apr", "26. April" for a day of a year of 365; days past its end are taken round. */
export function dayWords(day: number): string {
  const [month = 1, date = 1] = monthDayOf(day).split("-").map(Number);
  return language() === "de" ? inGerman(month, date) : `${date} ${MONTHS[month - 1]}`;
}

/** The month in full: a short one's point would meet the sentence's. */
const inGerman = (month: number, date: number): string =>
  new Intl.DateTimeFormat("de", { day: "numeric", month: "long", timeZone: "UTC" }).format(
    Date.UTC(2001, month - 1, date),
  );

const MOST_NAMED = 3;

/** Beds in a sentence: their names while they are few, "all 9 beds" where it is all of them. */
export function bedsWords(beds: readonly Bed[], all: number): string {
  if (beds.length > 1 && beds.length === all) return all === 2 ? say`both beds` : say`all ${all} beds`;
  const names = beds.map(nameOf);
  if (names.length <= MOST_NAMED) return listed(names);
  return say`${names.slice(0, MOST_NAMED - 1).join(", ")} and ${names.length - MOST_NAMED + 1} more`;
}

const THINGS = {
  bed: countedWord({ one: "{{count}} bed", other: "{{count}} beds" }),
  piece: countedWord({ one: "{{count}} piece", other: "{{count}} pieces" }),
  plant: countedWord({ one: "{{count}} plant", other: "{{count}} plants" }),
  pot: countedWord({ one: "{{count}} pot", other: "{{count}} pots" }),
  row: countedWord({ one: "{{count}} row", other: "{{count}} rows" }),
  seed: countedWord({ one: "{{count}} pea or bean seed", other: "{{count}} pea or bean seeds" }),
};

/** "1 bed", "6 beds" */
export const counted = (count: number, thing: keyof typeof THINGS): string => sayCount(count, THINGS[thing]);

/** "2 in to 3 in" */
export const depthRange = ([least, most]: readonly [number, number], units: Units): string =>
  least === most
    ? formatShort(least, units)
    : say`${formatShort(least, units)} to ${formatShort(most, units)}`;

const GRAMS_PER_OUNCE = 28.349523125;
const OUNCES_PER_POUND = 16;

/** Seed in ounces and pounds, or grams and kilograms. */
export function seedWords(grams: number, units: Units): string {
  if (units === "metric") return grams < 1000 ? `${figure(weighed(grams))} g` : `${figure(grams / 1000)} kg`;
  const ounces = grams / GRAMS_PER_OUNCE;
  if (ounces >= OUNCES_PER_POUND) return `${figure(ounces / OUNCES_PER_POUND)} lb`;
  return `${figure(ounces < 1 ? ounces : tenths(ounces))} oz`;
}

const tenths = (value: number): number => Math.round(value * 10) / 10;
/** Kitchen scales show whole grams; less than ten of them are shared out by the tenth. */
const weighed = (grams: number): number => (grams < 10 ? tenths(grams) : Math.round(grams));

/** "6 oz to 11 oz"; one figure where both read alike. */
export function seedRange([least, most]: readonly [number, number], units: Units): string {
  const [a, b] = [seedWords(least, units), seedWords(most, units)];
  return a === b ? a : say`${a} to ${b}`;
}

/** A pot's worth: US quarts or litres. */
export const potWords = (litres: number, units: Units): string =>
  units === "us" ? `${figure(tenths((litres / LITRES_PER_GALLON) * 4))} qt` : `${figure(tenths(litres))} L`;
