import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Planting } from "../garden/plantings.ts";
import { practice } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { formatShare } from "../units/format-figure.ts";
import { say, word } from "../words/say.ts";
import { type CropShadow, cropShadows } from "./crop-shadows.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { plantingWord, standsNoWorse } from "./replanting.ts";
import { defineRule, type WayOut } from "./rule.ts";

/** A low crop may have so much of its ground in the shade of a taller one at noon of the equinoxes. */
const MOST_SHADED = 0.5;

/**
 * Flags crops that want full sun and stand on the pole side of a taller one, in the same bed or the next. What trellises and
 * high walls take from other beds is told by the sun hours.
 */
export const shadedByCrop = defineRule({
  id: "shaded-by-crop",
  grade: "should",
  promise: word("Tall crops stand on the pole side of low ones that want sun."),
  why: word(
    "A row of corn or staked tomatoes on the sunny side keeps the low crop behind it in shade all spring and autumn.",
  ),
  source: practice(
    "tall crops to the pole side; half of the low crop's ground in the noon shadow of the equinoxes is taken as too much",
  ),
  needs: ["garden", "beds", "site"],

  check({ garden, beds, site }) {
    return worstOf(cropShadows(beds, site)).map(({ tall, low, share }) => {
      const tallWord = plantingWord(tall.patch.standing.planting);
      const lowWord = plantingWord(low.patch.standing.planting);
      const own = tall.bed.id === low.bed.id;
      return {
        itemIds: own ? [low.bed.id] : [low.bed.id, tall.bed.id],
        at: [centroid(outlineOf(low.bed))],
        measured: share,
        limit: MOST_SHADED,
        unit: "ratio" as const,
        title: own
          ? say`${nameOf(low.bed)}: ${lowWord} in the shade of the ${tallWord}`
          : say`${nameOf(low.bed)}: ${lowWord} in the shade of the ${tallWord} of ${nameOf(tall.bed)}`,
        detail: say`At noon of the equinoxes ${formatShare(share)} of its ground is shaded; ${lowWord} wants full sun.`,
        get waysOut() {
          const out = [low.patch.standing.planting];
          const clears = (after: Garden) =>
            !isTold(after, low.bed, tall.bed) && standsNoWorse(low.bed, after);
          return [
            ...(own ? changePlaces(garden, low.bed, tall.patch.standing.planting, out[0]!, clears) : []),
            ...otherCrop(garden, low.bed, out, { also: ({ sun }) => sun !== "full", clears }),
            ...otherBed(garden, low.bed, out, clears),
          ];
        },
      };
    });
  },
});

/** For each two beds the worst that has to be told. */
function worstOf(shadows: readonly CropShadow[]): readonly CropShadow[] {
  const worst = new Map<string, CropShadow>();
  for (const shadow of shadows) {
    const { tall, low, share } = shadow;
    const key = `${low.bed.id} ${tall.bed.id}`;
    if (share <= MOST_SHADED || share <= (worst.get(key)?.share ?? 0)) continue;
    worst.set(key, shadow);
  }
  return [...worst.values()];
}

const isTold = ({ items, site }: Garden, low: Bed, tall: Bed): boolean =>
  worstOf(
    cropShadows(
      items.filter((item) => item.kind === "bed"),
      site,
    ),
  ).some((shadow) => shadow.low.bed.id === low.id && shadow.tall.bed.id === tall.id);

/** Each takes the other's patch, or its place in the list where they have none of their own. */
function changePlaces(
  garden: Garden,
  bed: Bed,
  tall: Planting,
  low: Planting,
  clears: (after: Garden) => boolean,
): WayOut[] {
  const plantings = bed.plantings.map((planting) => {
    if (planting === tall) return { ...low, patch: tall.patch };
    return planting === low ? { ...tall, patch: low.patch } : planting;
  });
  const label = say`Let ${plantingWord(tall)} and ${plantingWord(low)} change places`;
  const ops = [{ op: "set" as const, id: bed.id, changes: { plantings } }];
  return clears(applyOps(garden, ops)) ? [{ label, ops }] : [];
}
