import type { Bed } from "../garden/kinds/bed.ts";
import { outlineOf } from "../garden/outline.ts";
import { published } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { say, sayCount, word } from "../words/say.ts";
import { withFill } from "./fill-way-out.ts";
import { defineRule } from "./rule.ts";
import { numberWord } from "./words.ts";

/** Whether anything that may carry herbicide goes into or onto a bed: compost, straw, grass clippings. */
const takesCompost = ({ fill, mulch }: Bed): boolean =>
  (fill.way !== "native" && fill.recipe.compost > 0) ||
  mulch?.material === "straw" ||
  mulch?.material === "grass-clippings" ||
  mulch?.material === "compost";

/** Tells, once for the whole garden, that compost, straw and manure are to be tried on beans or peas before use. */
export const untestedFill = defineRule({
  id: "untested-fill",
  grade: "note",
  promise: word("Compost, manure, straw and hay have passed a pot test before they go into a bed."),
  why: word(
    "Some weedkillers outlast haymaking, the animal and the compost heap, and ruin tomatoes and beans for years.",
  ),
  source: published(
    "Oregon State University Small Farms 2009 and WSU Whatcom County Extension 2011: 2 parts suspect compost to 1 potting mix, peas or beans, 2 to 3 weeks",
  ),
  needs: ["beds"],

  check({ beds }) {
    const untested = beds.filter((bed) => !bed.fill.tested && takesCompost(bed));
    if (untested.length === 0) return [];
    return [
      {
        itemIds: untested.map(({ id }) => id),
        at: untested.map((bed) => centroid(outlineOf(bed))),
        measured: untested.length,
        limit: 0,
        unit: "count" as const,
        title: sayCount(
          untested.length,
          {
            one: "Test the compost for {{count}} bed before it is delivered",
            other: "Test the compost for {{count}} beds before it is delivered",
          },
          { count: numberWord(untested.length) },
        ),
        detail: say`Grow three peas or beans a pot in two parts of it to one of potting mix, beside pots without it, for two to three weeks.`,
        waysOut: [
          {
            label: say`Mark as tested`,
            ops: untested.flatMap((bed) => withFill(bed, "", { tested: true }).ops),
          },
        ],
      },
    ];
  },
});
