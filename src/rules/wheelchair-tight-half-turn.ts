import { halfTurnsRound } from "../access/half-turns.ts";
import type { WheelchairAccess } from "../access/types.ts";
import { halfTurnPasses } from "../access/wheelchair-standards.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { headingOf } from "../garden/heading.ts";
import { LIMITS, type Limits } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { distance, scale, subtract } from "../geometry/vector.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, word } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { defineRule, type WayOut } from "./rule.ts";
import { soundlyChanged } from "./sound-change.ts";

type HalfTurnAt = WheelchairAccess["halfTurns"][number];

/** Flags narrow beds that a wheelchair can get round at neither end. */
export const wheelchairTightHalfTurn = defineRule({
  id: "wheelchair-tight-half-turn",
  grade: "must",
  promise: word("A wheelchair gets round an end of every bed that is worked from both sides."),
  why: word(
    "Round a narrow end the chair turns on the spot, and that takes more room than the way before it. Guidance for a private yard.",
  ),
  source: LIMITS.turnAt.source,
  limits: ["turnElement", "turnApproach", "turnAt", "turnAtException", "wheelchairWay"],
  needs: ["garden", "access", "limits", "units"],

  check({ garden, access, limits, units }) {
    const turns = access.wheelchair?.halfTurns ?? [];
    return [...new Set(turns.map(({ around }) => around))].flatMap((id) => {
      const ends = turns.filter(
        ({ around, element }) => around === id && element > limits.seatedReach + SAME_LENGTH,
      );
      const bed = garden.items.find((item) => item.id === id);
      if (!bed || ends.length === 0 || ends.some((end) => halfTurnPasses(end, limits))) return [];
      const best = ends.reduce((a, b) => (b.turn > a.turn ? b : a));
      const needed = neededAt(best, limits);
      const before = formatShort(Math.min(best.approach, best.leave), units);
      const at = formatShort(best.turn, units);
      return [
        {
          itemIds: [id],
          at: [best.at],
          measured: best.turn,
          limit: needed,
          unit: "mm" as const,
          title: say`${nameOf(bed)}: too tight for a wheelchair to get round`,
          detail: say`${at} at the end and ${before} along the sides; ${formatShort(limits.turnAt, units)} with ${formatShort(limits.turnApproach, units)}, or ${formatShort(limits.turnAtException, units)} with ${formatShort(limits.wheelchairWay, units)} are needed.`,
          get waysOut() {
            return shiftFromEnd({ garden, access }, id, best, needed, limits);
          },
        },
      ];
    });
  },
});

const neededAt = ({ approach, leave }: HalfTurnAt, limits: Limits): number =>
  Math.min(approach, leave) >= limits.turnApproach - SAME_LENGTH ? limits.turnAt : limits.turnAtException;

function shiftFromEnd(
  facts: Pick<Facts, "garden" | "access">,
  id: ItemId,
  end: HalfTurnAt,
  needed: number,
  limits: Limits,
): WayOut[] {
  const { garden } = facts;
  const bed = garden.items.find((item) => item.id === id);
  if (bed?.kind !== "bed" || needed <= end.turn) return [];
  const back = subtract(bed.at, end.at);
  const by = scale(back, (needed - end.turn) / distance(bed.at, end.at));
  const ops = [{ op: "move" as const, id, by }];
  const after = soundlyChanged(facts, ops, [id]);
  if (!after || !turnsSomewhere(after, id, limits)) return [];
  const far = formatShort(needed - end.turn, garden.units);
  return [{ label: say`Shift ${far} ${headingOf(by, garden.site.north)}`, ops }];
}

function turnsSomewhere(garden: Garden, id: ItemId, limits: Limits): boolean {
  const bed = garden.items.find((item) => item.id === id);
  if (bed?.kind !== "bed") return false;
  return halfTurnsRound(bed, garden, limits.turnElement, limits.wheelchairWay).some((end) =>
    halfTurnPasses(end, limits),
  );
}
