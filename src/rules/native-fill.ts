import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { published } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { say, word } from "../words/say.ts";
import { withFill } from "./fill-way-out.ts";
import { defineRule } from "./rule.ts";

/** Flags beds filled with the yard's own soil alone. */
export const nativeFill = defineRule({
  id: "native-fill",
  grade: "should",
  promise: word("No bed is filled with the yard's own soil alone."),
  why: word("Dug soil without compost packs down in a frame, drains badly and dries to a brick."),
  source: published(
    "University of Maryland Extension, Filling raised beds: compost and topsoil 1:2 to 1:1; Washington State University asks for 10 % compost at most",
  ),
  needs: ["beds"],

  check({ beds }) {
    return beds
      .filter((bed) => bed.fill.way === "native")
      .map((bed) => ({
        itemIds: [bed.id],
        at: [centroid(outlineOf(bed))],
        measured: 1,
        limit: 0,
        unit: "count" as const,
        title: say`${nameOf(bed)}: the yard's own soil alone`,
        detail: say`Mix compost into it, or buy mix; how much compost is a matter that extension services differ on.`,
        waysOut: [withFill(bed, say`Fill it with mix`, { way: "mix" })],
      }));
  },
});
