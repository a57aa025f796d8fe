import { practice } from "../garden/source.ts";
import { boundsOf } from "../geometry/ring.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Says that walks to the kitchen are not measured, in a garden where no door is drawn. */
export const noDoor = defineRule({
  id: "no-door",
  grade: "note",
  promise: word("The plan shows the door that the harvest is carried to."),
  why: word("Without it, nobody can tell how far each bed is from the kitchen."),
  source: practice("a plan shows the kitchen door"),
  needs: ["garden", "beds"],

  check({ garden: { items, yard }, beds }) {
    if (beds.length === 0 || items.some(({ kind }) => kind === "door")) return [];
    const { minX, minY, maxX, maxY } = boundsOf(yard);
    return [
      {
        itemIds: [],
        at: [[(minX + maxX) / 2, (minY + maxY) / 2] as const],
        measured: 0,
        limit: 1,
        unit: "count" as const,
        title: say`No door is drawn: walks to the kitchen are not measured`,
        detail: say`Put the kitchen door on the plan, and each bed tells its walk.`,
        waysOut: [],
      },
    ];
  },
});
