import type { Bed } from "../garden/kinds/bed.ts";
import { practice, published, type Source } from "../garden/source.ts";

/**
 * How much a bed holds, and how much has to be ordered so that it still holds it after settling. Litres, kg. `mix` and
 * `woody` are what it is to hold in the end; what is in it already counts as the lowest of it and is not ordered.
 */
export interface FillVolumes {
  readonly soil: number;
  readonly have: number;
  readonly mixNew: number;
  readonly woodyNew: number;
  readonly mix: number;
  readonly woody: number;
  readonly mixOrder: number;
  readonly woodyOrder: number;
  readonly weight: number;
}

/**
 * Volume lost in the first season, as a share of what is filled in: so V / (1 - s) is ordered. (V x (1 + s) would
 * fall short.)
 */
export const SETTLING = { mix: 0.15, woody: 0.25 } as const;
export const SETTLING_SOURCE: Source = practice(
  "topsoil and compost settle 10 to 20 % in the first season, mostly organic fills 20 to 30 %",
);

const KG_PER_POUND = 0.45359237;
const LITRES_PER_CUBIC_YARD = 764.554857984;
/** A commercial soil yard's published measurements of soaked, compacted materials, lb/yd³. */
export const SOAKED_SOURCE: Source = published(
  "a soil yard's measurements of saturated, compacted materials",
);
const SOAKED = { mix: 1908, woody: 628 } as const;

const LITRE = 1e6;

/** Litres over an area in mm² at a depth in mm. */
export const litresOver = (areaMm2: number, depth: number): number => (areaMm2 * depth) / LITRE;

/** What to order of a fill that loses `settling` of its volume. */
export const beforeSettling = (litres: number, settling: number): number => litres / (1 - settling);

/** Weight of soaked fill, kg. */
export const soakedWeight = (litres: number, poundsPerCubicYard: number): number =>
  (litres / LITRES_PER_CUBIC_YARD) * poundsPerCubicYard * KG_PER_POUND;

/**
 * @param areaMm2 of the soil, inside the wall
 * @param haveDepth of soil that is in it already, mm; more than the bed is to hold counts as full
 */
export function fillVolumes(
  { way, mixDepth }: Bed["fill"],
  areaMm2: number,
  soilDepth: number,
  haveDepth = 0,
): FillVolumes {
  const litres = (depth: number) => litresOver(areaMm2, depth);
  const fresh = soilDepth - Math.min(haveDepth, soilDepth);
  const onTop = way === "layered" ? mixDepth : soilDepth;
  const [mix, mixNew] = [litres(Math.min(onTop, soilDepth)), litres(Math.min(onTop, fresh))];
  const [woody, woodyNew] = [litres(soilDepth) - mix, litres(fresh) - mixNew];
  const bought = way !== "native";
  return {
    soil: litres(soilDepth),
    have: litres(soilDepth - fresh),
    mix,
    woody,
    mixNew,
    woodyNew,
    mixOrder: bought ? beforeSettling(mixNew, SETTLING.mix) : 0,
    woodyOrder: beforeSettling(woodyNew, SETTLING.woody),
    weight: soakedWeight(mix, SOAKED.mix) + soakedWeight(woody, SOAKED.woody),
  };
}
