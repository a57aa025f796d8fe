import { fromMemory, published, type Source } from "../garden/source.ts";
import { aboveZero, within } from "./within.ts";

/** How water comes onto the soil, and the share of the surface it wets, 0 to 1. */
export const WETTED: Readonly<Record<"rain" | "sprinkler" | "drip", number>> = {
  rain: 1,
  sprinkler: 1,
  // The middle of 0.3 to 0.4.
  drip: 0.35,
};
export const WETTED_SOURCE: Source = published("FAO-56 Table 20: rain and sprinkler 1.0, trickle 0.3 to 0.4");
export const WETTING_SOURCE: Source = fromMemory(
  "FAO-56 chapter 6 (equations 59 and 60) and Annex 7, which give the curves of figures 29 and 30",
);

/** Coarse: sand and loamy sand. */
export type Grain = "coarse" | "fine";

export interface Wetting {
  /** Mean days from one wetting to the next, rain counted. */
  readonly everyDays: number;
  /** Water of one wetting over the whole soil, mm. */
  readonly depth: number;
  /** Share of the surface that it wets, above 0, up to 1. */
  readonly wettedShare: number;
  readonly grain: Grain;
}

/** What bare soil gives off over that of grass while its surface is wet. */
const WET_SURFACE = 1.15;
/** Wettings up to here are light and from there heavy; between them the coefficient is drawn straight. mm */
const [LIGHT, HEAVY] = [10, 40] as const;

/**
 * Crop coefficient of the initial stage, when nearly all water is lost from the soil's surface: from how often and how much
 * it is wetted. 1.15 at the most.
 *
 * @param et0 reference evapotranspiration, mm a day, above 0
 * @throws RangeError for wettings of nothing, or a share outside 0 to 1
 */
export function kcOfWetting({ everyDays, depth, wettedShare, grain }: Wetting, et0: number): number {
  aboveZero(everyDays, "the days between wettings");
  aboveZero(et0, "the reference evapotranspiration");
  aboveZero(within(wettedShare, 0, 1, "the share that is wetted"), "the share that is wetted");
  // What wets a third of the surface goes three times as deep there.
  const sunkIn = aboveZero(depth, "the water of a wetting") / wettedShare;
  const root = Math.sqrt(et0);
  const light = drying(10, Math.min(7, Math.max(2.5, 6 / root)), everyDays, et0);
  const most = grain === "coarse" ? Math.min(15, 7 * root) : Math.min(28, 13 * root);
  const heavy = drying(most, Math.min(grain === "coarse" ? 6 : 9, most - 0.01), everyDays, et0);
  const between = Math.min(1, Math.max(0, (sunkIn - LIGHT) / (HEAVY - LIGHT)));
  return wettedShare * (light + between * (heavy - light));
}

/**
 * Mean coefficient over a drying spell: as fast as the air asks until the readily evaporable water is gone, then slower.
 * @param total evaporable water (TEW) and @param ready readily evaporable (REW), mm
 */
function drying(total: number, ready: number, everyDays: number, et0: number): number {
  const rate = WET_SURFACE * et0;
  const readyDays = ready / rate;
  if (everyDays <= readyDays) return WET_SURFACE;
  const left = total - ready;
  const slowed = Math.exp((-(everyDays - readyDays) * rate * (1 + ready / left)) / total);
  return (total - left * slowed) / (everyDays * et0);
}
