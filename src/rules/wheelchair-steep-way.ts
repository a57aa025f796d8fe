import { slopePasses } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatRatio } from "../units/format-figure.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags ways too steep for a wheelchair: along the way, and across it. */
export const wheelchairSteepWay = defineRule({
  id: "wheelchair-steep-way",
  grade: "must",
  promise: word("No way to a bed is steeper than a wheelchair manages."),
  why: word(
    "Uphill the arms give out, downhill the brakes; across a slope the chair pulls to one side. Guidance for a private yard.",
  ),
  source: LIMITS.runningSlope.source,
  limits: ["runningSlope", "crossSlope"],
  needs: ["garden", "access", "limits"],

  check({ garden, access, limits }) {
    return (access.wheelchair?.ground ?? []).flatMap(({ bed: id, at, along, across }) => {
      const bed = garden.items.find((item) => item.id === id);
      const isSteep = !slopePasses(along, limits.runningSlope);
      if (!bed || (!isSteep && slopePasses(across, limits.crossSlope))) return [];
      const [measured, limit] = isSteep ? [along, limits.runningSlope] : [across, limits.crossSlope];
      const [slope, most] = [formatRatio(measured), formatRatio(limit)];
      return [
        {
          grade: isSteep ? ("must" as const) : ("should" as const),
          itemIds: [id],
          at: [at],
          measured,
          limit,
          unit: "ratio" as const,
          title: isSteep
            ? say`Way to ${nameOf(bed)} slopes ${slope} along it`
            : say`Way to ${nameOf(bed)} slopes ${slope} across it`,
          detail: isSteep
            ? say`At most ${most} along the way; steeper ground is a ramp, with a landing at each end, or is levelled.`
            : say`At most ${most} across the way; steeper ground is a ramp, with a landing at each end, or is levelled.`,
          waysOut: [],
        },
      ];
    });
  },
});
