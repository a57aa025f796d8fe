import { obstaclesOf } from "../access/obstacles.ts";
import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { leadLevelsInForce } from "../garden/soil-lead.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { nearerThan, roundTo } from "./near.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/** Flags beds close to walls that were painted before lead paint was given up. Table beds hold soil of their own. */
export const nearOldPaint = defineRule({
  id: "near-old-paint",
  grade: "should",
  promise: word("Beds stand away from walls with old paint."),
  why: word(
    "Lead from flaked and scraped paint lies in the ground below the wall, most of it under the eaves.",
  ),
  source: LIMITS.oldPaint.source,
  limits: ["oldPaint"],
  needs: ["garden", "items", "beds", "limits", "units"],

  check({ garden, items, beds, limits, units }) {
    const painted = new Map(
      items.filter((item) => "oldPaint" in item && item.oldPaint).map((item) => [item.id, item]),
    );
    if (painted.size === 0) return [];
    const limit = limits.oldPaint;
    const walls = obstaclesOf(garden).filter(({ id }) => painted.has(id));
    return walls.flatMap(({ id, ring }) =>
      beds.flatMap((bed) => {
        const gap = bed.legs === null ? nearerThan(limit, bed, ring) : null;
        const wall = painted.get(id);
        if (!gap || !wall) return [];
        const far = formatShort(gap.width, units);
        return [
          {
            itemIds: [bed.id, id],
            at: [gap.from, gap.to],
            measured: gap.width,
            limit,
            unit: "mm" as const,
            title: say`${nameOf(bed)}: ${far} from old paint`,
            detail: say`${nameOf(wall)} is painted from before lead was given up; keep ${formatShort(limit, units)} away, or have the soil tested, since distance proves nothing (${leadLevelsInForce()}).`,
            get waysOut() {
              return shiftWayOut(garden, bed.id, {
                least: limit - gap.width,
                keepOff: roundTo(ring, limit),
              });
            },
          },
        ];
      }),
    );
  },
});
