import { useState } from "react";
import {
  figure,
  formatLength,
  type Leg,
  legsOf,
  say,
  type Traverse,
  traverse,
  type Units,
} from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { LengthField } from "../ledger/fields/LengthField.tsx";
import { NumberField } from "../ledger/fields/NumberField.tsx";
import { useEditor } from "../store/use-editor.ts";
import { Sketch } from "./Sketch.tsx";

/** A row of the table; the key stays with it while rows come and go. */
type Row = Leg & { readonly key: number };

const SQUARE = 90;

/** The yard's outline as it was measured: side after side with the turns between, until it closes. */
export function OutlineDialog() {
  const yard = useEditor((s) => s.garden.yard);
  const units = useEditor((s) => s.garden.units);
  const [start] = useState(() => yard[0]!);
  const [heading, setHeading] = useState(() => legsOf(yard).heading);
  const [rows, setRows] = useState<readonly Row[]>(() =>
    legsOf(yard).legs.map((leg, key) => ({ ...leg, key })),
  );
  const [nextKey, setNextKey] = useState(rows.length);
  const found = closing(rows, start, heading);

  const change = (key: number, changes: Partial<Leg>) =>
    setRows(rows.map((row) => (row.key === key ? { ...row, ...changes } : row)));
  const addAfter = (index: number) => {
    setRows(rows.toSpliced(index + 1, 0, { key: nextKey, length: rows[index]!.length, turn: SQUARE }));
    setNextKey(nextKey + 1);
  };
  const take = () => {
    if (!found.traverse) return;
    useEditor
      .getState()
      .commit(say`Set the yard’s outline as measured`, [{ op: "set-yard", yard: found.traverse.closed }]);
    closeDialog();
  };

  return (
    <Dialog title={say`The yard by its sides and turns`}>
      <p>{say`Walk round the yard and type each side as you taped it, and how far you turn at its end: 90° to the right at a square corner, to the left with a minus.`}</p>
      <NumberField
        label={say`The first side runs, clockwise from up the plan`}
        unit="°"
        least={-360}
        most={360}
        value={heading}
        onCommit={setHeading}
      />
      <table className="legs">
        <thead>
          <tr>
            <th scope="col">{say`Side`}</th>
            <th scope="col">{say`Length`}</th>
            <th scope="col">{say`Turn at its end`}</th>
            <th scope="col">
              <span className="unseen">{say`Rows`}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={row.key}>
              <th scope="row">{i + 1}</th>
              <td>
                <LengthField
                  bare
                  label={say`Length of side ${i + 1}`}
                  value={row.length}
                  onCommit={(length) => change(row.key, { length })}
                />
              </td>
              <td>
                <NumberField
                  bare
                  label={say`Turn after side ${i + 1}`}
                  unit="°"
                  least={-180}
                  most={180}
                  value={row.turn}
                  onCommit={(turn) => change(row.key, { turn })}
                />
              </td>
              <td>
                <button
                  type="button"
                  className="button small"
                  aria-label={say`Put a side after side ${i + 1}`}
                  onClick={() => addAfter(i)}
                >{say`+ side`}</button>{" "}
                <button
                  type="button"
                  className="button small"
                  aria-label={say`Take out side ${i + 1}`}
                  aria-disabled={rows.length <= 3}
                  onClick={() => rows.length > 3 && setRows(rows.toSpliced(i, 1))}
                >{say`− side`}</button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {found.traverse ? <Closing found={found.traverse} units={units} /> : null}
      {found.problem ? (
        <p className="field-problem" role="alert">{say`This does not make an outline: ${found.problem}.`}</p>
      ) : null}
      {found.traverse ? (
        <Sketch
          label={say`The outline as it will be, and dashed as it was walked`}
          lines={[
            { key: "walked", points: found.traverse.walked, closed: false, tone: "dashed" },
            { key: "closed", points: found.traverse.closed, closed: true, tone: "strong" },
          ]}
          marks={found.traverse.closed.map((at, i) => ({
            key: `corner ${i}`,
            at,
            letter: String(i + 1),
            strong: i === 0,
          }))}
        />
      ) : null}
      <p className="dialog-actions">
        <button
          type="button"
          className="button main"
          aria-disabled={!found.traverse}
          onClick={take}
        >{say`Make this the yard`}</button>
      </p>
    </Dialog>
  );
}

function closing(
  legs: readonly Leg[],
  start: readonly [number, number],
  heading: number,
): { readonly traverse: Traverse | null; readonly problem: string | null } {
  try {
    return { traverse: traverse(legs, start, heading), problem: null };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { traverse: null, problem: error.message };
  }
}

/** Half a millimetre and a hundredth of a degree: it closes. */
const CLOSED = { gap: 0.5, turn: 0.01 } as const;
/** A tape on grass does no better than about 1 in 500 (common practice): beyond that something was misread. */
const MISREAD = 1 / 200;

/** By how much the walk misses its start, and what becomes of that. */
function Closing({ found, units }: { readonly found: Traverse; readonly units: Units }) {
  const { gap, perimeter, turnError } = found;
  if (gap <= CLOSED.gap && Math.abs(turnError) <= CLOSED.turn)
    return <p className="closing">{say`The outline closes.`}</p>;
  const turns = Math.abs(turnError) > CLOSED.turn ? turnsWords(turnError) : "";
  const doubt =
    gap / perimeter > MISREAD ? say` That is more than a tape gets wrong: look for a slip first.` : "";
  return (
    <p
      className="closing"
      role="status"
    >{say`The walk ends ${formatLength(gap, units)} from where it began, 1 in ${Math.round(perimeter / gap)} of its length.${turns} The error is spread over all sides by their length.${doubt}`}</p>
  );
}

function turnsWords(error: number): string {
  const degrees = figure(Math.abs(Math.round(error * 100) / 100));
  return error < 0
    ? say` The turns are ${degrees}° short of one whole turn.`
    : say` The turns are ${degrees}° over one whole turn.`;
}
