import * as v from "valibot";
import { isoDate, monthDay } from "./date-fields.ts";
import { between, degrees, money, points, size, sizeOrNone, text } from "./fields.ts";
import { itemSchema } from "./item.ts";
import { groundFactsField } from "./kinds/ground.ts";
import { isLimitId } from "./limits.ts";
import type { DeepReadonly } from "./readonly.ts";

export const FORMAT = "bedwright-garden";
export const VERSION = 1;
export const MOST_ITEMS = 2000;

export const siteSchema = v.strictObject({
  /** True north, degrees clockwise from up the plan. */
  north: degrees,
  place: text,
  latitude: between(-90, 90, "must be within ±90"),
  longitude: between(-180, 180, "must be within ±180"),
  /** The yard at large; patches drawn on it say where it differs. */
  ground: groundFactsField,
  winter: v.picklist(["freezing", "mild"]),
  /** Mean last frost of spring and first of autumn, month-day; null where there is none or it is not known. */
  lastFrost: v.nullable(monthDay),
  firstFrost: v.nullable(monthDay),
});

/** Who has to get about in this garden, and with what. */
export const gardenerSchema = v.strictObject({
  kneeling: v.boolean("must be true or false"),
  barrow: v.boolean("must be true or false"),
  wheelchair: v.boolean("must be true or false"),
  child: v.boolean("must be true or false"),
});

export const cuttingSchema = v.strictObject({
  /** What the saw takes with each cut, mm. */
  kerf: sizeOrNone,
  /** Lengths on sale, mm; priced in the price table by board and length. */
  stockLengths: v.pipe(
    v.array(size),
    v.minLength(1, "needs at least one length"),
    v.maxLength(20, "has more than 20"),
  ),
});

export const pricesSchema = v.strictObject({
  /** ISO 4217 code. */
  currency: v.pipe(v.string("must be text"), v.regex(/^[A-Z]{3}$/, "must be a currency code such as USD")),
  /** The day the gardener's own prices are of; null while all are the shipped examples. */
  asOf: v.nullable(isoDate),
  /** Prices the gardener has changed, by key of the price table. All others are the shipped examples. */
  own: v.record(v.string(), money),
});

export const gardenSchema = v.strictObject({
  format: v.literal(FORMAT, "is not a Bedwright garden"),
  version: v.literal(VERSION),
  name: text,
  units: v.picklist(["us", "metric"], "must be us or metric"),
  paper: v.picklist(["letter", "a4"], "must be letter or a4"),
  site: siteSchema,
  gardener: gardenerSchema,
  /** Limits the gardener has changed, by id of the limits table. All others stand at their defaults. */
  limits: v.record(v.pipe(v.string(), v.check(isLimitId, "is not a limit")), sizeOrNone),
  cutting: cuttingSchema,
  prices: pricesSchema,
  /** The outline of the plot, on the plan. */
  yard: points(3),
  /** From the back to the front. */
  items: v.pipe(v.array(itemSchema), v.maxLength(MOST_ITEMS, `has more than ${MOST_ITEMS} things`)),
});

/** The document: one yard with all that stands in it. Never changed in place; see `operations.ts`. */
export type Garden = DeepReadonly<v.InferOutput<typeof gardenSchema>>;
export type Site = Garden["site"];
export type Gardener = Garden["gardener"];
export type GardenPrices = Garden["prices"];
