import { hosesFrom, hosesOf } from "../access/routes.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { freshId, newItem } from "../garden/new-item.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { formatDistance } from "../units/format-length.ts";
import { FOOT, SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { moveNearer } from "./move-nearer.ts";
import { defineRule, type WayOut } from "./rule.ts";

/** Flags beds whose far corner no ordinary hose gets to, led along the ground round what stands in its way. */
export const longHose = defineRule({
  id: "long-hose",
  grade: "should",
  promise: word("A hose from the nearest tap gets to the far corner of every bed."),
  why: word("Where the hose ends, cans are carried; a bed watered by can is watered too little in July."),
  source: LIMITS.hose.source,
  limits: ["hose"],
  slow: true,
  needs: ["garden", "access", "beds", "limits", "units"],

  check({ garden, access, beds, limits, units }) {
    const limit = limits.hose;
    return access.beds.flatMap(({ id, hose }) => {
      const bed = beds.find((candidate) => candidate.id === id);
      if (!bed || !hose || hose.length <= limit + SAME_LENGTH) return [];
      return [
        {
          itemIds: [id, hose.from],
          at: [hose.points.at(-1)!],
          measured: hose.length,
          limit,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: ${formatDistance(hose.length, units)} of hose to its far corner`,
          detail: say`Along the ground from the nearest tap it takes ${formatDistance(hose.length, units)}; ${formatDistance(limit, units)} is allowed.`,
          get waysOut() {
            return [
              ...tapNearer(garden, bed, limit),
              ...moveNearer({ garden, access }, bed, hose, {
                limit,
                label: say`Move to within ${formatDistance(limit, units)} of the tap`,
                lengthOf: (after, moved) =>
                  isInReachOfTap(moved, after, limit) ? hoseLength(after, moved) : Infinity,
              }),
            ];
          },
        },
      ];
    });
  },
});

const hoseLength = (garden: Garden, bed: Bed): number => hosesOf(garden).walkTo(bed)?.length ?? Infinity;

/** Whether a hose could do it that went straight through everything. */
const isInReach = (bed: Bed, from: Point, limit: number): boolean =>
  outlineOf(bed).every((corner) => distance(from, corner) <= limit + SAME_LENGTH);

const isInReachOfTap = (bed: Bed, { items }: Garden, limit: number): boolean =>
  items.some((item) => item.kind === "tap" && isInReach(bed, item.at, limit));

/** How far apart places for a tap along a house wall are looked at, and how many are tried. */
const TAP_STEP = 4 * FOOT;
const TRIALS = 3;
/** Off the wall's face, mm. */
const TAP_STANDS_OFF = 50;

/** Another tap, at the house wall nearest to the bed, where that does it. */
function tapNearer(garden: Garden, bed: Bed, limit: number): WayOut[] {
  const houses = garden.items.filter((item) => item.kind === "house");
  const places = houses
    .flatMap((house) => placesAlong(outlineOf(house)))
    .sort((a, b) => distance(a.at, bed.at) - distance(b.at, bed.at));
  for (const { at, turn } of places.slice(0, TRIALS)) {
    const fresh = newItem("tap", { id: freshId(garden, "tap"), at, units: garden.units });
    const tap = { ...fresh, turn };
    const ops = [{ op: "add" as const, item: tap }];
    // What stands in a hose's way is the same with another tap: no more has to be looked at than the hose from it.
    const hose = isInReach(bed, at, limit) ? hosesFrom([tap], garden).walkTo(bed) : null;
    if (hose && hose.length <= limit + SAME_LENGTH) {
      return [{ label: say`Add a tap at the nearest house wall`, ops }];
    }
  }
  return [];
}

/** Places just outside an outline, and which way they face. */
function placesAlong(outline: readonly Point[]): { at: Point; turn: number }[] {
  return outline.flatMap(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(bx - ax, by - ay);
    const parts = Math.max(1, Math.round(length / TAP_STEP));
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    // A thing's front is +y in its own frame; outside lies at the left of a side, as seen.
    const turn = (Math.atan2(-uy, -ux) * 180) / Math.PI;
    return Array.from({ length: parts }, (_, k) => {
      const far = (length * (k + 0.5)) / parts;
      return {
        at: [ax + far * ux + TAP_STANDS_OFF * uy, ay + far * uy - TAP_STANDS_OFF * ux] as const,
        turn,
      };
    });
  });
}
