import { TABLE, tablePasses } from "../access/wheelchair-standards.ts";
import { frameOf } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { boxOf } from "../geometry/gap.ts";
import { turned } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH, type Units } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { defineRule, type WayOut } from "./rule.ts";

/** Flags table beds that a wheelchair does not get its knees under. */
export const wheelchairNoKneeRoom = defineRule({
  id: "wheelchair-no-knee-room",
  grade: "must",
  promise: word("A wheelchair gets its knees under every table bed."),
  why: word(
    "A table bed is worked from in front; without knee room it is out of reach. Guidance for a private yard.",
  ),
  source: LIMITS.knees.source,
  limits: ["knees", "seatedRim"],
  needs: ["beds", "gardener", "limits", "units"],

  check({ beds, gardener, limits, units }) {
    if (!gardener.wheelchair) return [];
    return beds.flatMap((bed) => {
      const { legs } = bed;
      if (legs === null) return [];
      const { rim } = frameOf(bed);
      const [kneeDepth, width] = sizes(bed);
      // A rim that is too high has a snag of its own: here it is taken to be as high as may be.
      const table = { rim: Math.min(rim, limits.seatedRim), kneeHeight: legs, kneeDepth, width };
      if (tablePasses(table, limits)) return [];
      const box = rim - legs;
      return [
        {
          itemIds: [bed.id],
          at: [bed.at],
          measured: legs,
          limit: limits.knees,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: no knee room for a wheelchair`,
          detail: say`Below its box, ${formatShort(box, units)} deep, are ${formatShort(legs, units)}; ${formatShort(limits.knees, units)} are needed, ${formatShort(TABLE.kneeWidth, units)} wide and ${formatShort(TABLE.kneeDepth, units)} deep, under a rim at ${formatShort(TABLE.lowestRim, units)} to ${formatShort(limits.seatedRim, units)}.`,
          waysOut: longerLegs(bed, limits, units),
        },
      ];
    });
  },
});

/** Front to back and side to side, as one sits at the longer side. */
function sizes(bed: Bed): readonly [number, number] {
  const { minX, minY, maxX, maxY } = boxOf(outlineOf(bed).map((point) => turned(point, -bed.turn)));
  return [Math.min(maxX - minX, maxY - minY), Math.max(maxX - minX, maxY - minY)];
}

function longerLegs(bed: Bed, limits: Limits, units: Units): WayOut[] {
  const box = frameOf(bed).rim - (bed.legs ?? 0);
  const legs = Math.max(limits.knees, TABLE.lowestRim - box);
  const [kneeDepth, width] = sizes(bed);
  if (legs + box > limits.seatedRim + SAME_LENGTH) return [];
  if (!tablePasses({ rim: legs + box, kneeHeight: legs, kneeDepth, width }, limits)) return [];
  return [
    { label: say`Legs of ${formatShort(legs, units)}`, ops: [{ op: "set", id: bed.id, changes: { legs } }] },
  ];
}
