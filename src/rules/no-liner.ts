import { isHard } from "../garden/ground-under.ts";
import { nameOf } from "../garden/name-of.ts";
import { fromMemory } from "../garden/source.ts";
import { formatShare } from "../units/format-figure.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags beds on contaminated ground without a liner. Paving and a table's floor are barrier enough. */
export const noLiner = defineRule({
  id: "no-liner",
  grade: "must",
  promise: word("Over contaminated ground every bed has a liner."),
  why: word(
    "Without one, roots and worms bring lead and old fuel up into the food; the liner also marks where clean soil ends.",
  ),
  source: fromMemory(
    "EPA Brownfields and Urban Agriculture: Interim Guidelines, 2011: clean soil over a water-permeable fabric",
  ),
  needs: ["beds", "grounds"],

  check({ beds, grounds }) {
    return beds.flatMap((bed) => {
      const bad = (grounds.get(bed.id) ?? []).filter(
        ({ ground }) => ground.contaminated && !isHard(ground.cover),
      );
      if (bad.length === 0 || bed.legs !== null || bed.bottom.liner !== null) return [];
      const share = bad.reduce((sum, { share: part }) => sum + part, 0);
      return [
        {
          itemIds: [bed.id],
          at: bad.map(({ at }) => at),
          measured: share,
          limit: 0,
          unit: "ratio" as const,
          title: say`${nameOf(bed)}: no liner over contaminated ground`,
          detail: say`${formatShare(share)} of it stands on contaminated ground. Fabric lets water through; do not use scrap rubber.`,
          waysOut: [
            {
              label: say`Lay a fabric liner`,
              ops: [
                { op: "set" as const, id: bed.id, changes: { bottom: { ...bed.bottom, liner: "fabric" } } },
              ],
            },
          ],
        },
      ];
    });
  },
});
