import { nameOf } from "../garden/name-of.ts";
import { practice } from "../garden/source.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/** Flags beds and sheds that stick out of the yard, by the shift that would bring them in. */
export const outsideYard = defineRule({
  id: "outside-yard",
  grade: "must",
  promise: word("Every bed and shed stands inside the yard."),
  why: word("What lies beyond the outline is somebody else's ground, or a hedge, or a road."),
  source: practice("the plot's own outline; setbacks from it are a matter of local code"),
  needs: ["garden", "place", "units"],

  check({ garden, place, units }) {
    return place.outside.flatMap(({ id, beyond, at }) => {
      const item = place.movables.find((movable) => movable.id === id);
      if (!item) return [];
      const far = formatShort(beyond, units);
      return [
        {
          itemIds: [id],
          at: [at],
          measured: beyond,
          limit: 0,
          unit: "mm" as const,
          title: say`${nameOf(item)}: ${far} outside the yard`,
          detail: say`It sticks out of the yard's outline by ${far}.`,
          get waysOut() {
            return shiftWayOut(garden, id);
          },
        },
      ];
    });
  },
});
