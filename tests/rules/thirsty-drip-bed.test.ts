import { thirstyDripBed } from "../../src/rules/thirsty-drip-bed.ts";
import { gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";
import { dripBed, dripGarden, withWater } from "../irrigation/drip-scene.ts";

const long = dripBed("a", {
  x: 0,
  y: 1000,
  w: 1200,
  h: 9000,
  drip: { emittersApart: 152.4, emitterLh: 3.8 },
});

testRule(thirstyDripBed, {
  passes: {
    "a bed whose lines run in turns": withWater(dripGarden([0, 0], long), {
      supply: { stillKPa: 400, openLh: 500 },
    }),
    "a bed far under what a usual tap gives": dripGarden([0, 0], dripBed("a", { x: 0, y: 1000 })),
    "a garden without drip lines": gardenOf(),
  },
  flags: {
    "a line that asks more than a weak tap gives": {
      garden: withWater(dripGarden([0, 0], long), { supply: { stillKPa: 400, openLh: 200 } }),
      // 59 emitters over 8.9 m, each 3.8 L/h, a little less at the far end.
      measured: [59 * 3.8],
      within: 8,
      waysOut: [
        "Run its lines across",
        "Emitters of 0.5 gal an hour",
        "Emitters 9 in apart",
        "Water it by hand",
      ],
    },
    "lines that no pressure gets to": {
      garden: withWater(
        dripGarden([0, 0], dripBed("b", { x: 0, y: 1000, drip: { emittersApart: 400, emitterLh: 2 } })),
        {
          supply: { stillKPa: 120, openLh: 900 },
        },
      ),
      // Four lines along 2.4 m: six emitters each.
      measured: [12],
      within: 0.5,
      waysOut: ["Water it by hand"],
    },
    "lines at the end of a main too thin for them": {
      garden: withWater(dripGarden([0, -19_000], { ...long, at: [0, 15_000] }), {
        supply: { stillKPa: 170, openLh: 900 },
      }),
      measured: [59 * 3.8],
      within: 8,
      waysOut: [
        "Lay the main in wider tubing",
        "Run its lines across",
        "Emitters of 0.5 gal an hour",
        "Emitters 9 in apart",
        "Water it by hand",
      ],
    },
  },
});
