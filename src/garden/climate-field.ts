import * as v from "valibot";
import { say, word } from "../words/say.ts";
import { between, size, text } from "./fields.ts";
import type { DeepReadonly } from "./readonly.ts";

const celsius = between(-80, 65, word("must be within -80 and 65 °C"));

const monthField = v.pipe(
  v.strictObject({
    /** Mean of the days' highest and lowest, °C. */
    maxC: celsius,
    minC: celsius,
    /** Of the whole month, mm. */
    rain: between(0, 5000, word("must be within 0 and 5000 mm")),
    /** Mean, of a hundred; null where it is not known. */
    humidity: v.nullable(between(1, 100, word("must be within 1 and 100 %"))),
    /** Hours of bright sunshine a day; null where they are not known. */
    sunHours: v.nullable(between(0, 24, word("must be within 0 and 24 hours"))),
    /** Mean, m/s; null where it is not known. */
    windMs: v.nullable(between(0, 60, word("must be within 0 and 60 m/s"))),
  }),
  v.check(
    ({ maxC, minC }) => maxC >= minC,
    () => say`has days colder than its nights`,
  ),
);

/** The climate's means as a weather station near by gives them, January first. */
export const climateField = v.strictObject({
  /** Whose figures they are. */
  station: text,
  /** Of the yard above the sea, m. */
  altitude: between(-430, 6000, word("must be within -430 and 6000 m")),
  setting: v.picklist(["interior", "coast"], () => say`must be interior or coast`),
  /** Of the wind gauge over the ground, mm. */
  gaugeHeight: size,
  months: v.pipe(
    v.array(monthField, () => say`must be a list of months`),
    v.length(12, () => say`must have twelve months`),
  ),
});

export type GardenClimate = DeepReadonly<v.InferOutput<typeof climateField>>;
