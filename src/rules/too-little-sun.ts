import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { centroid } from "../geometry/ring.ts";
import { formatHours } from "../units/format-figure.ts";
import { say, word } from "../words/say.ts";
import { SAME_HOURS, sunWanted } from "./crop-sun.ts";
import { moveIntoSun } from "./move-into-sun.ts";
import { defineRule } from "./rule.ts";
import { takerWords, withoutTrellis } from "./sun-takers.ts";

/**
 * Flags beds with less sun than any vegetable crops with, and beds without crops yet that most vegetables would not thrive
 * in. What the crops of a bed ask for above that has a rule of its own.
 */
export const tooLittleSun = defineRule({
  id: "too-little-sun",
  grade: "must",
  promise: word("Every bed gets the direct sun that vegetables need."),
  why: word(
    "Soil, water and care can be brought to a bed; sun cannot. In too much shade crops grow leggy and bear little.",
  ),
  source: LIMITS.sun.source,
  limits: ["sunLeast", "sun"],
  needs: ["garden", "access", "beds", "items", "sun", "limits"],

  check({ garden, access, beds, items, sun, limits }) {
    return beds.flatMap((bed) => {
      const got = sun.get(bed.id);
      if (!got) return [];
      const tooLittle = got.hours < limits.sunLeast - SAME_HOURS;
      const notFull = bed.plantings.length === 0 && got.hours < limits.sun - SAME_HOURS;
      if (!tooLittle && !notFull) return [];
      const limit = tooLittle ? limits.sunLeast : limits.sun;
      const hours = formatHours(got.hours);
      return [
        {
          grade: tooLittle ? ("must" as const) : ("should" as const),
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: got.hours,
          limit,
          unit: "h" as const,
          title: say`${nameOf(bed)}: ${hours} of sun a day`,
          detail: `${
            tooLittle
              ? say`It gets ${hours} of direct sun a day over the season; ${formatHours(limit)} are needed at least.`
              : say`It gets ${hours} of direct sun a day over the season; ${formatHours(limit)} are wanted.`
          }${takerWords(got, items)}`,
          get waysOut() {
            const wanted = sunWanted(bed, limits);
            return [
              ...withoutTrellis(garden, got, (after) => after.hours >= limit - SAME_HOURS),
              ...moveIntoSun({ garden, access }, bed, { hours: wanted, about: "sun-wanted" }),
            ];
          },
        },
      ];
    });
  },
});
