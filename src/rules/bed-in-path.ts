import { nameOf } from "../garden/name-of.ts";
import { practice } from "../garden/source.ts";
import { say, word } from "../words/say.ts";
import { conflictFindings } from "./conflict-findings.ts";
import { defineRule } from "./rule.ts";

/** Flags beds and sheds that stand on a drawn path. */
export const bedInPath = defineRule({
  id: "bed-in-path",
  grade: "must",
  promise: word("Nothing is built on a drawn path."),
  why: word("A drawn path says where people are meant to walk; whatever stands in it takes from its width."),
  source: practice("the plan's own paths"),
  needs: ["garden", "place"],

  check(facts) {
    return conflictFindings(facts, ["path"], (movable, path, depth) => ({
      title: say`${nameOf(movable)} stands ${depth} into ${nameOf(path)}`,
      detail: say`It stands in the path and takes ${depth} of its width.`,
    }));
  },
});
