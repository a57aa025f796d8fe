import { say, sayCount, TASK_KIND_LABELS, type Task } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ended, sourceText } from "../snags/SourceLine.tsx";
import { daySpan } from "./day-span.ts";
import { yearsWords } from "./years-words.ts";

interface Props {
  readonly task: Task;
  /** The beds it is for. */
  readonly where: string;
  readonly firstYear: number | null;
}

/** One task: what and when and how much; opened, how, with what, why, and where that comes from. */
export function TaskEntry({ task, where, firstYear }: Props) {
  const { kind, title, detail, quantities, tools, why, cautions, source, bedIds, dayBy } = task;
  const select = useEditor((s) => s.select);
  const years = yearsWords(task, firstYear);
  return (
    <li className="task" data-kind={kind}>
      <details>
        <summary>
          <span className="task-title">{title}</span>
          <span className="task-days">{dayBy === "months" ? say`all month` : daySpan(task)}</span>
          <span className="task-takes">{[where, quantities[0], years].filter(Boolean).join(" · ")}</span>
        </summary>
        <p>{detail}</p>
        {quantities.length > 1 ? (
          <ul className="task-list">
            {quantities.slice(1).map((quantity) => (
              <li key={quantity}>{quantity}</li>
            ))}
          </ul>
        ) : null}
        {tools.length > 0 ? <p>{say`Tools: ${tools.join(", ")}.`}</p> : null}
        <p>{why}</p>
        {cautions.length > 0 ? (
          <>
            <h4>{say`Take care`}</h4>
            <ul className="task-list">
              {cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
          </>
        ) : null}
        <p className="field-note">{ended(sourceText(source))}</p>
        <p className="task-foot">
          <span className="quiet">{TASK_KIND_LABELS[kind]}</span>
          <button type="button" className="link" onClick={() => select(bedIds)}>
            {sayCount(bedIds.length, {
              one: "Show the bed on the plan",
              other: "Show the {{count}} beds on the plan",
            })}
          </button>
        </p>
      </details>
    </li>
  );
}
