import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";
import type { Point } from "../geometry/types.ts";
import type { MonthNeed } from "../water/bed-need.ts";
import type { Guessed } from "../water/climate.ts";
import type { Runs } from "../water/run-time.ts";

/** What a bed asks of water through the year. */
export interface BedWaterYear {
  readonly bedId: ItemId;
  readonly areaMm2: number;
  /** Penman-Monteith or Hargreaves from the garden's climate; the rule of thumb where there is none. */
  readonly method: "penman-monteith" | "hargreaves" | "rule-of-thumb";
  readonly guessed: readonly Guessed[];
  /** Twelve, January first; null by the rule of thumb, which knows no months. */
  readonly months: readonly MonthNeed[] | null;
  /** A week's litres by month, January first; the rule of thumb gives the same in each month in which something grows. */
  readonly litresAWeek: readonly number[];
  /** Of a mean year; null by the rule of thumb, which knows no rain. */
  readonly litresAYear: number | null;
  /** What is wrong with the garden's climate where one is given but there can be none like it. */
  readonly problem: string | null;
  readonly sources: readonly Source[];
}

/** The drip lines of a bed. */
export interface BedDrip {
  readonly bedId: ItemId;
  /** Runs on the plan, mm, each from its head. */
  readonly lines: readonly (readonly Point[])[];
  readonly emitters: readonly Point[];
  readonly apart: number;
  readonly emittersApart: number;
  readonly emitterLh: number;
  /** Of all lines of the bed, mm. */
  readonly length: number;
  readonly flowLh: number;
  /** Emission uniformity of its longest line, 0 to 1, and what pressure varies along it. */
  readonly uniformity: number;
  readonly pressureVaries: number;
  readonly drawn: boolean;
}

export interface DripZone {
  readonly bedIds: readonly ItemId[];
  readonly flowLh: number;
  /** Twelve, January first; null where no climate is known: then minutes follow from the rule of thumb. */
  readonly months: readonly Runs[] | null;
}

export interface DripPlan {
  readonly tap: ItemId | null;
  readonly main: {
    readonly runs: readonly (readonly Point[])[];
    readonly length: number;
    readonly drawn: boolean;
  };
  readonly beds: readonly BedDrip[];
  readonly zones: readonly DripZone[];
  /** What the main and the lines are put together with, by row of the table of fittings. */
  readonly fittings: readonly { readonly key: string; readonly count: number }[];
  readonly supplyMeasured: boolean;
  /** Said as it is: a bed whose single line asks more than the tap gives, no tap, a main that cannot get there, ... */
  readonly troubles: readonly { readonly bedId: ItemId | null; readonly text: string }[];
  readonly sources: readonly Source[];
}
