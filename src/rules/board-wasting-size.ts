import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { computed } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { boardFriendlySize } from "../takeoff/board-friendly.ts";
import { formatMoney } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { say, sayCount, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Points out sizes that waste boards where a saw's width less would not. */
export const boardWastingSize = defineRule({
  id: "board-wasting-size",
  grade: "note",
  promise: word("No bed is a little too long for the boards it is sawn from."),
  why: word(
    "Three 8 ft boards make a 4 x 8 ft frame only if the saw takes nothing; ends of 47 15/16 in make it true.",
  ),
  source: computed("the cut plan: n pieces fit a board when their lengths and n - 1 saw cuts do"),
  needs: ["garden", "beds", "units"],

  check({ garden, beds, units }) {
    const told = new Set<string>();
    return beds.flatMap((bed) => {
      if (told.has(bed.id)) return [];
      const friendly = boardFriendlySize(garden, bed);
      if (!friendly || bed.shape.type !== "rectangle") return [];
      const { shape, beds: alike, saved, boardsSaved } = friendly;
      for (const { id } of alike) told.add(id);

      const narrower = shape.width < bed.shape.width;
      const [measured, limit] = narrower ? [bed.shape.width, shape.width] : [bed.shape.length, shape.length];
      const less = formatShort(measured - limit, units);
      const size = `${formatShort(shape.width, units)} × ${formatShort(shape.length, units)}`;
      const money = formatMoney(saved, garden.prices.currency);
      const boards =
        boardsSaved > 0 ? sayCount(boardsSaved, { one: " and a board", other: " and {{count}} boards" }) : "";
      const others = alike.length - 1;
      const each = others > 0 ? say` and ${others} alike` : "";
      return [
        {
          itemIds: alike.map(({ id }) => id),
          at: alike.map((one) => centroid(outlineOf(one))),
          measured,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}${each}: ${less} smaller saves ${money}`,
          detail: say`At ${size} the frame comes out of the boards on sale: ${money}${boards} saved at least.`,
          waysOut: [
            {
              label: others > 0 ? say`Make them ${size}` : say`Make it ${size}`,
              ops: alike.map(({ id }) => ({ op: "set" as const, id, changes: { shape } })),
            },
          ],
        },
      ];
    });
  },
});
