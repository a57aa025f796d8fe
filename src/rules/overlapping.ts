import { nameOf } from "../garden/name-of.ts";
import { practice } from "../garden/source.ts";
import { say, word } from "../words/say.ts";
import { conflictFindings } from "./conflict-findings.ts";
import { defineRule } from "./rule.ts";

/** Flags beds and sheds that stand in one another, in a building, fence, wall or trunk, or on ground kept clear. */
export const overlapping = defineRule({
  id: "overlapping",
  grade: "must",
  promise: word("No bed or shed stands in anything else or on ground that is kept clear."),
  why: word("Two things cannot be built in one place."),
  source: practice("a fact of building"),
  needs: ["garden", "place"],

  check(facts) {
    return conflictFindings(facts, ["thing", "keep-clear"], (movable, other, depth) => {
      const what = other.kind === "keep-clear" ? say`ground kept clear` : nameOf(other);
      return {
        title: say`${nameOf(movable)} overlaps ${what} by ${depth}`,
        detail: say`The smallest shift that parts ${nameOf(movable)} from ${what} is ${depth}.`,
      };
    });
  },
});
