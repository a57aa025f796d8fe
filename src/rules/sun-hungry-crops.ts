import type { Crop } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { withoutCrops } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import { formatHours } from "../units/format-figure.ts";
import { say, sayCount, word } from "../words/say.ts";
import { cropsOf, SAME_HOURS, sunAskedBy, sunWanted } from "./crop-sun.ts";
import { moveIntoSun } from "./move-into-sun.ts";
import { otherBed } from "./other-bed.ts";
import { otherCrop } from "./other-crop.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { takerWords, withoutTrellis } from "./sun-takers.ts";
import { capital, listedOrCounted } from "./words.ts";

/** Flags crops that want full sun in beds with enough for leaf and root crops only. */
export const sunHungryCrops = defineRule({
  id: "sun-hungry-crops",
  grade: "should",
  promise: word("Every crop gets the sun it asks for."),
  why: word("Fruiting crops ripen late and little in part sun, where leaf and root crops still do well."),
  source: LIMITS.sun.source,
  limits: ["sun", "sunLeast"],
  needs: ["garden", "access", "beds", "items", "sun", "limits"],

  check({ garden, access, beds, items, sun, limits }) {
    return beds.flatMap((bed) => {
      const got = sun.get(bed.id);
      // With too little for any crop, that is what is said.
      if (!got || got.hours < limits.sunLeast - SAME_HOURS) return [];
      const hungry = cropsOf(bed).filter((crop) => got.hours < sunAskedBy(crop, limits) - SAME_HOURS);
      if (hungry.length === 0) return [];
      const limit = Math.max(...hungry.map((crop) => sunAskedBy(crop, limits)));
      const [hours, names] = [formatHours(got.hours), listedOrCounted(hungry.map(cropWord), "crops")];
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: got.hours,
          limit,
          unit: "h" as const,
          title: say`${nameOf(bed)}: ${hours} of sun a day for ${names}`,
          detail: `${sayCount(
            hungry.length,
            {
              one: "{{names}} wants {{limit}} of direct sun a day; the bed gets {{hours}} over the season.",
              other: "{{names}} want {{limit}} of direct sun a day; the bed gets {{hours}} over the season.",
            },
            { names: capital(names), limit: formatHours(limit), hours },
          )}${takerWords(got, items)}`,
          get waysOut() {
            return [
              ...othersInstead(garden, bed, hungry),
              ...withoutTrellis(garden, got, (after) => after.hours >= limit - SAME_HOURS),
              ...moveIntoSun({ garden, access }, bed, {
                hours: sunWanted(bed, limits),
                about: "sun-wanted",
              }),
            ];
          },
        },
      ];
    });
  },
});

/** A crop that bears this much sun in the place of those that do not, or only what is left; or those in another bed. */
function othersInstead(garden: Garden, bed: Bed, hungry: readonly Crop[]): WayOut[] {
  const left = withoutCrops(
    bed,
    hungry.map(({ id }) => id),
  );
  const out = bed.plantings.filter((planting) => !left.includes(planting));
  const leaveOut = {
    label: say`Leave out ${listedOrCounted(hungry.map(cropWord), "crops")}`,
    ops: [{ op: "set" as const, id: bed.id, changes: { plantings: left } }],
  };
  return [
    ...otherCrop(garden, bed, out, { also: ({ sun }) => sun === "part" }),
    ...otherBed(garden, bed, out),
    ...(left.length > 0 ? [leaveOut] : []),
  ];
}
