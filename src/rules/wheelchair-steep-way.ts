import { slopePasses } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatRatio } from "../units/format-figure.ts";
import { defineRule } from "./rule.ts";

/** Flags ways too steep for a wheelchair: along the way, and across it. */
export const wheelchairSteepWay = defineRule({
  id: "wheelchair-steep-way",
  grade: "must",
  promise: "No way to a bed is steeper than a wheelchair manages.",
  why: "Uphill the arms give out, downhill the brakes; across a slope the chair pulls to one side. Guidance for a private yard.",
  source: LIMITS.runningSlope.source,
  limits: ["runningSlope", "crossSlope"],
  needs: ["garden", "access", "limits"],

  check({ garden, access, limits }) {
    return (access.wheelchair?.ground ?? []).flatMap(({ bed: id, at, along, across }) => {
      const bed = garden.items.find((item) => item.id === id);
      const isSteep = !slopePasses(along, limits.runningSlope);
      if (!bed || (!isSteep && slopePasses(across, limits.crossSlope))) return [];
      const [measured, limit, how] = isSteep
        ? [along, limits.runningSlope, "along"]
        : [across, limits.crossSlope, "across"];
      return [
        {
          grade: isSteep ? ("must" as const) : ("should" as const),
          itemIds: [id],
          at: [at],
          measured,
          limit,
          unit: "ratio" as const,
          title: `Way to ${nameOf(bed)} slopes ${formatRatio(measured)} ${how} it`,
          detail: `At most ${formatRatio(limit)} ${how} the way; steeper ground is a ramp, with a landing at each end, or is levelled.`,
          waysOut: [],
        },
      ];
    });
  },
});
