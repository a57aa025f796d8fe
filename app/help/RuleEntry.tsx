import { useEffect, useRef } from "react";
import { defaultLimit, type RuleRow, sayCount } from "../../src/index.ts";
import { GradeMark } from "../ledger/GradeMark.tsx";
import { ended, sourceText } from "../ledger/snags/SourceLine.tsx";
import { useEditor } from "../store/use-editor.ts";
import { LimitLine } from "./LimitLine.tsx";

interface Props {
  readonly rule: RuleRow;
  /** It is what was asked about: it comes into sight and takes the keyboard. */
  readonly wanted: boolean;
  /** How many snags of this rule the plan has now. */
  readonly snags: number;
}

/** A rule in full: what it promises, why, the limits it holds this garden to, where it comes from. */
export function RuleEntry({ rule, wanted, snags }: Props) {
  const { id, grade, promise, why, source, limits } = rule;
  const edition = useEditor((s) => s.garden.gardener.edition);
  // A rule that takes its source from one of its limits would say it twice.
  const sourceStands = limits.some((limit) => defaultLimit(limit.id, edition).source.text === source.text);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!wanted) return;
    heading.current?.focus();
    heading.current?.scrollIntoView?.({ block: "center" });
  }, [wanted]);

  return (
    <li className="rule" data-rule={id} data-wanted={wanted}>
      <GradeMark grade={grade} />
      <div>
        <h4 ref={heading} tabIndex={-1}>
          {promise}
        </h4>
        <p>{why}</p>
        {snags > 0 ? <p className="rule-found">{foundWords(snags)}</p> : null}
        {limits.length > 0 ? (
          <ul className="rule-limits">
            {limits.map((limit) => (
              <LimitLine key={limit.id} id={limit.id} />
            ))}
          </ul>
        ) : null}
        {sourceStands ? null : <p className="quiet rule-source">{ended(sourceText(source))}</p>}
      </div>
    </li>
  );
}

const foundWords = (snags: number): string =>
  sayCount(snags, { one: "{{count}} snag on this plan now.", other: "{{count}} snags on this plan now." });
