import { published } from "../garden/source.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags ends of ways at which a wheelchair can only back out. */
export const wheelchairDeadEnd = defineRule({
  id: "wheelchair-dead-end",
  grade: "must",
  promise: word("No way ends without room for a wheelchair to turn."),
  why: word("Backing out along beds, without seeing, tips chairs. Guidance for a private yard."),
  source: published(
    "2010 ADA Standards for Accessible Design, 304.3, held to the ends of ways by common practice",
  ),
  limits: ["turningCircle"],
  needs: ["access", "limits", "units"],

  check({ access, limits, units }) {
    const ends = access.wheelchair?.deadEnds ?? [];
    return ends
      .filter(({ space }) => space === null)
      .map(({ at }) => ({
        itemIds: [],
        at: [at],
        measured: 0,
        limit: 1,
        unit: "count" as const,
        title: say`A way ends with no room for a wheelchair to turn`,
        detail: say`Leave a circle ${formatShort(limits.turningCircle, units)} across or a T-shaped space at its end, or let it go through.`,
        waysOut: [],
      }));
  },
});
