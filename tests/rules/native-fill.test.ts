import { nativeFill } from "../../src/rules/native-fill.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const filled = (id: string, way: "mix" | "layered" | "native") => bed(id, { name: "Salads", fill: { way } });

testRule(nativeFill, {
  passes: { "mix and layers": gardenOf(filled("a", "mix"), filled("b", "layered")) },
  flags: {
    "the yard's own soil alone, bed by bed": {
      garden: gardenOf(filled("a", "native"), filled("b", "mix"), filled("c", "native")),
      measured: [1, 1],
      title: "Salads: the yard's own soil alone",
      waysOut: ["Fill it with mix"],
    },
  },
});
