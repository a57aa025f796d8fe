import type { GardenWater } from "../garden/watering.ts";
import { tubingWords } from "../irrigation/tubing-words.ts";
import type { FittingKey } from "../irrigation/types.ts";
import { figure } from "../units/format-figure.ts";
import { formatDistance, formatShort } from "../units/format-length.ts";
import { FOOT, type Units } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";
import { say, told, word } from "../words/say.ts";
import type { Good } from "./goods.ts";

/** Drip lines, tubing and fittings as they are sold. Prices are examples, invented, as of 2026. */

/** `count` is what a roll holds, mm. */
export type Roll = Good & { readonly count: number };

const ROLLS: Readonly<Record<Units, readonly [short: number, long: number]>> = {
  us: [50 * FOOT, 100 * FOOT],
  metric: [25_000, 50_000],
};

const keyOf = (length: number, units: Units): string =>
  units === "us" ? `${Math.round(length / FOOT)}ft` : `${Math.round(length)}mm`;

/** @param rate of a metre in a short roll; a long one is a tenth cheaper by the metre */
const rolls = (key: string, label: string, rate: number, units: Units): readonly Roll[] =>
  ROLLS[units].map((length, i) => ({
    key: `${key}:${keyOf(length, units)}`,
    label: say`${label}, roll of ${units === "us" ? formatDistance(length, units) : `${figure(length / 1000)} m`}`,
    unit: "roll",
    example: Math.round(rate * (length / 1000) * (i === 0 ? 100 : 90)) / 100,
    count: length,
  }));

export const emitterFlow = (litresPerHour: number, units: Units): string =>
  units === "us"
    ? say`${figure(litresPerHour / LITRES_PER_GALLON)} gal an hour`
    : say`${figure(litresPerHour)} L an hour`;

/** Line with emitters in it, by what tells one from another: their spacing, mm, and their flow. */
export const dripLineRolls = (emittersApart: number, emitterLh: number, units: Units): readonly Roll[] =>
  rolls(
    `drip-line:${Math.round(emittersApart)}x${Math.round(emitterLh * 100) / 100}`,
    say`Drip line, emitters every ${formatShort(emittersApart, units)} of ${emitterFlow(emitterLh, units)}`,
    units === "us" ? 1.1 : 1,
    units,
  );

export const tubingRolls = (size: GardenWater["main"], units: Units): readonly Roll[] =>
  rolls(`tubing:${size}`, say`Tubing ${tubingWords(size, units)}`, size === "half" ? 0.7 : 1.2, units);

const FITTINGS: Readonly<
  Record<FittingKey, readonly [label: string, unit: string, usd: number, eur: number]>
> = {
  "vacuum-breaker": [word("Vacuum breaker for the tap"), "piece", 9.5, 9],
  timer: [word("Timer for the tap"), "timer", 42, 39],
  filter: [word("Filter, 150 mesh"), "filter", 12, 11],
  regulator: [word("Pressure regulator"), "piece", 11, 10],
  adapter: [word("Adapter from hose thread to tubing"), "piece", 3.2, 3],
  valve: [word("Valve run by the timer"), "valve", 24, 22],
  tee: [word("Tee"), "tee", 1.4, 1.3],
  elbow: [word("Elbow"), "elbow", 1.1, 1],
  "end-cap": [word("End cap"), "cap", 0.9, 0.8],
  "hold-down": [word("Stake for tubing"), "stake", 0.3, 0.28],
};

const BY_TUBING: ReadonlySet<FittingKey> = new Set<FittingKey>([
  "tee",
  "elbow",
  "end-cap",
  "adapter",
  "valve",
]);

/** Of what stands at the tap, an adapter alone minds the tubing. */
const AT_TAP: ReadonlySet<string> = new Set<FittingKey>([
  "timer",
  "vacuum-breaker",
  "filter",
  "regulator",
  "adapter",
]);
export const standsAtTap = (key: FittingKey): boolean => AT_TAP.has(key);

const FITTING = "drip-";
/** What is worn out sooner than the tubing it stands before. @param kind the first part of a good's key */
export const isTapDevice = (kind: string): boolean => AT_TAP.has(kind.slice(FITTING.length));

/** @param size of the tubing it is put on; what serves any size does not mind it */
export function fittingGood(key: FittingKey, size: GardenWater["main"], units: Units): Good {
  const [english, unit, usd, eur] = FITTINGS[key];
  const label = told(english);
  const sized = BY_TUBING.has(key);
  return {
    key: sized ? `${FITTING}${key}:${size}` : `${FITTING}${key}`,
    label: sized ? `${label}, ${tubingWords(size, units)}` : label,
    unit,
    example: units === "us" ? usd : eur,
  };
}
