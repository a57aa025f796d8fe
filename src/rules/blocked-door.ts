import { LIMITS } from "../garden/limits.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { say, word } from "../words/say.ts";
import { conflictFindings } from "./conflict-findings.ts";
import { defineRule } from "./rule.ts";

/** Flags beds and sheds in the ground that a door or gate needs before it and for its leaf to swing. */
export const blockedDoor = defineRule({
  id: "blocked-door",
  grade: "must",
  promise: word("Every door and gate opens, with room before it."),
  why: word("A door that meets a bed opens by half, and nobody gets through it with a barrow."),
  source: LIMITS.gateClear.source,
  limits: ["gateClear"],
  needs: ["garden", "limits", "place", "units"],

  check({ limits, units, ...facts }) {
    return conflictFindings(facts, ["opening"], (movable, opening, depth) => ({
      title: say`${nameOf(movable)} blocks ${nameOf(opening)} by ${depth}`,
      detail: say`${formatShort(limits.gateClear, units)} before it and the swing of its leaf are to be kept clear.`,
    }));
  },
});
