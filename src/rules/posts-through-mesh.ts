import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { practice } from "../garden/source.ts";
import { centroid } from "../geometry/ring.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Tells of trellises over mesh: their posts cannot be driven through it. A matter of order of work, not of the plan. */
export const postsThroughMesh = defineRule({
  id: "posts-through-mesh",
  grade: "note",
  promise: word("Posts that go into the ground stand before the mesh is laid."),
  why: word("A post driven through mesh tears a hole that the animals find."),
  source: practice("posts first, then mesh cut and folded up round them"),
  needs: ["beds"],

  check({ beds }) {
    return beds
      .filter((bed) => bed.bottom.mesh !== null && bed.trellis !== null && bed.legs === null)
      .map((bed) => ({
        itemIds: [bed.id],
        at: [centroid(outlineOf(bed))],
        measured: 1,
        limit: 0,
        unit: "count" as const,
        title: say`${nameOf(bed)}: set the trellis posts before the mesh`,
        detail: say`Fix the posts to the frame, or set them first and fold the mesh up round them.`,
        waysOut: [],
      }));
  },
});
