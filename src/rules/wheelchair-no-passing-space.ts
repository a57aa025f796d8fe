import { passingPasses } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatDistance, formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags long narrow ways on which two wheelchairs cannot pass each other. */
export const wheelchairNoPassingSpace = defineRule({
  id: "wheelchair-no-passing-space",
  grade: "must",
  promise: word("On a long way there is room now and then for two wheelchairs to pass."),
  why: word("Who meets another on a narrow way has to back up to its end. Guidance for a private yard."),
  source: LIMITS.passingEvery.source,
  limits: ["passingEvery", "passingSpace"],
  needs: ["garden", "access", "limits", "units"],

  check({ garden, access, limits, units }) {
    const runs = access.wheelchair?.passing ?? [];
    return runs.flatMap(({ bed: id, run, at }) => {
      const bed = garden.items.find((item) => item.id === id);
      if (!bed || passingPasses({ width: 0, length: run }, limits)) return [];
      return [
        {
          itemIds: [id],
          at: [at],
          measured: run,
          limit: limits.passingEvery,
          unit: "mm" as const,
          title: say`Way to ${nameOf(bed)}: ${formatDistance(run, units)} without a passing space`,
          detail: say`A space ${formatShort(limits.passingSpace, units)} square is needed at least every ${formatDistance(limits.passingEvery, units)}.`,
          waysOut: [],
        },
      ];
    });
  },
});
