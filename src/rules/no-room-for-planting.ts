import type { Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { plantsOf } from "../planting/plants.ts";
import { bedSpacing, SPACING_SOURCES } from "../planting/spacing.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { patchOverlaps } from "./patch-overlaps.ts";
import { bedAfter, plantingWord, plantingWords, standsNoWorse, withoutPlantings } from "./replanting.ts";
import { defineRule } from "./rule.ts";

/**
 * Flags beds with a planting of which not one plant has room: too narrow, or shared by too many. Where another patch has the
 * ground, that is what is said.
 */
export const noRoomForPlanting = defineRule({
  id: "no-room-for-planting",
  grade: "should",
  promise: word("Every planting has room for a plant at least."),
  why: word("A crop that is on the plan and has no room is missed at harvest."),
  source: SPACING_SOURCES.toWall,
  needs: ["garden", "beds", "site", "units"],

  check({ garden, beds, site, units }) {
    return beds.flatMap((bed) => {
      const patches = withoutRoom(bed, site);
      const [worst] = patches.toSorted((a, b) => b.apart - a.apart);
      if (!worst) return [];
      const out = patches.map(({ standing }) => standing.planting);
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: 0,
          limit: 1,
          unit: "count" as const,
          title: say`${nameOf(bed)}: no room for ${plantingWords(out)}`,
          detail: say`A plant of ${plantingWord(worst.standing.planting)} asks for ground ${formatShort(worst.apart, units)} across; its part of the bed is narrower.`,
          get waysOut() {
            return [
              ...otherCrop(garden, bed, out, { also: ({ id }) => bedSpacing(id).most < worst.apart }),
              ...otherBed(garden, bed, out),
              withoutPlantings(bed, out),
            ].filter(({ ops }) => {
              const after = applyOps(garden, ops);
              const then = bedAfter(bed, after);
              return then !== null && withoutRoom(then, site).length === 0 && standsNoWorse(bed, after);
            });
          },
        },
      ];
    });
  },
});

function withoutRoom(bed: Bed, site: Site) {
  const covered = new Set(patchOverlaps(bed, site).map(({ second }) => second));
  return plantsOf(bed, site).filter((patch) => patch.count === 0 && !covered.has(patch));
}
