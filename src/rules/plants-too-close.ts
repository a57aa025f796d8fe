import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Planting } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import { bedSpacing, SPACING_SOURCES, spacingOf } from "../planting/spacing.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { plantingWord, plantingWords, replanted, standsNoWorse } from "./replanting.ts";
import { defineRule } from "./rule.ts";

/** Flags beds in which somebody has typed a spacing that is closer than the least the crop is given in beds. */
export const plantsTooClose = defineRule({
  id: "plants-too-close",
  grade: "should",
  promise: word("Every plant has the room its crop needs."),
  why: word("Crowded plants stay small, dry out sooner and pass disease from leaf to leaf."),
  source: SPACING_SOURCES.bed,
  needs: ["garden", "beds", "units"],

  check({ garden, beds, units }) {
    return beds.flatMap((bed) => {
      const close = bed.plantings.filter((planting) => shortBy(planting) > SAME_LENGTH);
      const [worst] = close.toSorted((a, b) => shortBy(b) - shortBy(a));
      if (!worst) return [];
      const { least } = bedSpacing(worst.crop);
      const measured = leastTyped(worst);
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured,
          limit: least,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${plantingWord(worst)} set ${formatShort(measured, units)} apart`,
          detail: say`${formatShort(least, units)} is the least in a bed.${also(close, worst)}`,
          get waysOut() {
            const label =
              close.length === 1
                ? say`Set ${plantingWord(worst)} ${formatShort(least, units)} apart`
                : say`Give ${plantingWords(close)} room`;
            return [replanted(label, bed, close, spread)].filter(({ ops }) =>
              standsNoWorse(bed, applyOps(garden, ops)),
            );
          },
        },
      ];
    });
  },
});

/** Nearest its plants come in any direction: in rows that is from row to row where those are closer. */
function leastTyped(planting: Planting): number {
  const { apart, rowsApart } = spacingOf(planting);
  return planting.set === "block" ? apart : Math.min(apart, rowsApart);
}

const shortBy = (planting: Planting): number => bedSpacing(planting.crop).least - leastTyped(planting);

const also = (close: readonly Planting[], worst: Planting): string =>
  close.length > 1 ? say` So it is with ${plantingWords(close.filter((one) => one !== worst))}.` : "";

/** What is typed too close at the least instead. */
function spread(planting: Planting): Planting {
  const { least } = bedSpacing(planting.crop);
  const wide = (typed: number | null) => (typed === null ? null : Math.max(typed, least));
  return { ...planting, apart: wide(planting.apart), rowsApart: wide(planting.rowsApart) };
}
