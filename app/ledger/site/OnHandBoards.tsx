import { useState } from "react";
import { FOOT, type Garden, say, TIMBERS, timberById, type Units } from "../../../src/index.ts";
import { boardChoices, boardName } from "../card/bed/board-choices.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { LengthField } from "../fields/LengthField.tsx";
import { NumberField } from "../fields/NumberField.tsx";

type OnHand = Garden["cutting"]["onHand"];
type Row = OnHand[number];

interface Props {
  readonly cutting: Garden["cutting"];
  readonly units: Units;
  readonly onCommit: (onHand: OnHand) => void;
}

const MOST_ROWS = 50;
const MOST_COUNT = 999;

/** Boards the gardener has at home: they are used first and cost nothing. */
export function OnHandBoards({ cutting, units, onCommit }: Props) {
  const { onHand } = cutting;
  const put = (index: number, row: Row) => onCommit(onHand.with(index, row));
  return (
    <fieldset className="boards-at-home wide">
      <legend>{say`Boards at home`}</legend>
      <p className="field-note">{say`Used first, at no cost.`}</p>
      <ul>
        {keyed(onHand).map(({ key, row, index }) => (
          <OnHandRow
            key={key}
            row={row}
            name={`${boardName(row.board, units)} ${timberById(row.timber)?.label ?? row.timber}`}
            onCommit={(changed) => put(index, changed)}
            onRemove={() => onCommit(onHand.toSpliced(index, 1))}
          />
        ))}
      </ul>
      {onHand.length < MOST_ROWS ? (
        <AddRow cutting={cutting} units={units} onAdd={(row) => onCommit([...onHand, row])} />
      ) : (
        <p className="field-note">{say`No more than ${MOST_ROWS} rows.`}</p>
      )}
    </fieldset>
  );
}

/** Rows of one board and timber are told apart by which of them it is: their lengths and counts are what is typed. */
function keyed(onHand: OnHand) {
  const seen = new Map<string, number>();
  return onHand.map((row, index) => {
    const kind = `${row.board} ${row.timber}`;
    const nth = seen.get(kind) ?? 0;
    seen.set(kind, nth + 1);
    return { key: `${kind} ${nth}`, row, index };
  });
}

interface RowProps {
  readonly row: Row;
  readonly name: string;
  readonly onCommit: (row: Row) => void;
  readonly onRemove: () => void;
}

const OnHandRow = ({ row, name, onCommit, onRemove }: RowProps) => (
  <li>
    <span className="wide">{name}</span>
    <NumberField
      label={say`How many of ${name}`}
      bare
      whole
      least={1}
      most={MOST_COUNT}
      value={row.count}
      onCommit={(count) => onCommit({ ...row, count })}
    />
    <LengthField
      label={say`Length of ${name}`}
      bare
      value={row.length}
      onCommit={(length) => onCommit({ ...row, length })}
    />
    <button type="button" className="button small" aria-label={say`Take out ${name}`} onClick={onRemove}>
      ×
    </button>
  </li>
);

interface AddProps {
  readonly cutting: Garden["cutting"];
  readonly units: Units;
  readonly onAdd: (row: Row) => void;
}

/** A new row starts like the last one, for boards at home are often of a kind. */
function AddRow({ cutting, units, onAdd }: AddProps) {
  const last = cutting.onHand.at(-1);
  const [row, setRow] = useState<Row>({
    board: last?.board ?? (units === "us" ? "2x6" : "47x150"),
    timber: last?.timber ?? (units === "us" ? "douglas-fir" : "larch"),
    length: last?.length ?? (units === "us" ? 8 * FOOT : 2400),
    count: 1,
  });
  const set = (changes: Partial<Row>) => setRow({ ...row, ...changes });
  return (
    <div className="add-board">
      <ChoiceField
        label={say`Board at home`}
        value={row.board}
        choices={boardChoices(units, row.board, cutting.ownBoards)}
        onCommit={(board) => set({ board })}
      />
      <ChoiceField
        label={say`Its timber`}
        value={row.timber}
        choices={TIMBERS.map(({ id, label }) => ({ value: id, label }))}
        onCommit={(timber) => set({ timber })}
      />
      <NumberField
        label={say`How many`}
        whole
        least={1}
        most={MOST_COUNT}
        value={row.count}
        onCommit={(count) => set({ count })}
      />
      <LengthField label={say`Each long`} value={row.length} onCommit={(length) => set({ length })} />
      <button type="button" className="button" onClick={() => onAdd(row)}>{say`Add`}</button>
    </div>
  );
}
