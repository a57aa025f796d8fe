import { type GroundUnder, isHard } from "../garden/ground-under.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { GroundFacts } from "../garden/kinds/ground.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { computed } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { say, word } from "../words/say.ts";
import { defineRule, type Finding, type WayOut } from "./rule.ts";

/**
 * Flags beds that water cannot leave: those with a sheet below them. A masonry wall on hard ground holds water too
 * unless joints at its foot are left open with fabric over them, which is worth knowing.
 */
export const undrainedBed = defineRule({
  id: "undrained-bed",
  grade: "must",
  promise: word("Water drains out of every bed."),
  why: word(
    "Standing water drowns roots, and soaked soil pushes its wall more than twice as hard as drained soil.",
  ),
  source: computed("active pressure of 24 in of soil, 2.35 times as much where water stands in it (Rankine)"),
  needs: ["beds", "grounds"],

  check({ beds, grounds }) {
    return beds.flatMap((bed) => {
      const under = grounds.get(bed.id) ?? [];
      if (bed.bottom.liner === "sheet") return [overSheet(bed, under)];
      const hard = under.filter(({ ground }) => isTub(bed, ground));
      return bed.bottom.liner === null && hard.length > 0 ? [onPaving(bed, hard)] : [];
    });
  },
});

/** Whether the wall of a bed and the ground it stands on hold water like a tub. */
const isTub = (bed: Bed, { cover }: GroundFacts): boolean =>
  bed.wall.made === "masonry" && bed.legs === null && isHard(cover);

function overSheet(bed: Bed, under: readonly GroundUnder[]): Finding {
  const needsLiner = under.some(({ ground }) => ground.contaminated || isTub(bed, ground));
  return {
    itemIds: [bed.id],
    at: [centroid(outlineOf(bed))],
    measured: 1,
    limit: 0,
    unit: "ratio",
    title: say`${nameOf(bed)}: a sheet below it holds the water`,
    detail: say`A sheet does not let water through; fabric does, and holds the soil as well.`,
    waysOut: [
      withLiner(bed, "fabric", say`Use fabric instead`),
      ...(needsLiner ? [] : [withLiner(bed, null, say`Leave the liner out`)]),
    ],
  };
}

function onPaving(bed: Bed, hard: readonly GroundUnder[]): Finding {
  return {
    grade: "note",
    itemIds: [bed.id],
    at: hard.map(({ at }) => at),
    measured: hard.reduce((sum, { share }) => sum + share, 0),
    limit: 0,
    unit: "ratio",
    title: say`${nameOf(bed)}: leave joints open at the foot of its wall`,
    detail: say`Masonry on hard ground holds water like a tub. Leave every second joint at its foot open, with fabric over it.`,
    waysOut: [withLiner(bed, "fabric", say`Line it with fabric over open joints`)],
  };
}

const withLiner = (bed: Bed, liner: Bed["bottom"]["liner"], label: string): WayOut => ({
  label,
  ops: [{ op: "set", id: bed.id, changes: { bottom: { ...bed.bottom, liner } } }],
});
