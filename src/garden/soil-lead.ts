import { say, toldWhenRead, word } from "../words/say.ts";
import { published, type Source } from "./source.ts";

/** A figure that somebody has drawn for lead in soil, parts per million (mg/kg). */
export interface LeadLevel {
  readonly ppm: number;
  readonly words: string;
  /** A later edition has dropped or replaced it. Kept, because it is still quoted. */
  readonly superseded: boolean;
  readonly source: Source;
}

/** None of these is a law for gardens, and they disagree: whoever has a test result is shown all of them by name. */
export const LEAD_LEVELS: readonly LeadLevel[] = [
  {
    ppm: 100,
    words: word("EPA screening level of 2024 where there are several sources of lead"),
    superseded: true,
    source: published("EPA residential soil lead guidance, 17 January 2024, as summarised by law firms"),
  },
  {
    ppm: 200,
    words: word("EPA screening level of 2025"),
    superseded: false,
    source: published("EPA residential soil lead directive, 20 October 2025, press text"),
  },
  {
    ppm: 400,
    words: word("limit for growing food of the University of Maryland Extension"),
    superseded: false,
    source: published("University of Maryland Extension, Filling raised beds; EPA's own level until 2024"),
  },
  {
    ppm: 600,
    words: word("EPA removal level of 2025"),
    superseded: false,
    source: published("EPA residential soil lead directive, 20 October 2025, as tracked by a law programme"),
  },
].map((level) => toldWhenRead(level, "words"));

/** Where a soil test stands to each level: at a level is not above it. */
export const leadVerdicts = (
  ppm: number,
): readonly { readonly level: LeadLevel; readonly above: boolean }[] =>
  LEAD_LEVELS.map((level) => ({ level, above: ppm > level.ppm }));

/** The levels in force, for the sentence that sends somebody to a laboratory. */
export const leadLevelsInForce = (): string =>
  LEAD_LEVELS.filter(({ superseded }) => !superseded)
    .map(({ ppm, words }) => say`${words} ${ppm} ppm`)
    .join(", ");
