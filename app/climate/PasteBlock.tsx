import { useId, useState } from "react";
import { midSentence, say, sayCount, told, type Units } from "../../src/index.ts";
import { COLUMN_IDS, COLUMNS } from "./columns.ts";
import type { Draft } from "./draft.ts";
import { readBlock } from "./read-block.ts";

interface Props {
  readonly draft: Draft;
  readonly units: Units;
  readonly onChange: (draft: Draft) => void;
}

interface Outcome {
  readonly said: string;
  readonly problems: readonly string[];
}

const orderWords = (): string =>
  COLUMN_IDS.map((column) => midSentence(told(COLUMNS[column].label))).join(", ");

/** Cells out of a spreadsheet or a station's page, filled in all at once. What cannot be read stays in the box, and is told. */
export function PasteBlock({ draft, units, onChange }: Props) {
  const id = useId();
  const [text, setText] = useState("");
  const [outcome, setOutcome] = useState<Outcome | null>(null);

  const fill = () => {
    try {
      const { draft: next, filled, problems } = readBlock(text, draft, units);
      onChange(next);
      setOutcome({
        said: sayCount(filled, { one: "{{count}} cell filled.", other: "{{count}} cells filled." }),
        problems,
      });
      if (problems.length === 0) setText("");
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      setOutcome({ said: say`Nothing was filled in.`, problems: [error.message] });
    }
  };

  return (
    <details className="climate-paste">
      <summary>{say`Paste a table`}</summary>
      <div className="field wide">
        <label htmlFor={id}>{say`A month a row, or a month a column, in this order: ${orderWords()}`}</label>
        <textarea
          id={id}
          rows={4}
          spellCheck={false}
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
      </div>
      <button type="button" className="button" onClick={fill}>
        {say`Fill in`}
      </button>
      <div role="status">
        {outcome ? <p>{outcome.said}</p> : null}
        {outcome && outcome.problems.length > 0 ? (
          <ul className="climate-problems">
            {outcome.problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        ) : null}
      </div>
    </details>
  );
}
