import { CROPS, type Crop } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { growing, withoutCrops } from "../garden/plantings.ts";
import { centroid } from "../geometry/ring.ts";
import { formatHours } from "../units/format-figure.ts";
import { cropsOf, SAME_HOURS, sunAskedBy, sunWanted } from "./crop-sun.ts";
import { moveIntoSun } from "./move-into-sun.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { takerWords, withoutTrellis } from "./sun-takers.ts";
import { capital, listedOrCounted } from "./words.ts";

/** Flags crops that want full sun in beds with enough for leaf and root crops only. */
export const sunHungryCrops = defineRule({
  id: "sun-hungry-crops",
  grade: "should",
  promise: "Every crop gets the sun it asks for.",
  why: "Fruiting crops ripen late and little in part sun, where leaf and root crops still do well.",
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
      const want = hungry.length > 1 ? "want" : "wants";
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: got.hours,
          limit,
          unit: "h" as const,
          title: `${nameOf(bed)}: ${hours} of sun a day for ${names}`,
          detail: `${capital(names)} ${want} ${formatHours(limit)} of direct sun a day; the bed gets ${hours} over the season.${takerWords(got, items)}`,
          get waysOut() {
            return [
              ...othersInstead(bed, hungry, got.hours, limits),
              ...withoutTrellis(garden, got, (after) => after.hours >= limit - SAME_HOURS),
              ...moveIntoSun({ garden, access }, bed, {
                hours: sunWanted(bed, limits),
                about: "sun wanted",
              }),
            ];
          },
        },
      ];
    });
  },
});

/** A crop that bears this much sun and asks for no more soil, in the place of those that do not; or only what is left. */
function othersInstead(bed: Bed, hungry: readonly Crop[], hours: number, limits: Limits): WayOut[] {
  const left = withoutCrops(
    bed,
    hungry.map(({ id }) => id),
  );
  const fit = left.length > 0 ? null : substitute(hungry, hours, limits);
  if (left.length === 0 && !fit) return [];
  const names = listedOrCounted(hungry.map(cropWord), "crops");
  return [
    {
      label: fit ? `Grow ${cropWord(fit)} instead of ${names}` : `Leave out ${names}`,
      ops: [{ op: "set", id: bed.id, changes: { plantings: fit ? growing(fit.id) : left } }],
    },
  ];
}

const DEPTHS: Readonly<Record<Crop["rootClass"], number>> = { shallow: 0, medium: 1, deep: 2 };

/** The first of the table that does with the sun there is and with the soil of what it takes the place of. */
function substitute(hungry: readonly Crop[], hours: number, limits: Limits): Crop | null {
  const soil = Math.max(...hungry.map(({ leastBedDepth }) => leastBedDepth));
  const roots = Math.max(...hungry.map(({ rootClass }) => DEPTHS[rootClass]));
  return (
    CROPS.find(
      (crop) =>
        crop.sun === "part" &&
        sunAskedBy(crop, limits) <= hours + SAME_HOURS &&
        crop.leastBedDepth <= soil &&
        DEPTHS[crop.rootClass] <= roots,
    ) ?? null
  );
}
