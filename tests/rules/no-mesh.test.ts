import { noMesh } from "../../src/rules/no-mesh.ts";
import { bed, gardenOf, gardenWith, ground } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const salads = bed("salads", { w: 1200, h: 2500, name: "Salads" });

testRule(noMesh, {
  passes: {
    "ground where nothing burrows": gardenOf(salads),
    "gophers kept out": gardenWith(
      { ground: { burrowing: "gopher" } },
      bed("salads", { bottom: { mesh: { opening: 12.7 } } }),
    ),
    "paving over the gophers": gardenOf(
      ground("terrace", { w: 3000, h: 4000, cover: "paving", burrowing: "gopher" }),
      salads,
    ),
    "a table bed": gardenWith({ ground: { burrowing: "rat" } }, { ...salads, legs: 700 }),
  },
  flags: {
    gophers: {
      garden: gardenWith({ ground: { burrowing: "gopher" } }, salads),
      measured: [0],
      title: "Salads: no mesh against gophers",
      waysOut: ["Add ½ in mesh"],
    },
    "voles under one end and moles under the other: the finer mesh": {
      garden: gardenOf(
        ground("lawn", { w: 1200, h: 1250, cover: "lawn", burrowing: "mole" }),
        ground("bank", { y: 1250, w: 1200, h: 1250, cover: "weeds", burrowing: "vole" }),
        salads,
      ),
      measured: [0],
      title: "Salads: no mesh against voles",
      waysOut: ["Add ¼ in mesh"],
    },
    "moles, in metric": {
      garden: gardenWith({ units: "metric", ground: { burrowing: "mole" } }, salads),
      measured: [0],
      waysOut: ["Add 1.3 cm mesh"],
    },
  },
});
