import { INCH, newPlanting, type Planting } from "../../src/index.ts";
import { plantsTooClose } from "../../src/rules/plants-too-close.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";

const soil = (...plantings: readonly Planting[]) => gardenOf(bed("greens", { name: "Greens", plantings }));
const put = (crop: Planting["crop"], changes: Partial<Planting> = {}): Planting => ({
  ...newPlanting(crop),
  ...changes,
});

// Least spacing in beds by the crop facts: tomato 18 in, carrot 2 in, kale 15 in.
testRule(plantsTooClose, {
  passes: {
    "the table's spacing": soil(put("tomato"), put("carrot")),
    "the least there is": soil(put("tomato", { apart: 18 * INCH, rowsApart: 18 * INCH })),
    "the least, within half a millimetre": soil(put("tomato", { apart: 18 * INCH - 0.4 })),
    "rows that are not typed in a block": soil(
      put("kale", { set: "block", apart: 15 * INCH, rowsApart: 10 }),
    ),
  },
  flags: {
    "tomatoes a foot apart": {
      garden: soil(put("tomato", { apart: 12 * INCH })),
      measured: [12 * INCH],
      title: "Greens: tomato set 12 in apart",
      waysOut: ["Set tomato 18 in apart"],
    },
    "rows closer than the plants in them": {
      garden: soil(put("carrot", { apart: 3 * INCH, rowsApart: 1 * INCH })),
      measured: [INCH],
      waysOut: ["Set carrot 2 in apart"],
    },
    "two at once, by the worse": {
      garden: soil(put("carrot", { apart: INCH }), put("kale", { set: "block", apart: 8 * INCH })),
      measured: [8 * INCH],
      waysOut: ["Give carrot and kale room"],
    },
    "tomatoes in a part of the bed that has no room for one with its spacing": {
      garden: soil(
        put("tomato", {
          apart: 10 * INCH,
          rowsApart: 10 * INCH,
          patch: { at: [0, 0], width: 260, length: 900 },
        }),
      ),
      measured: [10 * INCH],
      waysOut: 0,
    },
  },
});
