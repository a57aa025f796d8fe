import * as v from "valibot";
import { say, word } from "../words/say.ts";
import { climateField } from "./climate-field.ts";
import { isoDate, monthDay, timeZone } from "./date-fields.ts";
import { between, count, degrees, money, points, size, sizeOrNone, text } from "./fields.ts";
import { itemSchema } from "./item.ts";
import { boardField } from "./kinds/bed.ts";
import { groundFactsField } from "./kinds/ground.ts";
import { isLimitId } from "./limits.ts";
import type { DeepReadonly } from "./readonly.ts";
import { underlayField } from "./underlay.ts";
import { upkeepField } from "./upkeep-field.ts";
import { waterField } from "./watering.ts";

export const FORMAT = "bedwright-garden";
export const VERSION = 3;
export const MOST_ITEMS = 2000;
const MOST_SKYLINE = 72;

export const siteSchema = v.strictObject({
  /** True north, degrees clockwise from up the plan. */
  north: degrees,
  place: text,
  latitude: between(-90, 90, word("must be within ±90")),
  longitude: between(-180, 180, word("must be within ±180")),
  /** The yard at large; patches drawn on it say where it differs. */
  ground: groundFactsField,
  winter: v.picklist(["freezing", "mild"]),
  /** How the wind comes at tall crops and what they grow up. */
  wind: v.picklist(["sheltered", "open", "windy"], () => say`must be sheltered, open or windy`),
  /** Mean last frost of spring and first of autumn, month-day; null where there is none or it is not known. */
  lastFrost: v.nullable(monthDay),
  firstFrost: v.nullable(monthDay),
  /** IANA name such as "America/Boise", by which the clock times of shadows are told; null for the sun's own mean time. */
  timeZone: v.nullable(timeZone),
  /** The days that sun hours are averaged over; null for the growing season of the hemisphere. */
  season: v.nullable(v.strictObject({ from: monthDay, to: monthDay })),
  /** The horizon beyond the yard: hills, the neighbour's block. Straight from point to point; level where there is none. */
  skyline: v.pipe(
    v.array(
      v.strictObject({
        /** Clockwise from true north. */
        azimuth: between(0, 360, word("must be within 0 and 360")),
        /** Above level. */
        altitude: between(0, 90, word("must be within 0 and 90")),
      }),
    ),
    v.maxLength(MOST_SKYLINE, () => say`has more than ${MOST_SKYLINE} points`),
  ),
});

/** Who has to get about in this garden, and with what. */
export const gardenerSchema = v.strictObject({
  kneeling: v.boolean(() => say`must be true or false`),
  barrow: v.boolean(() => say`must be true or false`),
  wheelchair: v.boolean(() => say`must be true or false`),
  child: v.boolean(() => say`must be true or false`),
  /** Which edition's figures the wheelchair rules are held to, in the units it prints them in. */
  edition: v.picklist(
    ["ada-2010", "ada-2010-mm", "a117-2017", "iso-21542"],
    () => say`must be ada-2010, ada-2010-mm, a117-2017 or iso-21542`,
  ),
});

export const cuttingSchema = v.strictObject({
  /** What the saw takes with each cut, mm. */
  kerf: sizeOrNone,
  /** Lengths on sale, mm; priced in the price table by board and length. */
  stockLengths: v.pipe(
    v.array(size),
    v.minLength(1, () => say`needs at least one length`),
    v.maxLength(20, () => say`has more than 20`),
  ),
  /** Boards the gardener has at home, to be used first: no money is paid for them. */
  onHand: v.pipe(
    v.array(v.strictObject({ board: boardField, timber: text, length: size, count: count(999) })),
    v.maxLength(50, () => say`has more than 50 rows`),
  ),
  /** Boards that the gardener can get beside those of the timber table, by their sizes: "32x175mm". */
  ownBoards: v.pipe(
    v.array(boardField),
    v.maxLength(50, () => say`has more than 50`),
  ),
  aim: v.picklist(["least-cost", "least-waste"], () => say`must be least-cost or least-waste`),
  /** Offcuts of at least this length are worth keeping, mm. */
  worthKeeping: sizeOrNone,
});

export const pricesSchema = v.strictObject({
  /** ISO 4217 code. */
  currency: v.pipe(
    v.string(() => say`must be text`),
    v.regex(/^[A-Z]{3}$/, () => say`must be a currency code such as USD`),
  ),
  /** The day the gardener's own prices are of; null while all are the shipped examples. */
  asOf: v.nullable(isoDate),
  /** Whose prices they are. */
  supplier: text,
  /** Years over which cost a year, renewals and walls are compared. */
  horizon: count(100),
  /** Prices the gardener has changed, by key of the price table. All others are the shipped examples. */
  own: v.record(v.string(), money),
});

export const gardenSchema = v.strictObject({
  format: v.literal(FORMAT, () => say`is not a Bedwright garden`),
  version: v.literal(VERSION),
  name: text,
  units: v.picklist(["us", "metric"], () => say`must be us or metric`),
  paper: v.picklist(["letter", "a4"], () => say`must be letter or a4`),
  site: siteSchema,
  gardener: gardenerSchema,
  /** Limits the gardener has changed, by id of the limits table. All others stand at their defaults. */
  limits: v.record(
    v.pipe(
      v.string(),
      v.check(isLimitId, () => say`is not a limit`),
    ),
    sizeOrNone,
  ),
  cutting: cuttingSchema,
  prices: pricesSchema,
  /** Means of the climate; null while nobody has given any, then water is told by the rule of thumb. */
  climate: v.nullable(climateField),
  water: waterField,
  upkeep: upkeepField,
  underlay: v.nullable(underlayField),
  /** The outline of the plot, on the plan. */
  yard: points(3),
  /** From the back to the front. */
  items: v.pipe(
    v.array(itemSchema),
    v.maxLength(MOST_ITEMS, () => say`has more than ${MOST_ITEMS} things`),
  ),
});

/** The document: one yard with all that stands in it. Never changed in place; see `operations.ts`. */
export type Garden = DeepReadonly<v.InferOutput<typeof gardenSchema>>;
export type Site = Garden["site"];
export type Gardener = Garden["gardener"];
export type GardenPrices = Garden["prices"];
