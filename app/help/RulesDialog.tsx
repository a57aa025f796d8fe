import { useId, useMemo, useState } from "react";
import { type Grade, LIMITS, limitIds, rulesTable } from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { openDialog } from "../dialogs/open-dialog.ts";
import { plural } from "../dialogs/plural.ts";
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
    <Dialog title="The rules, and why">
      <p className="rules-about">
        What a plan is held to. Each limit is a default with its source, and can be made your own under Site.{" "}
        <button type="button" className="link" onClick={() => openDialog("help")}>
          How to start, and the keys
        </button>
      </p>
      <div className="field rules-search">
        <label htmlFor={field}>Search the rules</label>
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
          ? plural(rules.length, "rule")
          : `${found.length} of ${plural(rules.length, "rule")}`}
      </p>
      {found.length === 0 ? (
        <p>
          No rule speaks of that.{" "}
          <button type="button" className="link" onClick={() => setTyped("")}>
            Show them all
          </button>
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
    <section aria-label="Reckoned with">
      <h3>Reckoned with</h3>
      <ul className="rule-limits">
        {found.map((id) => (
          <LimitLine key={id} id={id} />
        ))}
      </ul>
    </section>
  );
}
