import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { published } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { timberById } from "../takeoff/timbers.ts";
import { say, word } from "../words/say.ts";
import { language } from "../words/speaker.ts";
import { defineRule } from "./rule.ts";

/** Offered instead: one that is sold everywhere and one that lasts. */
const INSTEAD = ["douglas-fir", "western-redcedar"];

/** Flags frames of wood that may not, or not without care, stand beside food: creosoted, treated, composite. */
export const unsafeTimber = defineRule({
  id: "unsafe-timber",
  grade: "should",
  promise: word("Frames are of wood that may stand beside food."),
  why: word("What keeps the wood from rotting leaches into the soil it holds, and some of it is poison."),
  source: published(
    "Iowa State University Extension on raised-bed materials; Ohio State University Extension on railroad ties",
  ),
  needs: ["beds"],

  check({ beds }) {
    return beds.flatMap((bed) => {
      const { wall } = bed;
      if (wall.made !== "boards") return [];
      const timber = timberById(wall.timber);
      if (!timber || timber.besideFood === "fit") return [];
      const unfit = timber.besideFood === "unfit";
      return [
        {
          grade: unfit ? ("must" as const) : ("should" as const),
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: 1,
          limit: 0,
          unit: "count" as const,
          title: say`${nameOf(bed)}: ${lowerFirst(timber.label)} beside food`,
          detail: timber.note,
          waysOut: INSTEAD.flatMap((id) => {
            const other = timberById(id);
            return other
              ? [
                  {
                    label: say`Use untreated ${other.label}`,
                    ops: [{ op: "set" as const, id: bed.id, changes: { wall: { ...wall, timber: id } } }],
                  },
                ]
              : [];
          }),
        },
      ];
    });
  },
});

/** Names of woods that begin with letters alone keep their capital, as all German ones do. */
const lowerFirst = (label: string): string =>
  language() !== "de" && /^[A-Z][a-z]/.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
