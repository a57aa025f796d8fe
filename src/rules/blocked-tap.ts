import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { nearerThan, pointRing } from "./near.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/** Flags beds too close to a tap. */
export const blockedTap = defineRule({
  id: "blocked-tap",
  grade: "should",
  promise: word("There is room round every tap."),
  why: word("A can must fit under the tap and a hand must turn it, with the hose on."),
  source: LIMITS.tapClear.source,
  limits: ["tapClear"],
  needs: ["garden", "items", "beds", "limits", "units"],

  check({ garden, items, beds, limits, units }) {
    const taps = items.filter((item) => item.kind === "tap");
    const limit = limits.tapClear;
    return taps.flatMap((tap) =>
      beds.flatMap((bed) => {
        const gap = nearerThan(limit, bed, pointRing(tap.at));
        if (!gap) return [];
        const [far, wanted] = [formatShort(gap.width, units), formatShort(limit, units)];
        return [
          {
            itemIds: [bed.id, tap.id],
            at: [gap.from, tap.at],
            measured: gap.width,
            limit,
            unit: "mm" as const,
            title: say`${nameOf(bed)}: ${far} from ${nameOf(tap)}`,
            detail: say`It stands ${far} from the tap, where ${wanted} are to be kept clear.`,
            get waysOut() {
              return shiftWayOut(garden, bed.id);
            },
          },
        ];
      }),
    );
  },
});
