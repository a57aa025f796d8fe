import type { Bed } from "../garden/kinds/bed.ts";
import { practice, type Source } from "../garden/source.ts";
import { SETTLING } from "../takeoff/fill-volumes.ts";
import type { YearContext } from "./year-context.ts";

/**
 * Woody fill goes on sinking after its first season: half of what then lies in the bed is taken to be gone after ten
 * years, as a share of what is left each year.
 */
export const HALF_GONE_YEARS = 10;
const KEPT_A_YEAR = 0.5 ** (1 / HALF_GONE_YEARS);

export const SINKING_SOURCE: Source = practice(
  "raw material loses 30 to 60 % of its volume on its way to compost, by most texts; wood is taken to lose half in ten years. Low confidence: measure it",
);

/** How far layered fill sinks in one year. Litres. */
export interface Sinking {
  /** Years after the first. */
  readonly year: number;
  readonly litres: number;
}

/**
 * What is lost of a woody fill in each year after the first. The first season's own settling is ordered with the fill.
 * @param woodyL settled volume at the end of the first season, litres
 */
export function woodSinking(woodyL: number, years: number): readonly Sinking[] {
  return Array.from({ length: Math.max(0, years - 1) }, (_, i) => ({
    year: i + 1,
    litres: woodyL * (KEPT_A_YEAR ** i - KEPT_A_YEAR ** (i + 1)),
  }));
}

/** Layered beds with wood in them. */
export const layeredBeds = ({ beds, quantitiesOf }: YearContext): readonly Bed[] =>
  beds.filter((bed) => quantitiesOf(bed).fill.woody > 0);

/** What is lost in the first season of what was filled in, mm of the bed's depth. */
export function firstSettling(bed: Bed, { quantitiesOf }: YearContext): number {
  const { fill, soilAreaMm2 } = quantitiesOf(bed);
  if (soilAreaMm2 <= 0) return 0;
  const lost = fill.mixNew * (1 / (1 - SETTLING.mix) - 1) + fill.woodyNew * (1 / (1 - SETTLING.woody) - 1);
  return (lost * 1e6) / soilAreaMm2;
}
