import { nameOf } from "../garden/name-of.ts";
import { computed } from "../garden/source.ts";
import { say, word } from "../words/say.ts";
import { byHand } from "./drip-changes.ts";
import { defineRule } from "./rule.ts";

const NO_MAIN: ReadonlySet<string> = new Set(["no-tap", "tap-shut-in"]);

/** Flags beds with drip lines that no main can be led to. */
export const unfedDripLines = defineRule({
  id: "unfed-drip-lines",
  grade: "should",
  promise: word("A main leads from a tap to every bed with drip lines."),
  why: word("Lines that nothing feeds are money in the soil."),
  source: computed("the main is led from the tap along the free ground of the plan"),
  slow: true,
  needs: ["beds", "drip"],

  check({ beds, drip }) {
    const none = drip.troubles.find(({ what }) => NO_MAIN.has(what));
    return drip.beds.flatMap(({ bedId, head, lines }) => {
      const bed = beds.find(({ id }) => id === bedId);
      if (!bed || head !== null || lines.length === 0) return [];
      const own = drip.troubles.find((trouble) => trouble.what === "unreached" && trouble.bedId === bedId);
      return [
        {
          itemIds: [bed.id],
          at: [bed.at],
          measured: 0,
          limit: 1,
          unit: "count" as const,
          title: say`${nameOf(bed)}: no main gets to its drip lines`,
          detail: none?.text ?? own?.text ?? say`No pipe gets to it.`,
          waysOut: [{ label: say`Water it by hand`, ops: [byHand(bed)] }],
        },
      ];
    });
  },
});
