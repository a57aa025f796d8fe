import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { practice } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { plantsOf } from "../planting/plants.ts";
import { monthDayOf, YEAR_DAYS } from "../planting/year-day.ts";
import { say, sayCount, word } from "../words/say.ts";
import { type PatchOverlap, patchOverlaps } from "./patch-overlaps.ts";
import {
  bedAfter,
  plantingWord,
  plantingWords,
  replanted,
  standsNoWorse,
  withoutPlantings,
} from "./replanting.ts";
import { defineRule, type WayOut } from "./rule.ts";

/**
 * Flags beds in which patches lie over one another while both plantings stand. The one that comes first in the list has the
 * ground; how many plants the others lose is what is measured. At different times of the year they may share it.
 */
export const overlappingPlantings = defineRule({
  id: "overlapping-plantings",
  grade: "should",
  promise: word("No two plantings have the same ground at the same time."),
  why: word("Two plants in one place starve each other of light and water; only one of them crops."),
  source: practice("each plant has the room of its spacing to itself"),
  needs: ["garden", "beds", "site"],

  check({ garden, beds, site }) {
    return beds.flatMap((bed) => {
      const overlaps = patchOverlaps(bed, site);
      const [overlap] = overlaps;
      if (!overlap) return [];
      const losers = [...new Set(overlaps.map(({ second }) => second))];
      const lost = losers.reduce((sum, { notPlaced }) => sum + notPlaced, 0);
      const one = plantingWord(overlap.first.standing.planting);
      const other = plantingWord(overlap.second.standing.planting);
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: lost,
          limit: 0,
          unit: "count" as const,
          title: say`${nameOf(bed)}: ${other} lies over ${one}`,
          detail: sayCount(lost, {
            one: "They stand there at the same time; one plant has no room.",
            other: "They stand there at the same time; {{count}} plants have no room.",
          }),
          get waysOut() {
            return waysApart(garden, bed, overlaps);
          },
        },
      ];
    });
  },
});

function waysApart(garden: Garden, bed: Bed, overlaps: readonly PatchOverlap[]): WayOut[] {
  const losers = [...new Set(overlaps.map(({ second }) => second.standing.planting))];
  const words = plantingWords(losers);
  return [
    ...afterwards(bed, overlaps),
    replanted(say`Set ${words} in what is left of the bed`, bed, losers, (planting) => ({
      ...planting,
      patch: null,
    })),
    withoutPlantings(bed, losers),
  ].filter(({ ops }) => {
    const after = applyOps(garden, ops);
    const then = bedAfter(bed, after);
    return (
      then !== null &&
      patchOverlaps(then, after.site).length === 0 &&
      plantsOf(then, after.site).every(({ count }) => count > 0) &&
      standsNoWorse(bed, after)
    );
  });
}

/** Where two alone lie over one another, the later may wait until the earlier has gone. */
function afterwards(bed: Bed, overlaps: readonly PatchOverlap[]): WayOut[] {
  const [overlap, another] = overlaps;
  if (!overlap || another || overlap.first.standing.days >= YEAR_DAYS) return [];
  const { planting: first, from, days } = overlap.first.standing;
  const { planting: second } = overlap.second.standing;
  return [
    replanted(
      say`Set ${plantingWord(second)} once ${plantingWord(first)} has gone`,
      bed,
      [second],
      (planting) => ({
        ...planting,
        from: monthDayOf(from + days),
        until: null,
      }),
    ),
  ];
}
