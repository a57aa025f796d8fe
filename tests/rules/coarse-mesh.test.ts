import { INCH } from "../../src/index.ts";
import { coarseMesh } from "../../src/rules/coarse-mesh.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const meshed = (opening: number) => bed("salads", { name: "Salads", bottom: { mesh: { opening } } });
const gophers = { ground: { burrowing: "gopher" } } as const;
const rats = { ground: { burrowing: "rat" } } as const;

testRule(coarseMesh, {
  passes: {
    "1/2 in against gophers": gardenWith(gophers, meshed(INCH / 2)),
    "13 mm against gophers": gardenWith(gophers, meshed(13)),
    "1/4 in against rats": gardenWith(rats, meshed(INCH / 4)),
    "coarse mesh where nothing burrows": gardenOf(meshed(25)),
    "3/4 in where the gardener allows it": gardenWith(
      { ...gophers, limits: { meshForGophers: 0.75 * INCH } },
      meshed(0.75 * INCH),
    ),
    "no mesh at all, which has a rule of its own": gardenWith(gophers, bed("salads")),
  },
  flags: {
    "3/4 in against gophers": {
      garden: gardenWith(gophers, meshed(0.75 * INCH)),
      measured: [19.05],
      title: "Salads: ¾ in mesh lets gophers through",
      waysOut: ["Use ½ in mesh"],
    },
    "1/2 in against rats": {
      garden: gardenWith(rats, meshed(INCH / 2)),
      measured: [12.7],
      waysOut: ["Use ¼ in mesh"],
    },
    "one tolerance too coarse": { garden: gardenWith(gophers, meshed(INCH / 2 + 0.6)), measured: [13.3] },
  },
});
