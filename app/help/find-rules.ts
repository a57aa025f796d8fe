import type { RuleRow } from "../../src/index.ts";
import { gradeWords } from "../ledger/GradeMark.tsx";
import { sourceText } from "../ledger/snags/SourceLine.tsx";

/** The rules in which every word that was typed occurs, wherever in their text; all of them for no word. */
export function findRules(rules: readonly RuleRow[], typed: string): readonly RuleRow[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  return rules.filter((rule) => {
    const text = textOf(rule);
    return words.every((word) => text.includes(word));
  });
}

const textOf = ({ id, grade, promise, why, source, limits }: RuleRow): string =>
  plain(
    [
      id.replaceAll("-", " "),
      gradeWords(grade),
      promise,
      why,
      sourceText(source),
      ...limits.map(({ label }) => label),
    ].join(" "),
  );

/** Small letters, and the typewriter's apostrophe: either may be typed. */
const plain = (text: string): string => text.toLowerCase().replaceAll("’", "'");
