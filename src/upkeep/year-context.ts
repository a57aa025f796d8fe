import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { BedQuantities } from "../takeoff/bed-quantities.ts";
import { bedQuantities } from "../takeoff/bed-quantities.ts";
import { type Settings, settingsOf } from "../takeoff/settings.ts";
import { buildingIn } from "../takeoff/stages.ts";
import type { Units } from "../units/length.ts";
import { bedsWords } from "./words.ts";
import { type YearFrame, yearFrame } from "./year-frame.ts";

/** What all tasks of a year are made from. */
export interface YearContext {
  readonly garden: Garden;
  readonly units: Units;
  readonly beds: readonly Bed[];
  readonly frame: YearFrame;
  readonly settings: Settings;
  quantitiesOf(bed: Bed): BedQuantities;
  /** Of the soil of beds, mm². */
  areaOf(beds: readonly Bed[]): number;
  named(beds: readonly Bed[]): string;
}

export function yearContext(garden: Garden): YearContext {
  const { beds } = buildingIn(garden, "all");
  const settings = settingsOf(garden);
  const quantitiesOf = (bed: Bed) => bedQuantities(bed, settings);
  return {
    garden,
    units: garden.units,
    beds,
    frame: yearFrame(garden.site),
    settings,
    quantitiesOf,
    areaOf: (some) => some.reduce((sum, bed) => sum + quantitiesOf(bed).soilAreaMm2, 0),
    named: (some) => bedsWords(some, beds.length),
  };
}

export const idsOf = (beds: readonly Bed[]) => beds.map(({ id }) => id);
