import { nameOf } from "../garden/name-of.ts";
import { published } from "../garden/source.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";

/** Flags taps without a vacuum breaker or another backflow device. */
export const unsafeTap = defineRule({
  id: "unsafe-tap",
  grade: "should",
  promise: word("Every tap keeps garden water out of the drinking water."),
  why: word(
    "When pressure falls, a hose that lies in a bed or a can sucks what is there back into the house's pipes.",
  ),
  source: published("IRC P2902.4.3, as quoted: a vacuum breaker at sillcocks, hose bibbs and wall hydrants"),
  needs: ["items"],

  check({ items }) {
    const drips = items.some((item) => item.kind === "bed" && item.watering.by === "drip");
    return items
      .filter((item) => item.kind === "tap" && !item.backflow)
      .map((tap) => ({
        itemIds: [tap.id],
        at: [tap.at],
        measured: 0,
        limit: 1,
        unit: "count" as const,
        title: say`${nameOf(tap)}: no vacuum breaker`,
        detail: drips
          ? say`Drip lines lie in the soil and suck it in when pressure falls. The tap that feeds them needs a vacuum breaker or another backflow device; codes ask for it.`
          : say`A hose tap needs a vacuum breaker or another backflow device; codes ask for it.`,
        waysOut: [
          {
            label: say`Fit a vacuum breaker`,
            ops: [{ op: "set" as const, id: tap.id, changes: { backflow: true } }],
          },
        ],
      }));
  },
});
