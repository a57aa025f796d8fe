import { postsThroughMesh } from "../../src/rules/posts-through-mesh.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const mesh = { mesh: { opening: 12.7 } };

testRule(postsThroughMesh, {
  passes: {
    "a trellis without mesh": gardenOf(bed("beans", { trellis: 1800 })),
    "mesh without a trellis": gardenOf(bed("beans", { bottom: mesh })),
    "a table bed": gardenOf(bed("beans", { bottom: mesh, trellis: 900, legs: 700 })),
  },
  flags: {
    "a trellis over mesh": {
      garden: gardenOf(bed("beans", { name: "Beans", bottom: mesh, trellis: 1800 })),
      measured: [1],
      title: "Beans: set the trellis posts before the mesh",
      waysOut: 0,
    },
  },
});
