import { unevenDripLine } from "../../src/rules/uneven-drip-line.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";
import { dripBed } from "../irrigation/drip-scene.ts";

const narrow = { w: 1200, h: 40_000 } as const;

testRule(unevenDripLine, {
  passes: {
    "lines of an ordinary bed": gardenOf(
      dripBed("a", { w: 1200, h: 2400, drip: { emittersApart: 150, emitterLh: 4 } }),
    ),
    "a long bed with its emitters far apart": gardenOf(
      dripBed("a", { ...narrow, drip: { emittersApart: 600, emitterLh: 2 } }),
    ),
    "a long bed with lines across it": gardenOf(
      dripBed("a", { ...narrow, drip: { run: "across", emittersApart: 150, emitterLh: 4 } }),
    ),
    "a long bed watered by hand": gardenOf(bed("a", narrow)),
  },
  flags: {
    "lines too long for so many emitters": {
      garden: gardenOf(dripBed("a", { ...narrow, drip: { emittersApart: 150, emitterLh: 4 } })),
      // By the desk method: 262 emitters of 4 L/h take some 980 L/h, which would lose 75 kPa to the end of 40 m of 15.2 mm
      // tubing (Darcy-Weisbach, Blasius). With outlets all along it is 0.36 of that (Christiansen): 27 of 100 kPa.
      measured: [0.27],
      within: 0.03,
      waysOut: ["Run its lines across", "Emitters of 0.5 gal an hour", "Emitters 9 in apart"],
    },
    "a line drawn so, which no spacing mends but emitters farther apart": {
      garden: gardenOf(
        dripBed("a", {
          ...narrow,
          drip: {
            emittersApart: 150,
            emitterLh: 1.8,
            drawn: [
              [
                [0, -19_900],
                [0, 19_900],
                [100, 19_900],
                [100, -19_900],
              ],
            ],
          },
        }),
      ),
      // The same way: 531 emitters take some 820 L/h of 80 m, 110 kPa by 0.36 is 40 of 100 kPa.
      measured: [0.4],
      within: 0.04,
      waysOut: ["Emitters 12 in apart"],
    },
  },
});
