import type { CoverCropId } from "../garden/upkeep-field.ts";
import type { Good } from "../takeoff/goods.ts";
import type { Units } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";
import { say } from "../words/say.ts";
import { COVER_CROPS } from "./cover-crops.ts";

/** What is paid for each year and is no part of the takeoff. Example prices are invented, as of 2026. */

/** A good sold by an amount of something; `amount` of one in its own measure, litres or grams. */
export interface YearlyGood extends Good {
  readonly amount: number;
}

const GRAMS_PER_POUND = 453.59237;

/** Water from the mains, with what is paid for its draining. */
export const waterGood = (units: Units): YearlyGood =>
  units === "us"
    ? {
        key: "water:kgal",
        label: say`Water from the mains`,
        unit: "1000 gal",
        example: 9,
        amount: 1000 * LITRES_PER_GALLON,
      }
    : { key: "water:m3", label: say`Water from the mains`, unit: "m³", example: 3.2, amount: 1000 };

/** Seed in small bags costs several times what farms pay: dollars a pound, euros a kilogram. */
const SEED_PRICES: Readonly<Record<CoverCropId, readonly [us: number, metric: number]>> = {
  rye: [4, 7],
  "winter-wheat": [4, 7],
  oats: [4, 7],
  "crimson-clover": [9, 16],
  "hairy-vetch": [9, 15],
  "field-pea": [5, 8],
  buckwheat: [5, 9],
  "white-clover": [14, 24],
  "red-clover": [11, 18],
  mustard: [8, 13],
  phacelia: [18, 28],
};

export function coverSeedGood(id: CoverCropId, units: Units): YearlyGood {
  const [us, metric] = SEED_PRICES[id];
  const { word } = COVER_CROPS[id];
  const label = say`Seed of ${word}`;
  return units === "us"
    ? { key: `seed:${id}:lb`, label, unit: "lb", example: us, amount: GRAMS_PER_POUND }
    : { key: `seed:${id}:kg`, label, unit: "kg", example: metric, amount: 1000 };
}
