import type { Bed } from "../garden/kinds/bed.ts";
import { practice, type Source } from "../garden/source.ts";
import { spacingOf } from "../planting/spacing.ts";
import { formatShort } from "../units/format-length.ts";
import { FOOT, INCH, type Units } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";
import type { Emitter } from "../water/emitter.ts";
import { DRIP_TAPE } from "../water/tubing.ts";
import { say } from "../words/say.ts";

/** How far apart drip lines and their emitters are, and what an emitter gives. */
export interface LineSpacing {
  readonly apart: number;
  readonly emittersApart: number;
  readonly emitter: Emitter;
  /** Why they are so far apart where nobody has typed it, in a sentence. */
  readonly why: string;
}

export const LINE_SPACING_SOURCE: Source = practice(
  "an emitter wets about 12 in across in loose mix or sand and 18 in in loam; lines no farther apart than that, and emitters every 6 in where seed stands close in its row",
);

const WETS = {
  mix: { us: FOOT, metric: 300 },
  native: { us: 18 * INCH, metric: 450 },
} as const;
const CLOSE = { us: 6 * INCH, metric: 150 } as const;
/** Plants nearer to each other in their row than this are sown as a band. */
const BAND = 4 * INCH;
/** No line is made with emitters closer than this, nor laid closer, mm. */
const LEAST_APART = DRIP_TAPE.emitterSpacing.least;

/** The lesser usual flow of garden lines: beds take up water slowly. */
const USUAL_EMITTER_LH = { us: 0.5 * LITRES_PER_GALLON, metric: 2 } as const;
/** A plain emitter, which gives more where the pressure is higher, behind a regulator. */
const WORKS_AT_KPA = 100;
export const EMITTER_SOURCE: Source = practice(
  "plain emitters of garden lines, rated at about 1 bar (15 psi), their flow going with the root of the pressure",
);

/**
 * The spacing of a bed's drip lines: as typed, else by how far its soil spreads water and how close its crops stand.
 * What is typed closer than any line is made is taken at the closest.
 */
export function lineSpacing(bed: Bed, units: Units): LineSpacing {
  const { drip } = bed.watering;
  const soil = bed.fill.way === "native" ? "native" : "mix";
  const isBand = bed.plantings.some((planting) => spacingOf(planting).apart <= BAND);
  const wets = WETS[soil][units];
  return {
    apart: Math.max(LEAST_APART, drip.apart ?? (isBand ? Math.min(wets, WETS.mix[units]) : wets)),
    emittersApart: Math.max(LEAST_APART, drip.emittersApart ?? (isBand ? CLOSE[units] : wets)),
    emitter: {
      flowLh: drip.emitterLh ?? USUAL_EMITTER_LH[units],
      atKPa: WORKS_AT_KPA,
      exponent: 0.5,
      keepsFromKPa: 0,
    },
    why: `${wettingWords(soil, formatShort(wets, units))}${isBand ? say`; ${formatShort(CLOSE[units], units)} from emitter to emitter for crops sown close` : ""}`,
  };
}

const wettingWords = (soil: keyof typeof WETS, across: string): string =>
  soil === "mix"
    ? say`an emitter wets about ${across} across in loose mix`
    : say`an emitter wets about ${across} across in the yard's own soil`;

/** Whether something has been typed that no line is made with. */
export const isTooClose = ({ watering: { drip } }: Bed): boolean =>
  Math.min(drip.apart ?? Infinity, drip.emittersApart ?? Infinity) < LEAST_APART;
