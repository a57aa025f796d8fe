import { roundZone } from "../access/clear-zones.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { nearerThan, pointRing } from "./near.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/** Flags beds in the ground that a tree's roots are likely to have taken. Table beds stand clear of roots. */
export const bedInTreeRoots = defineRule({
  id: "bed-in-tree-roots",
  grade: "should",
  promise: word("Every bed stands clear of tree roots."),
  why: word(
    "Feeder roots grow up into good soil within a season or two and drink and eat what was meant for the crops.",
  ),
  source: LIMITS.rootZone.source,
  limits: ["rootZone"],
  needs: ["garden", "items", "beds", "limits", "units"],

  check({ garden, items, beds, limits, units }) {
    const trees = items.filter((item) => item.kind === "tree");
    return trees.flatMap((tree) => {
      const limit = (limits.rootZone * tree.canopy) / 2;
      return beds.flatMap((bed) => {
        const gap = bed.legs === null ? nearerThan(limit, bed, pointRing(tree.at)) : null;
        if (!gap) return [];
        const [far, roots] = [formatShort(gap.width, units), formatShort(limit, units)];
        return [
          {
            itemIds: [bed.id, tree.id],
            at: [gap.from, tree.at],
            measured: gap.width,
            limit,
            unit: "mm" as const,
            title: say`${nameOf(bed)}: in the roots of ${nameOf(tree)}`,
            detail: say`It stands ${far} from the trunk; roots of a crown this wide are likely to reach ${roots}.`,
            get waysOut() {
              return shiftWayOut(garden, bed.id, {
                least: limit - gap.width,
                keepOff: [roundZone(tree.at, limit)],
              });
            },
          },
        ];
      });
    });
  },
});
