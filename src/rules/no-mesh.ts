import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { animalsWord, burrowerUnder, withMesh } from "./burrowers-under.ts";
import { defineRule } from "./rule.ts";

/** Flags beds without mesh where animals burrow. */
export const noMesh = defineRule({
  id: "no-mesh",
  grade: "must",
  promise: word("Where animals burrow, every bed has mesh below it."),
  why: word(
    "A bed of loose moist soil full of roots is dug into from below, and mesh cannot be laid once it is filled.",
  ),
  source: LIMITS.meshForGophers.source,
  limits: ["meshForGophers", "meshForVoles"],
  needs: ["beds", "grounds", "limits", "units"],

  check({ beds, grounds, limits, units }) {
    return beds.flatMap((bed) => {
      const burrower = burrowerUnder(bed, grounds.get(bed.id) ?? [], limits);
      if (!burrower || bed.bottom.mesh !== null) return [];
      const mesh = formatShort(burrower.mesh, units);
      return [
        {
          itemIds: [bed.id],
          at: [burrower.at],
          measured: 0,
          limit: 1,
          unit: "count" as const,
          title: say`${nameOf(bed)}: no mesh against ${animalsWord(burrower.animal)}`,
          detail: say`Mesh of ${mesh} keeps ${animalsWord(burrower.animal)} out.`,
          waysOut: [withMesh(bed, burrower.mesh, say`Add ${mesh} mesh`)],
        },
      ];
    });
  },
});
