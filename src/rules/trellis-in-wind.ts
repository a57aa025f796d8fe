import type { Garden, Site } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import { practice } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { distance } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { FOOT, SAME_LENGTH, type Units } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { allSuit } from "./crop-suits.ts";
import { cropsOf } from "./crop-sun.ts";
import { climbs, trellisAskedBy } from "./crop-support.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { isSheltered } from "./shelter.ts";

/** A trellis up to so high above the soil stands on its own posts, mm; taller ones want braces. Where it is sheltered, any. */
const UNBRACED: Readonly<Record<Exclude<Site["wind"], "sheltered">, number>> = {
  open: 6 * FOOT,
  windy: 4 * FOOT,
};

/** Flags trellises that are too tall to stand unbraced in the wind there is, in beds that nothing shelters. */
export const trellisInWind = defineRule({
  id: "trellis-in-wind",
  grade: "should",
  promise: word("Every trellis stands in a storm with its crop on it."),
  why: word("A trellis in full leaf is a sail: the wind lays it down with the whole crop, roots and all."),
  source: practice(
    "posts alone to 6 ft in the open and 4 ft where it is windy; taller ones are braced or guyed",
  ),
  needs: ["garden", "beds", "site", "units"],

  check({ garden, beds, site, units }) {
    const { wind } = site;
    if (wind === "sheltered") return [];
    const limit = UNBRACED[wind];
    return beds.flatMap((bed) => {
      const { trellis } = bed;
      if (trellis === null || trellis <= limit + SAME_LENGTH || isSheltered(bed, garden)) return [];
      const [tall, most] = [formatShort(trellis, units), formatShort(limit, units)];
      return [
        {
          grade: wind === "windy" ? ("should" as const) : ("note" as const),
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: trellis,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: brace the ${tall} trellis against wind`,
          detail:
            wind === "windy"
              ? say`The garden is windy; up to ${most} it stands on its posts. Brace both ends, or guy it.`
              : say`The garden is open; up to ${most} it stands on its posts. Brace both ends, or guy it.`,
          get waysOut() {
            return [...lower(bed, limit, units), ...shelteredBed(garden, bed)];
          },
        },
      ];
    });
  },
});

/** Lowering it helps where what climbs it does with less. */
function lower(bed: Bed, limit: number, units: Units): WayOut[] {
  if (cropsOf(bed).some((crop) => trellisAskedBy(crop) > limit + SAME_LENGTH)) return [];
  return [
    {
      label: say`Lower the trellis to ${formatShort(limit, units)}`,
      ops: [{ op: "set", id: bed.id, changes: { trellis: limit } }],
    },
  ];
}

/** The nearest sheltered bed without a trellis that suits all that climbs here, and whose own crops do here. */
function shelteredBed(garden: Garden, bed: Bed): WayOut[] {
  const climbing = new Set(
    cropsOf(bed)
      .filter(climbs)
      .map(({ id }) => id),
  );
  const going = bed.plantings
    .filter(({ crop }) => climbing.has(crop))
    .map((planting) => ({ ...planting, patch: null }));
  const staying = bed.plantings.filter(({ crop }) => !climbing.has(crop));
  const others = garden.items
    .filter((item) => item.kind === "bed")
    .filter((other) => other.id !== bed.id && other.trellis === null && isSheltered(other, garden))
    .sort((a, b) => distance(a.at, bed.at) - distance(b.at, bed.at));
  for (const other of others) {
    const coming = other.plantings.map((planting) => ({ ...planting, patch: null }));
    const ops: Op[] = [
      { op: "set", id: bed.id, changes: { trellis: null, plantings: [...staying, ...coming] } },
      { op: "set", id: other.id, changes: { trellis: bed.trellis, plantings: going } },
    ];
    const after = applyOps(garden, ops);
    const there = { ...other, trellis: bed.trellis, plantings: [] };
    const here = { ...bed, trellis: null, plantings: staying };
    if (!allSuit(going, there, after) || !allSuit(coming, here, after)) continue;
    return [{ label: say`Put the trellis and its crop in ${nameOf(other)}, which is sheltered`, ops }];
  }
  return [];
}
