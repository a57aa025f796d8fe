import { type Crop, cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { CropId } from "../garden/crop-ids.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { practice } from "../garden/source.ts";
import type { Upkeep } from "../garden/upkeep-field.ts";
import { centroid } from "../geometry/ring.ts";
import { INCH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { cropsOf } from "./crop-sun.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { followsItsFamily, kinLastYear } from "./rotation.ts";
import { defineRule } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Years between crops of one family: three to four are usual. */
const YEARS_BETWEEN = 3;

/** Compost laid on at a time by habit and by the usual advice, mm, and how much of it a year makes up for what a family takes. */
const TOP_UP: Readonly<Record<Upkeep["topUp"], number>> = { habit: 2 * INCH, advice: INCH };
const MAKES_UP = 2 * INCH;

/**
 * Flags beds in which a crop follows one of its own family. Where enough compost is laid on each year it is worth knowing, no
 * more: what the family takes out of the soil is put back then, and the diseases they share are what is left.
 */
export const sameFamilyAgain = defineRule({
  id: "same-family-again",
  grade: "should",
  promise: word("No family of plants comes back to a bed the year after."),
  why: word(
    "Relatives take the same from the soil and share pests and diseases that wait in it from one year to the next.",
  ),
  source: practice(
    "three to four years between crops of one family; a yearly top-up of 2 in or more of compost lessens the need",
  ),
  needs: ["garden", "beds"],

  check({ garden, beds }) {
    const { topUp, topUpsAYear } = garden.upkeep;
    const fed = TOP_UP[topUp] * topUpsAYear >= MAKES_UP;
    return beds.flatMap((bed) => {
      const again = cropsOf(bed).filter((crop) => followsItsFamily(crop, bed));
      if (again.length === 0) return [];
      const names = listedOrCounted(again.map(cropWord), "crops");
      return [
        {
          ...(fed ? { grade: "note" as const } : {}),
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: 1,
          limit: YEARS_BETWEEN,
          unit: "count" as const,
          title: say`${nameOf(bed)}: ${names} after ${lastYearWords(again, bed)}`,
          detail: say`They are of one family, and ${YEARS_BETWEEN} to ${YEARS_BETWEEN + 1} years between are usual.${fed ? say` The yearly top-up lessens the need; watch for disease.` : ""}`,
          get waysOut() {
            const ids = new Set<CropId>(again.map(({ id }) => id));
            const out = bed.plantings.filter(({ crop }) => ids.has(crop));
            return [...otherCrop(garden, bed, out), ...otherBed(garden, bed, out)];
          },
        },
      ];
    });
  },
});

function lastYearWords(again: readonly Crop[], bed: Bed): string {
  const kin = [...new Set(again.flatMap((crop) => kinLastYear(crop, bed)))];
  return say`last year's ${listedOrCounted(kin.flatMap((id) => cropById(id) ?? []).map(cropWord), "crops")}`;
}
