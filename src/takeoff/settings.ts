import type { Garden } from "../garden/garden.ts";
import { limitsOf } from "../garden/limits.ts";
import type { Units } from "../units/length.ts";
import type { Aim } from "./types.ts";

/** What a bed's quantities depend on beside the bed itself. One object for as long as none of it changes. */
export interface Settings {
  readonly units: Units;
  readonly kerf: number;
  readonly stockLengths: readonly number[];
  readonly longestStock: number;
  readonly stakeEvery: number;
  readonly tiesFrom: number;
  readonly onHand: Garden["cutting"]["onHand"];
  readonly aim: Aim;
  readonly worthKeeping: number;
}

const byCutting = new WeakMap<Garden["cutting"], { limits: Garden["limits"]; settings: Settings }>();

/** The settings of a garden; the same object while its cutting, limits and units stay the same values. */
export function settingsOf(garden: Pick<Garden, "cutting" | "limits" | "units">): Settings {
  const kept = byCutting.get(garden.cutting);
  if (kept?.limits === garden.limits && kept.settings.units === garden.units) return kept.settings;
  const { stakeEvery, tiesFrom } = limitsOf(garden);
  const { kerf, stockLengths, onHand, aim, worthKeeping } = garden.cutting;
  const settings: Settings = {
    units: garden.units,
    kerf,
    // A length listed twice is still one length on sale.
    stockLengths: [...new Set(stockLengths)].sort((a, b) => a - b),
    longestStock: Math.max(...stockLengths),
    // A spacing of nothing would ask for stakes without end: read as no stakes at all.
    stakeEvery: stakeEvery > 0 ? stakeEvery : Number.POSITIVE_INFINITY,
    tiesFrom,
    onHand,
    aim,
    worthKeeping,
  };
  byCutting.set(garden.cutting, { limits: garden.limits, settings });
  return settings;
}
