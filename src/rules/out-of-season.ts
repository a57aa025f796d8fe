import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Planting } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import { frostsOf } from "../planting/frosts.ts";
import { SOWING_SOURCES } from "../planting/sowing-table.ts";
import { standingsOf } from "../planting/standings.ts";
import { formatMonthDay } from "../sun/day.ts";
import { say, word } from "../words/say.ts";
import { otherCrop } from "./other-crop.ts";
import {
  bedAfter,
  plantingWord,
  plantingWords,
  replanted,
  standsNoWorse,
  withoutPlantings,
} from "./replanting.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { type OutOfSeason, outOfSeason } from "./season-fit.ts";

/**
 * Flags beds with a tender crop set before the last frost, or a crop that is first ready once autumn's frost has spoilt it.
 * Where nobody has typed the frosts it is worth knowing, no more.
 */
export const outOfSeasonPlanting = defineRule({
  id: "out-of-season",
  grade: "should",
  promise: word("No planting meets a frost it cannot stand."),
  why: word("One night of frost kills tender plants; what ripens after it never does."),
  source: SOWING_SOURCES.hardiness,
  needs: ["garden", "beds", "site"],

  check({ garden, beds, site }) {
    const known = frostsOf(site).by === "frosts";
    return beds.flatMap((bed) => {
      const late = standingsOf(bed, site).flatMap((standing) => {
        const wrong = outOfSeason(standing, site);
        return wrong ? [{ planting: standing.planting, wrong }] : [];
      });
      const [worst] = late.toSorted((a, b) => b.wrong.days - a.wrong.days);
      if (!worst) return [];
      const out = late.map(({ planting }) => planting);
      return [
        {
          ...(known ? {} : { grade: "note" as const }),
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: worst.wrong.days,
          limit: 0,
          unit: "count" as const,
          title: `${nameOf(bed)}: ${plantingWord(worst.planting)} ${shortWords(worst.wrong)}`,
          detail: `${longWords(worst.wrong)}.${known ? "" : say` The frosts are not typed yet; these are the usual ones.`}`,
          get waysOut() {
            return waysInto(garden, bed, out);
          },
        },
      ];
    });
  },
});

const shortWords = ({ what }: OutOfSeason): string =>
  what === "before-last-frost" ? say`set before the last frost` : say`ripe after the first frost`;

function longWords({ what, days, frost }: OutOfSeason): string {
  const far = days === 1 ? say`one day` : say`${days} days`;
  return what === "before-last-frost"
    ? say`It is set ${far} before the mean last frost, ${formatMonthDay(frost)}, which it does not stand`
    : say`It is first ready ${far} too late: frost begins about ${formatMonthDay(frost)}`;
}

function waysInto(garden: Garden, bed: Bed, out: readonly Planting[]): WayOut[] {
  return [
    replanted(say`Set ${plantingWords(out)} at the usual time`, bed, out, (planting) => ({
      ...planting,
      from: null,
      until: null,
    })),
    ...otherCrop(garden, bed, out),
    withoutPlantings(bed, out),
  ].filter(({ ops }) => {
    const after = applyOps(garden, ops);
    const then = bedAfter(bed, after);
    const inSeason =
      then !== null && standingsOf(then, after.site).every((one) => !outOfSeason(one, after.site));
    return inSeason && standsNoWorse(bed, after);
  });
}
