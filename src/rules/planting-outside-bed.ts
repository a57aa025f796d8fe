import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { applyOps } from "../garden/operations.ts";
import { outlineOf } from "../garden/outline.ts";
import type { Planting } from "../garden/plantings.ts";
import { computed } from "../garden/source.ts";
import { boundsOf, centroid, clockwise } from "../geometry/ring.ts";
import { shapeRing } from "../geometry/shape.ts";
import type { Box } from "../geometry/types.ts";
import { clipToBox, groundArea } from "../planting/convex-cut.ts";
import { ownSoil, patchBox } from "../planting/share-ground.ts";
import { formatShare } from "../units/format-figure.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import { bedAfter, plantingWords, replanted, standsNoWorse, withoutPlantings } from "./replanting.ts";
import { defineRule, type WayOut } from "./rule.ts";

/** Flags beds with a planting drawn beyond the outside of the bed. What lies over its wall is no matter. */
export const plantingOutsideBed = defineRule({
  id: "planting-outside-bed",
  grade: "should",
  promise: word("Every planting lies within its bed."),
  why: word("What is drawn beyond the wall has no soil; the plants and their seed are counted without it."),
  source: computed("area of the patch beyond the outline of the bed"),
  needs: ["garden", "beds"],

  check({ garden, beds }) {
    return beds.flatMap((bed) => {
      const out = bed.plantings.filter((planting) => outsideOf(bed, planting) > 0);
      if (out.length === 0) return [];
      const most = Math.max(...out.map((planting) => outsideOf(bed, planting)));
      return [
        {
          itemIds: [bed.id],
          at: [centroid(outlineOf(bed))],
          measured: most,
          limit: 0,
          unit: "ratio" as const,
          title: say`${nameOf(bed)}: ${plantingWords(out)} drawn beyond the bed`,
          detail: say`${formatShare(most)} of the patch${out.length > 1 ? say` of one of them` : ""} lies outside; nothing is set there.`,
          get waysOut() {
            return waysIn(garden, bed, out);
          },
        },
      ];
    });
  },
});

/** The share of a patch that lies beyond the outside of its bed, 0 to 1; nothing where it is a sliver. */
function outsideOf(bed: Bed, { patch }: Planting): number {
  if (!patch) return 0;
  const whole = patch.width * patch.length;
  const inside = groundArea(clipToBox([clockwise(shapeRing(bed.shape))], patchBox(patch)));
  return whole - inside > SAME_LENGTH * 2 * (patch.width + patch.length) ? 1 - inside / whole : 0;
}

function waysIn(garden: Garden, bed: Bed, out: readonly Planting[]): WayOut[] {
  const soil = ownSoil(bed);
  const corners = soil.flat();
  if (corners.length === 0) return [withoutPlantings(bed, out)];
  const room = boundsOf(corners);
  const words = plantingWords(out);
  return [
    replanted(say`Move ${words} into the bed`, bed, out, (planting) => within(planting, room)),
    replanted(say`Cut ${words} back to the bed`, bed, out, (planting) => cutBack(planting, room)),
    replanted(say`Set ${words} in what is left of the bed`, bed, out, (planting) => ({
      ...planting,
      patch: null,
    })),
    withoutPlantings(bed, out),
  ].filter(({ ops }) => {
    const after = applyOps(garden, ops);
    const inside = bedAfter(bed, after)?.plantings.every((one) => outsideOf(bed, one) === 0) ?? false;
    return inside && standsNoWorse(bed, after);
  });
}

/** The patch moved no farther than it takes; as it is where it is larger than the room. */
function within(planting: Planting, { minX, maxX, minY, maxY }: Box): Planting {
  const { patch } = planting;
  if (!patch) return planting;
  const held = (at: number, half: number, from: number, to: number) =>
    to - from < 2 * half ? at : Math.min(to - half, Math.max(from + half, at));
  const [x, y] = patch.at;
  return {
    ...planting,
    patch: { ...patch, at: [held(x, patch.width / 2, minX, maxX), held(y, patch.length / 2, minY, maxY)] },
  };
}

/** The part of the patch within the room; as it is where there is none. */
function cutBack(planting: Planting, room: Box): Planting {
  if (!planting.patch) return planting;
  const box = patchBox(planting.patch);
  const [minX, maxX] = [Math.max(box.minX, room.minX), Math.min(box.maxX, room.maxX)];
  const [minY, maxY] = [Math.max(box.minY, room.minY), Math.min(box.maxY, room.maxY)];
  if (maxX <= minX || maxY <= minY) return planting;
  return {
    ...planting,
    patch: { at: [(minX + maxX) / 2, (minY + maxY) / 2], width: maxX - minX, length: maxY - minY },
  };
}
