import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { animalsWord, burrowerUnder, withMesh } from "./burrowers-under.ts";
import { defineRule } from "./rule.ts";

/**
 * Flags mesh that the animals of the place get through. The one tolerance for lengths lets metric mesh of 13 mm and
 * 6.5 mm pass for 1/2 in and 1/4 in.
 */
export const coarseMesh = defineRule({
  id: "coarse-mesh",
  grade: "must",
  promise: word("The mesh under a bed is fine enough for the animals of the place."),
  why: word("Mesh that lets the animal through is dearer than none and does no more."),
  source: LIMITS.meshForVoles.source,
  limits: ["meshForGophers", "meshForVoles"],
  needs: ["beds", "grounds", "limits", "units"],

  check({ beds, grounds, limits, units }) {
    return beds.flatMap((bed) => {
      const burrower = burrowerUnder(bed, grounds.get(bed.id) ?? [], limits);
      const opening = bed.bottom.mesh?.opening ?? 0;
      if (!burrower || opening <= burrower.mesh + SAME_LENGTH) return [];
      const [has, wants] = [formatShort(opening, units), formatShort(burrower.mesh, units)];
      return [
        {
          itemIds: [bed.id],
          at: [burrower.at],
          measured: opening,
          limit: burrower.mesh,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${has} mesh lets ${animalsWord(burrower.animal)} through`,
          detail: say`Mesh is measured wire centre to wire centre; ${wants} keeps ${animalsWord(burrower.animal)} out.`,
          waysOut: [withMesh(bed, burrower.mesh, say`Use ${wants} mesh`)],
        },
      ];
    });
  },
});
