import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { placed } from "../geometry/vector.ts";
import { type BedLines, bedLines } from "../irrigation/bed-lines.ts";
import { figure } from "../units/format-figure.ts";
import { formatDistance } from "../units/format-length.ts";
import type { Units } from "../units/length.ts";
import { LINE_VARIATION } from "../water/tubing.ts";
import { say, word } from "../words/say.ts";
import { firstOfEach, lighterLines } from "./drip-changes.ts";
import { defineRule } from "./rule.ts";

const LIMIT = LINE_VARIATION.pressure;

/** Flags drip lines so long that their far end gets much less water than their near one. */
export const unevenDripLine = defineRule({
  id: "uneven-drip-line",
  grade: "should",
  promise: word("A drip line gives as good as the same from its first emitter to its last."),
  why: word("What is watered enough at the far end drowns at the near one, or the far end goes dry."),
  source: LINE_VARIATION.source,
  slow: true,
  needs: ["beds", "units"],

  check({ beds, units }) {
    return beds
      .filter(({ watering }) => watering.by === "drip")
      .flatMap((bed) => {
        const laid = bedLines(bed, units);
        if (isEven(laid)) return [];
        const longest = laid.lines.reduce((a, b) => (b.emitters.length > a.emitters.length ? b : a));
        const varies = percent(laid.pressureVaries);
        return [
          {
            itemIds: [bed.id],
            at: [placed(longest.points.at(-1)!, bed.at, bed.turn)],
            measured: laid.pressureVaries,
            limit: LIMIT,
            unit: "ratio" as const,
            title: say`${nameOf(bed)}: a drip line of ${formatDistance(longest.length, units)} loses ${varies} of its pressure`,
            detail: say`${longest.emitters.length} emitters on one line; along it pressure may vary by ${percent(LIMIT)}, which is about ${percent(LINE_VARIATION.flow)} of the water.`,
            get waysOut() {
              return firstOfEach(lighterLines(bed, units), (change) => isMended(change.bed, units));
            },
          },
        ];
      });
  },
});

const isEven = ({ pressureVaries }: BedLines): boolean => pressureVaries <= LIMIT;

function isMended(bed: Bed, units: Units): boolean {
  const laid = bedLines(bed, units);
  return laid.lines.length > 0 && isEven(laid);
}

const percent = (share: number): string => `${figure(100 * share)} %`;
