import { useId, useMemo, useState } from "react";
import { type Grade, LIMITS, limitIds, rulesTable, say, sayCount } from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { openDialog } from "../dialogs/open-dialog.ts";
import { gradeWords } from "../ledger/GradeMark.tsx";
import { useFindings } from "../live/findings.ts";
import { findRules } from "./find-rules.ts";
import { LimitLine } from "./LimitLine.tsx";
import { RuleEntry } from "./RuleEntry.tsx";
import { useRulesWanted } from "./rules-wanted.ts";
import "./rules.css";

const GRADES: readonly Grade[] = ["must", "should", "note"];

/** The rules tell themselves: what each promises and why, its limits in this garden, its source. Nothing is written twice. */
export function RulesDialog() {
  const { wanted } = useRulesWanted.getState();
  const [typed, setTyped] = useState(wanted && "limit" in wanted ? LIMITS[wanted.limit].label : "");
  const rules = useMemo(rulesTable, []);
  const snags = useFindings((s) => s.snags);
  const found = findRules(rules, typed);
  const field = useId();

  return (
    <Dialog title={say`The rules, and why`}>
      <p className="rules-about">
        {say`What a plan is held to. Each limit is a default with its source, and can be made your own under Site.`}{" "}
        <button
          type="button"
          className="link"
          onClick={() => openDialog("help")}
        >{say`How to start, and the keys`}</button>
      </p>
      <div className="field rules-search">
        <label htmlFor={field}>{say`Search the rules`}</label>
        <input
          id={field}
          type="search"
          value={typed}
          autoComplete="off"
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      <p className="quiet" role="status">
        {found.length === rules.length
          ? sayCount(rules.length, { one: "{{count}} rule", other: "{{count}} rules" })
          : sayCount(
              rules.length,
              { one: "{{found}} of {{count}} rule", other: "{{found}} of {{count}} rules" },
              { found: found.length },
            )}
      </p>
      {found.length === 0 ? (
        <p>
          {say`No rule speaks of that.`}{" "}
          <button type="button" className="link" onClick={() => setTyped("")}>{say`Show them all`}</button>
        </p>
      ) : null}
      {GRADES.map((grade) => {
        const ofGrade = found.filter((rule) => rule.grade === grade);
        return ofGrade.length === 0 ? null : (
          <section key={grade} aria-label={gradeWords(grade)}>
            <h3>{gradeWords(grade)}</h3>
            <ul className="rules">
              {ofGrade.map((rule) => (
                <RuleEntry
                  key={rule.id}
                  rule={rule}
                  wanted={wanted !== null && "rule" in wanted && wanted.rule === rule.id}
                  snags={snags.filter((snag) => snag.rule === rule.id).length}
                />
              ))}
            </ul>
          </section>
        );
      })}
      <OtherLimits typed={typed} />
    </Dialog>
  );
}

/** Limits that are reckoned with but flag nothing by themselves: no rule would show them. */
function OtherLimits({ typed }: { readonly typed: string }) {
  const others = useMemo(() => {
    const held = new Set(rulesTable().flatMap(({ limits }) => limits.map(({ id }) => id)));
    return limitIds.filter((id) => !held.has(id));
  }, []);
  const found = others.filter((id) => LIMITS[id].label.toLowerCase().includes(typed.trim().toLowerCase()));
  if (found.length === 0) return null;
  return (
    <section aria-label={say`Reckoned with`}>
      <h3>{say`Reckoned with`}</h3>
      <ul className="rule-limits">
        {found.map((id) => (
          <LimitLine key={id} id={id} />
        ))}
      </ul>
    </section>
  );
}
