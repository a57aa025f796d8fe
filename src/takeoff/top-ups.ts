import type { Garden } from "../garden/garden.ts";
import { practice, published, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { word } from "../words/say.ts";

/** The two ways of topping beds up with compost. Depths in mm. */
export const TOP_UPS = {
  habit: {
    /** Each time. */
    depths: [2 * INCH, 3 * INCH],
    why: word(
      "A bed loses its organic matter to rot and settles: 2 to 3 in put back the height and feed hungry crops.",
    ),
    source: practice("growers of raised beds put 2 to 3 in of compost on, once or twice a year"),
  },
  advice: {
    /** In a year, whether in one go or two. */
    depths: [1 * INCH, 1 * INCH],
    why: word(
      "An inch a year feeds a bed. Of 20 gardens tested all had more phosphorus than plants use, from years of compost, and it washes out.",
    ),
    source: published(
      "University of Minnesota Extension (2023): about an inch of compost a year or less; survey of October 2022, 20 of 20 gardens at 27 to 244 ppm of phosphorus, where 25 is very high",
    ),
  },
} as const satisfies Record<
  Garden["upkeep"]["topUp"],
  { readonly depths: readonly [number, number]; readonly why: string; readonly source: Source }
>;

const middle = ([least, most]: readonly [number, number]): number => (least + most) / 2;

/** How deep compost is put on each time, mm: the middle of the habit, or the year's inch in as many parts. */
export const topUpDepth = ({ topUp, topUpsAYear }: Garden["upkeep"]): number =>
  topUp === "habit" ? middle(TOP_UPS.habit.depths) : middle(TOP_UPS.advice.depths) / topUpsAYear;
