import type { Garden } from "../garden/garden.ts";
import { practice, type Source } from "../garden/source.ts";
import type { GardenWater } from "../garden/watering.ts";
import type { Point } from "../geometry/types.ts";
import { dot, subtract } from "../geometry/vector.ts";
import { KPA_PER_M, pipeLossKPa } from "../water/pipe.ts";
import { type TapSupply, type TapToLines, zoneLimitLh } from "../water/tap-flow.ts";
import { TUBING } from "../water/tubing.ts";
import { LINE_TUBING } from "./bed-lines.ts";
import type { DripSupply } from "./types.ts";

/** Taken where nobody has held a gauge and a bucket to the tap: rather low, 40 psi and 4 gallons a minute. */
const USUAL_SUPPLY: TapSupply = { stillKPa: 275, openLh: 900 };
export const USUAL_SUPPLY_SOURCE: Source = practice(
  "garden taps mostly give 40 to 60 psi (275 to 415 kPa) with nothing running and 4 to 8 gallons a minute (900 to 1800 L/h) wide open; the lower ends are taken",
);

/** Vacuum breaker, filter and regulator together, some 2 to 3 psi each. */
const DEVICES_KPA = 50;
export const DEVICES_SOURCE: Source = practice(
  "vacuum breaker, filter and pressure regulator take 2 to 3 psi each, 50 kPa together",
);

/** A bed as the water comes to it. */
export interface Fed {
  /** Main from the tap, mm. */
  readonly mainLength: number;
  /** Tubing from the main to the farthest line, mm. */
  readonly tubing: number;
  readonly flowLh: number;
  /** Its rim over the tap, mm; below 0 where it lies lower. */
  readonly rise: number;
}

/** What the tap gives to lines that need so much, with the farthest, highest and thirstiest bed in mind. */
export function supplyTo(
  beds: readonly Fed[],
  water: GardenWater,
  neededKPa: number,
): { readonly supply: DripSupply; readonly way: TapToLines } {
  const most = (of: (bed: Fed) => number) => Math.max(0, ...beds.map(of));
  const inTubing = most(({ flowLh, tubing }) =>
    pipeLossKPa({ flowLh, bore: LINE_TUBING.bore, length: tubing }),
  );
  const lostKPa = DEVICES_KPA + inTubing + (most(({ rise }) => rise) / 1000) * KPA_PER_M;
  const length = most(({ mainLength }) => mainLength);
  const way: TapToLines = { lostKPa, main: length > 0 ? { bore: TUBING[water.main].bore, length } : null };
  const tap = water.supply ?? USUAL_SUPPLY;
  const supply: DripSupply = {
    ...tap,
    measured: water.supply !== null,
    lostKPa,
    neededKPa,
    zoneLimitLh: zoneLimitLh(tap, way, neededKPa),
  };
  return { supply, way };
}

/** How much higher the ground is at one place than at another, mm, as the yard at large slopes. */
export function groundRise({ ground }: Pick<Garden["site"], "ground">, from: Point, to: Point): number {
  const falls = (ground.falls * Math.PI) / 180;
  const downhill: Point = [Math.sin(falls), -Math.cos(falls)];
  return -ground.slope * dot(subtract(to, from), downhill);
}
