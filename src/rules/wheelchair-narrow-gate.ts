import { openingPasses } from "../access/wheelchair-standards.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags gates and doors that a wheelchair does not pass through. */
export const wheelchairNarrowGate = defineRule({
  id: "wheelchair-narrow-gate",
  grade: "must",
  promise: word("A wheelchair passes through every gate and door."),
  why: word(
    "The clear opening counts, from the stop to the face of the open leaf, not the size of the leaf. Guidance for a private yard.",
  ),
  source: LIMITS.wheelchairGate.source,
  limits: ["wheelchairGate"],
  needs: ["items", "gardener", "limits", "units"],

  check({ items, gardener, limits, units }) {
    if (!gardener.wheelchair) return [];
    const limit = limits.wheelchairGate;
    return items
      .filter((item) => item.kind === "gate" || item.kind === "door")
      .filter(({ width }) => !openingPasses(width, limits))
      .map((opening) => ({
        itemIds: [opening.id],
        at: [opening.at],
        measured: opening.width,
        limit,
        unit: "mm" as const,
        title: say`${nameOf(opening)}: ${formatShort(limit - opening.width, units)} too narrow for a wheelchair`,
        detail: say`Its clear opening is ${formatShort(opening.width, units)}; ${formatShort(limit, units)} are needed.`,
        waysOut: [
          {
            label: say`Widen to ${formatShort(limit, units)}`,
            ops: [{ op: "set" as const, id: opening.id, changes: { width: limit } }],
          },
        ],
      }));
  },
});
