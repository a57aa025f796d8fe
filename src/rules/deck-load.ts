import { frameOf } from "../garden/frame.ts";
import { nameOf } from "../garden/name-of.ts";
import { outlineOf } from "../garden/outline.ts";
import { fromMemory } from "../garden/source.ts";
import { depthForLoad } from "../takeoff/structure.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { defineRule } from "./rule.ts";
import { shiftWayOut } from "./shift-way-out.ts";

/** 40 lb/ft², what a deck is designed to carry in all, kPa. */
const DECK_LOAD = 1.91521;

/**
 * Flags every bed on a deck or a roof, however shallow: what that carries is for an engineer to say. The limit told is
 * the depth of soil that alone uses up all a deck is designed for.
 */
export const deckLoad = defineRule({
  id: "deck-load",
  grade: "must",
  promise: word("No bed stands on a deck or a roof that nobody has looked at."),
  why: word("Wet soil a foot deep weighs two and a half times what a deck is designed to carry."),
  source: fromMemory("IRC Table R301.5: 40 lb/ft² live load on decks; soil taken at 100 lb/ft³"),
  needs: ["garden", "beds", "grounds", "items", "units"],

  check({ garden, beds, grounds, items, units }) {
    return beds.flatMap((bed) => {
      const raised = (grounds.get(bed.id) ?? []).filter(
        ({ ground: { cover } }) => cover === "deck" || cover === "roof",
      );
      if (raised.length === 0) return [];
      const { soilDepth } = frameOf(bed);
      const limit = depthForLoad(DECK_LOAD);
      const onRoof = raised.some(({ ground }) => ground.cover === "roof");
      const decks = items.filter(
        (item) => item.kind === "ground" && (item.cover === "deck" || item.cover === "roof"),
      );
      return [
        {
          itemIds: [bed.id],
          at: raised.map(({ at }) => at),
          measured: soilDepth,
          limit,
          unit: "mm" as const,
          title: onRoof
            ? say`${nameOf(bed)}: on a roof, ask an engineer`
            : say`${nameOf(bed)}: on a deck, ask an engineer`,
          detail: say`It holds ${formatShort(soilDepth, units)} of soil; ${formatShort(limit, units)} of wet soil alone uses up all that a deck is designed to carry.`,
          get waysOut() {
            return shiftWayOut(garden, bed.id, {
              keepOff: decks.flatMap((item) => (item.kind === "ground" ? [outlineOf(item)] : [])),
            });
          },
        },
      ];
    });
  },
});
