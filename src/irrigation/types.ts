import type { ItemId } from "../garden/fields.ts";
import type { Source } from "../garden/source.ts";
import type { GardenWater } from "../garden/watering.ts";
import type { Point } from "../geometry/types.ts";
import type { MonthNeed } from "../water/bed-need.ts";
import type { Guessed } from "../water/climate.ts";
import type { Runs } from "../water/run-time.ts";
import type { TapSupply } from "../water/tap-flow.ts";

/** What a bed asks of water through the year. */
export interface BedWaterYear {
  readonly bedId: ItemId;
  readonly areaMm2: number;
  /** Penman-Monteith or Hargreaves from the garden's climate; the rule of thumb where there is none. */
  readonly method: "penman-monteith" | "hargreaves" | "rule-of-thumb";
  readonly guessed: readonly Guessed[];
  /** Twelve, January first; null by the rule of thumb, which knows no months. */
  readonly months: readonly MonthNeed[] | null;
  /** A week's litres by month, January first; the rule of thumb gives the same in each month of growing weather. */
  readonly litresAWeek: readonly number[];
  /** Of a mean year; null by the rule of thumb, which knows no rain. */
  readonly litresAYear: number | null;
  /** What is wrong with the garden's climate where one is given but there can be none like it. */
  readonly problem: string | null;
  readonly sources: readonly Source[];
}

/** The drip lines of a bed. Points on the plan, mm. */
export interface BedDrip {
  readonly bedId: ItemId;
  /** Each from its head. */
  readonly lines: readonly (readonly Point[])[];
  readonly emitters: readonly Point[];
  readonly apart: number;
  readonly emittersApart: number;
  readonly emitterLh: number;
  /** Why they are so far apart where nobody has typed it, in a sentence. */
  readonly why: string;
  /** Of all lines of the bed, mm. */
  readonly length: number;
  /** Tubing within the soil that joins the heads of the lines. */
  readonly header: readonly (readonly Point[])[];
  readonly headerLength: number;
  /** Where the main meets the bed; null where none gets to it. */
  readonly head: Point | null;
  /** Main from the tap to there, mm; of a drawn one, all of it. */
  readonly mainLength: number;
  /** Tubing from there up the wall, over its rim and down to the soil, mm. */
  readonly feedLength: number;
  /** At the pressure emitters are rated at. */
  readonly flowLh: number;
  /** Emission uniformity of its longest line, 0 to 1, and what pressure varies along it. */
  readonly uniformity: number;
  readonly pressureVaries: number;
  readonly drawn: boolean;
}

/** Beds that are watered at the same time. */
export interface DripZone {
  readonly bedIds: readonly ItemId[];
  /** Lines of each of them that it waters. */
  readonly lines: readonly number[];
  readonly flowLh: number;
  /** What reaches the heads of its lines while it runs, kPa. */
  readonly pressureKPa: number;
  /** What the main takes of it, kPa. */
  readonly mainLossKPa: number;
  /** Twelve, January first; null where no climate is known: then minutes follow from the rule of thumb. */
  readonly months: readonly Runs[] | null;
  /** How long it runs in a week, January first, whichever way that is known. */
  readonly minutesAWeek: readonly number[];
  /** What it lets out in that time, litres. */
  readonly litresAWeek: readonly number[];
  /** What of it no bed has asked for, litres: it runs as long as its neediest bed asks. */
  readonly surplusAWeek: readonly number[];
}

export interface DripSupply extends TapSupply {
  /** False where nobody has measured the tap, and what is usual is taken. */
  readonly measured: boolean;
  /** Lost in the devices at the tap, to the rise to the highest bed and in the tubing of a bed, kPa. */
  readonly lostKPa: number;
  /** At the heads of the lines, kPa. */
  readonly neededKPa: number;
  /** The most a zone may take, L/h; 0 where the pressure does not get there. */
  readonly zoneLimitLh: number;
}

export type FittingKey =
  | "vacuum-breaker"
  | "timer"
  | "filter"
  | "regulator"
  | "adapter"
  | "valve"
  | "tee"
  | "elbow"
  | "end-cap"
  | "hold-down";

/** What the main and the lines are put together with. */
export interface Fitting {
  readonly key: FittingKey;
  readonly count: number;
  /** The bed it is for; null for what stands at the tap or along the main. */
  readonly bedId: ItemId | null;
}

/** What cannot be done as it is asked for, and what follows. */
export interface DripTrouble {
  readonly what:
    | "no-tap"
    | "tap-shut-in"
    | "lost-tap"
    | "unreached"
    | "no-soil"
    | "too-many"
    | "too-close"
    | "beyond-soil"
    | "too-thirsty"
    | "no-pressure"
    | "climate";
  readonly bedId: ItemId | null;
  readonly text: string;
}

export interface DripPlan {
  readonly tap: ItemId | null;
  readonly main: {
    readonly runs: readonly (readonly Point[])[];
    readonly length: number;
    readonly drawn: boolean;
    /** Row of the tubing table. */
    readonly tubing: GardenWater["main"];
  };
  readonly beds: readonly BedDrip[];
  readonly zones: readonly DripZone[];
  /** No plan needs fewer zones. */
  readonly fewestZones: boolean;
  readonly fittings: readonly Fitting[];
  readonly supply: DripSupply;
  readonly troubles: readonly DripTrouble[];
  /** Where the main crosses a drawn path, once each: there it has to lie under the surface. */
  readonly crossings: readonly { readonly pathId: ItemId; readonly at: Point }[];
  readonly sources: readonly Source[];
}
