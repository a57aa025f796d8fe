import { LIMITS, type LimitId } from "../garden/limits.ts";
import type { Source } from "../garden/source.ts";
import { word } from "../words/say.ts";
import { RULES } from "./index.ts";
import type { Grade } from "./rule.ts";

/** A rule as the help text and the table of rules tell it. */
export interface RuleRow {
  readonly id: string;
  readonly grade: Grade;
  readonly promise: string;
  readonly why: string;
  readonly source: Source;
  /** Words of the limits it holds a garden to, with their ids in the limits table. */
  readonly limits: readonly { readonly id: LimitId; readonly label: string }[];
}

/** Every rule, in the order of the registry. */
export const rulesTable = (): RuleRow[] =>
  RULES.map(({ id, grade, promise, why, source, limits = [] }) => ({
    id,
    grade,
    promise,
    why,
    source,
    limits: limits.map((limit) => ({ id: limit, label: LIMITS[limit].label })),
  }));

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  must: word("must fix"),
  should: word("should fix"),
  note: word("worth knowing"),
};

const HOW_WORDS: Readonly<Record<Source["how"], string>> = {
  published: "",
  memory: word(" (from memory)"),
  practice: word(" (common practice)"),
  computed: " (computed)",
};

/** The rules as a table in Markdown. */
export function rulesMarkdown(): string {
  const rows = rulesTable().map(({ id, grade, promise, source }) =>
    [id, promise, GRADE_WORDS[grade], `${source.text}${HOW_WORDS[source.how]}`].map(inCell).join(" | "),
  );
  return [
    "| rule | promise | grade | source |",
    "| --- | --- | --- | --- |",
    ...rows.map((row) => `| ${row} |`),
  ].join("\n");
}

const inCell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");
