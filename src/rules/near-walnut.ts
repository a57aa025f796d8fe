import { roundZone } from "../access/clear-zones.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatDistance } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { nearerThan, pointRing } from "./near.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/**
 * Flags beds near a black walnut: to be moved within the distance that its poison is known to reach, worth knowing as
 * far as it has been found to reach from a mature tree. A table bed stands clear of it.
 */
export const nearWalnut = defineRule({
  id: "near-walnut",
  grade: "should",
  promise: word("No bed stands where a black walnut poisons the ground."),
  why: word(
    "Tomato, pepper, potato and others wilt and die where its roots are; a raised bed helps little once roots find it.",
  ),
  source: LIMITS.walnut.source,
  limits: ["walnut", "walnutCaution"],
  needs: ["garden", "items", "beds", "limits", "units"],

  check({ garden, items, beds, limits, units }) {
    const walnuts = items.filter((item) => item.kind === "tree" && item.species === "black-walnut");
    const farthest = Math.max(limits.walnut, limits.walnutCaution);
    return walnuts.flatMap((tree) =>
      beds.flatMap((bed) => {
        const gap = bed.legs === null ? nearerThan(farthest, bed, pointRing(tree.at)) : null;
        if (!gap) return [];
        const poisoned = gap.width < limits.walnut - SAME_LENGTH;
        const limit = poisoned ? limits.walnut : farthest;
        const far = formatDistance(gap.width, units);
        return [
          {
            grade: poisoned ? ("should" as const) : ("note" as const),
            itemIds: [bed.id, tree.id],
            at: [gap.from, tree.at],
            measured: gap.width,
            limit,
            unit: "mm" as const,
            title: say`${nameOf(bed)}: ${far} from a black walnut`,
            detail: say`Its poison is known to ${formatDistance(limits.walnut, units)} from the trunk, and to ${formatDistance(farthest, units)} from a mature tree.`,
            // Out of reach of a mature tree, so that one worry does not make room for the next.
            get waysOut() {
              return shiftWayOut(garden, bed.id, {
                least: farthest - gap.width,
                keepOff: [roundZone(tree.at, farthest)],
              });
            },
          },
        ];
      }),
    );
  },
});
