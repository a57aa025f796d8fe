import type { Garden } from "../garden/garden.ts";
import { practice, type Source } from "../garden/source.ts";
import { bedWaterYears } from "../irrigation/bed-water-year.ts";
import { costOfLoose } from "../takeoff/buy-loose.ts";
import { type LayeringSaving, layeringSavings } from "../takeoff/layering.ts";
import { type Priced, priceOf } from "../takeoff/price-table.ts";
import { total } from "../takeoff/purchase.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Takeoff } from "../takeoff/types.ts";
import { compareWalls } from "../takeoff/wall-choices.ts";
import { costAYear, type Renewal, TOP_UP } from "../takeoff/year-cost.ts";
import { daysIn, MONTHS } from "../water/calendar.ts";
import { coveredBeds, coverOf, coverSeed } from "./cover-cropping.ts";
import { renewalYears } from "./renewal-years.ts";
import { layeredBeds, SINKING_SOURCE, woodSinking } from "./settling.ts";
import { type YearContext, yearContext } from "./year-context.ts";
import { coverSeedGood, waterGood, type YearlyGood } from "./yearly-goods.ts";

/** What is paid in a year, by what it is for; money in the garden's currency. */
export interface YearParts {
  readonly built: number;
  readonly topUp: number;
  readonly mulch: number;
  readonly seed: number;
  readonly renewals: number;
  readonly refill: number;
  readonly water: number;
}

export const YEAR_PARTS = ["built", "topUp", "mulch", "seed", "renewals", "refill", "water"] as const;

export interface YearAhead extends YearParts {
  /** Years after the first, which is 0. */
  readonly year: number;
  readonly total: number;
  /** What is renewed in it. */
  readonly renewed: readonly string[];
  /** Mix that layered beds take as the wood in them rots, litres. */
  readonly refillL: number;
}

/** A wall of one make through all the years, beside the walls as drawn; `saved` below 0 where it would be cheaper. */
export interface WallSaving {
  readonly id: string;
  readonly label: string;
  readonly overYears: number;
  readonly saved: number;
  readonly besideFood: "fit" | "with-care" | "unfit";
}

export interface YearlyPrice extends Priced {
  readonly good: YearlyGood;
}

export interface YearsAhead {
  readonly horizon: number;
  readonly years: readonly YearAhead[];
  /** Of all years. */
  readonly sums: YearParts & { readonly total: number };
  /** A mean year's, and whether it is known from a climate or is the rule of thumb without any rain. */
  readonly waterL: number;
  readonly waterBy: "climate" | "rule-of-thumb";
  readonly prices: readonly YearlyPrice[];
  /** Walls as drawn through all the years: what was bought first and each renewal. */
  readonly wallsDrawn: number;
  /** Every other make of wall, those first that the drawn ones save most against. */
  readonly walls: readonly WallSaving[];
  /** What wood below saves in mix: layered beds, and those that could be. */
  readonly fills: readonly LayeringSaving[];
  readonly sources: readonly Source[];
}

const RULE = practice(
  "without a climate an inch a week is reckoned for every growing week, and no rain is taken off",
);

/**
 * What a garden costs in each year of its horizon: what is built, topped up, mulched, sown in winter, renewed, filled up as
 * wood rots, and watered. The first year is that of the takeoff; everything is at today's prices.
 *
 * Renewals, mulch and compost are those of `costAYear`, each in the year it falls in, so that their sums agree.
 *
 * @param whole the garden's takeoff where it is known
 */
export function yearsAhead(
  garden: Garden,
  years = garden.prices.horizon,
  whole: Pick<Takeoff, "total"> = takeoff(garden),
): YearsAhead {
  if (!Number.isInteger(years) || years < 1) throw new RangeError(`no number of years: ${years}`);
  const context = yearContext({ ...garden, prices: { ...garden.prices, horizon: years } });
  const { rows, first } = costAYear(context.garden, whole);
  const water = waterYear(context);
  const seed = seedYear(context);
  const sinking = refills(context, years);
  const list = Array.from({ length: years }, (_, year): YearAhead => {
    const falling = rows.filter((row) => fallsIn(row, year, years));
    const cost = (some: readonly Renewal[]) => cents(total(some, (row) => row.cost));
    const renewed = falling.filter((row) => isLasting(row));
    const refill = sinking[year] ?? { litres: 0, cost: 0 };
    const parts: YearParts = {
      built: year === 0 ? first : 0,
      topUp: cost(falling.filter(({ id }) => id === TOP_UP)),
      mulch: cost(falling.filter(({ id }) => id.startsWith(MULCH))),
      seed: seed.cost,
      renewals: cost(renewed),
      refill: refill.cost,
      water: water.cost,
    };
    return {
      ...parts,
      year,
      total: sumOf(parts),
      renewed: renewed.map(({ what }) => what),
      refillL: refill.litres,
    };
  });
  const walls = wallsThrough(context.garden, rows);
  return {
    horizon: years,
    years: list,
    sums: sumsOf(list),
    waterL: water.litres,
    waterBy: water.by,
    prices: [water.price, ...seed.prices],
    ...walls,
    fills: layeringSavings(garden),
    sources: [...water.sources, ...(layeredBeds(context).length > 0 ? [SINKING_SOURCE] : [])],
  };
}

const MULCH = "mulch ";
const isLasting = ({ id }: Renewal): boolean => id !== TOP_UP && !id.startsWith(MULCH);

const fallsIn = ({ life, times }: Renewal, year: number, horizon: number): boolean =>
  times > 0 && renewalYears(life, horizon).includes(year);

const sumOf = (parts: YearParts): number => cents(total(YEAR_PARTS, (part) => parts[part]));

function sumsOf(years: readonly YearAhead[]): YearsAhead["sums"] {
  const sum = (part: (typeof YEAR_PARTS)[number]) => cents(total(years, (year) => year[part]));
  const parts: YearParts = {
    built: sum("built"),
    topUp: sum("topUp"),
    mulch: sum("mulch"),
    seed: sum("seed"),
    renewals: sum("renewals"),
    refill: sum("refill"),
    water: sum("water"),
  };
  return { ...parts, total: sumOf(parts) };
}

const priced = (good: YearlyGood, { garden }: YearContext): YearlyPrice => ({
  good,
  ...priceOf(good, garden.prices),
});

function waterYear(context: YearContext) {
  const years = bedWaterYears(context.garden);
  const price = priced(waterGood(context.units), context);
  const litres = total(years, ({ litresAYear, litresAWeek }) => litresAYear ?? ofWeeks(litresAWeek));
  const byRule = years.some(({ litresAYear }) => litresAYear === null);
  return {
    litres,
    price,
    cost: cents((litres / price.good.amount) * price.price),
    by: byRule ? ("rule-of-thumb" as const) : ("climate" as const),
    sources: byRule ? [RULE] : (years[0]?.sources ?? []),
  };
}

const ofWeeks = (litresAWeek: readonly number[]): number =>
  total(MONTHS, (month) => ((litresAWeek[month] ?? 0) * daysIn(month)) / 7);

/** The middle of the rate, bought by weight. */
function seedYear(context: YearContext): { readonly cost: number; readonly prices: readonly YearlyPrice[] } {
  const beds = coveredBeds(context);
  if (beds.length === 0) return { cost: 0, prices: [] };
  const [least, most] = coverSeed(beds, context);
  const price = priced(coverSeedGood(coverOf(context).id, context.units), context);
  return { cost: cents(((least + most) / 2 / price.good.amount) * price.price), prices: [price] };
}

/** What layered beds take in each year, bought as the mix of their own recipe. */
function refills(context: YearContext, years: number): { readonly litres: number; readonly cost: number }[] {
  const layered = layeredBeds(context);
  return Array.from({ length: years }, (_, year) => {
    const needs = new Map<string, number>();
    let litres = 0;
    for (const bed of layered) {
      const sunk =
        woodSinking(context.quantitiesOf(bed).fill.woody, years).find((one) => one.year === year)?.litres ??
        0;
      litres += sunk;
      const parts = total(Object.values(bed.fill.recipe), (part) => part);
      for (const [material, part] of Object.entries(bed.fill.recipe)) {
        if (part > 0) needs.set(material, (needs.get(material) ?? 0) + (sunk * part) / parts);
      }
    }
    const wanted = [...needs].map(([material, of]) => ({ material, litres: of }));
    const { money } = costOfLoose(wanted, context.garden.prices, context.settings);
    return { litres, cost: cents(money) };
  });
}

/** Ids of the rows that are walls of beds. */
const WALLS = /^(timber:.*|metal|masonry|fabric-bed)$/;

function wallsThrough(garden: Garden, rows: readonly Renewal[]): Pick<YearsAhead, "wallsDrawn" | "walls"> {
  const through = ({ first, times }: { first: number; times: number }) => cents(first * (1 + times));
  const choices = compareWalls(garden);
  const now = choices.find((choice) => choice.now);
  const ownWalls = rows.filter(({ id }) => WALLS.test(id));
  const wallsDrawn = now ? through(now) : cents(total(ownWalls, ({ cost, times }) => cost * (1 + times)));
  const walls = choices
    .filter((choice) => !choice.now)
    .map((choice): WallSaving => {
      const { id, label, besideFood } = choice;
      const overYears = through(choice);
      return { id, label, besideFood, overYears, saved: cents(overYears - wallsDrawn) };
    })
    .sort((a, b) => b.saved - a.saved);
  return { wallsDrawn, walls };
}

const cents = (amount: number): number => Math.round(amount * 100) / 100;
