import { pinchPasses } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { bottlenecks, itemsOf, openingShifts, sidesOf } from "./open-way.ts";
import { defineRule } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Flags beds that a wheelchair does not get to; a short pinch is let pass as the standard lets it. */
export const wheelchairNarrowWay = defineRule({
  id: "wheelchair-narrow-way",
  grade: "must",
  promise: word("A wheelchair gets from a gate or a door to every bed."),
  why: word(
    "Where the way narrows, the garden ends for whoever sits in the chair. Guidance for a private yard.",
  ),
  source: LIMITS.wheelchairWay.source,
  limits: ["wheelchairWay", "wheelchairPinch", "wheelchairPinchRun", "wheelchairPinchApart"],
  needs: ["garden", "access", "limits", "units"],

  check({ garden, access, limits, units }) {
    const { wheelchair } = access;
    if (!wheelchair) return [];
    const limit = limits.wheelchairWay;
    const failing = new Set(
      wheelchair.pinches
        .filter((pinch) => !pinchPasses({ ...pinch, width: pinch.gap.width }, limits))
        .map(({ bed }) => bed),
    );
    // On foot there must be a way at all, or the bed has a snag of its own.
    const beds = access.beds.filter(({ id, fromGate, fromDoor }) => {
      const width = Math.max(fromGate?.width ?? 0, fromDoor?.width ?? 0);
      return (
        width >= limits.standingRoom - SAME_LENGTH &&
        (width < limits.wheelchairPinch - SAME_LENGTH || failing.has(id))
      );
    });
    return bottlenecks(beds, ({ width }) => width < limit - SAME_LENGTH).map((bottleneck) => {
      const { gap } = bottleneck;
      const names = bottleneck.beds.map((id) => nameOf(garden.items.find((item) => item.id === id)!));
      const run = wheelchair.pinches.find(({ bed }) => bed === bottleneck.beds[0])?.run ?? 0;
      const short = formatShort(limits.wheelchairPinch, units);
      return {
        itemIds: itemsOf(bottleneck),
        at: [gap.from, gap.to],
        measured: gap.width,
        limit,
        unit: "mm" as const,
        title: say`Way to ${listedOrCounted(names, "beds")}: ${formatShort(limit - gap.width, units)} too narrow for a wheelchair`,
        detail: say`${formatShort(gap.width, units)} wide for ${formatShort(run, units)} at ${sidesOf(gap, garden)}; ${formatShort(limit, units)} are needed, or ${short} over at most ${formatShort(limits.wheelchairPinchRun, units)}.`,
        get waysOut() {
          return openingShifts({ garden, access }, bottleneck, limit);
        },
      };
    });
  },
});
