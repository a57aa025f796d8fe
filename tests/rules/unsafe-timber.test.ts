import { unsafeTimber } from "../../src/rules/unsafe-timber.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const of = (timber: string) =>
  gardenOf(
    bed("salads", {
      name: "Salads",
      wall: {
        made: "boards",
        board: "2x6",
        timber,
        courses: 2,
        corner: "ends-over-sides",
        cornerPosts: true,
        capRail: null,
        bracing: "stakes",
      },
    }),
  );
const instead = ["Use untreated Douglas-fir", "Use untreated Western redcedar"];

testRule(unsafeTimber, {
  passes: {
    "untreated fir": of("douglas-fir"),
    "untreated larch": of("larch"),
    "a wall of metal": gardenOf(bed("salads", { wall: { made: "metal", height: 300, thickness: 1 } })),
  },
  flags: {
    "treated pine": { garden: of("treated-pine"), measured: [1], waysOut: instead },
    composite: {
      garden: of("composite"),
      measured: [1],
      title: "Salads: composite boards beside food",
      waysOut: 2,
    },
    "creosoted sleepers, which must go": {
      garden: of("creosoted-sleeper"),
      measured: [1],
      grade: "must",
      waysOut: instead,
    },
    "old boards with arsenic": { garden: of("cca-old-stock"), measured: [1], grade: "must", waysOut: 2 },
  },
});
