import { practice } from "../garden/source.ts";
import { boundsOf } from "../geometry/ring.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Says that hoses are not measured, in a garden where no tap is drawn. */
export const noTap = defineRule({
  id: "no-tap",
  grade: "note",
  promise: word("The plan shows where water comes from."),
  why: word("Without a tap, nobody can tell whether a hose gets to each bed."),
  source: practice("a water source close by: UF/IFAS Extension ENH1211 asks for one without a number"),
  needs: ["garden", "beds"],

  check({ garden: { items, yard }, beds }) {
    if (beds.length === 0 || items.some(({ kind }) => kind === "tap")) return [];
    const { minX, minY, maxX, maxY } = boundsOf(yard);
    return [
      {
        itemIds: [],
        at: [[(minX + maxX) / 2, (minY + maxY) / 2] as const],
        measured: 0,
        limit: 1,
        unit: "count" as const,
        title: say`No tap is drawn: hoses are not measured`,
        detail: say`Put the tap on the plan, and each bed tells how long a hose it takes.`,
        waysOut: [],
      },
    ];
  },
});
