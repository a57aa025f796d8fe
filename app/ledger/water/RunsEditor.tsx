import { type Point, say } from "../../../src/index.ts";
import { LengthField } from "../fields/LengthField.tsx";

type Run = readonly Point[];

interface Props {
  /** What the runs are: "Main", "Line". */
  readonly what: string;
  /** What the button that begins them says: "Draw the main yourself". */
  readonly drawLabel: string;
  /** How its points are measured. */
  readonly frameWords: string;
  /** Where a run begins that is typed. */
  readonly start: Point;
  /** Those drawn by hand; null while the planner lays them. */
  readonly runs: readonly Run[] | null;
  /** Those the planner would lay, to begin with. */
  readonly proposed: readonly Run[];
  /** Takes the changed runs over; null gives the work back to the planner. */
  readonly onCommit: (step: string, runs: readonly Run[] | null) => void;
  readonly onDraw: () => void;
}

/** Pipes drawn by hand: drawn on the plan, or typed point by point; and the way back to the planner's. */
export function RunsEditor({ what, drawLabel, frameWords, start, runs, proposed, onCommit, onDraw }: Props) {
  return (
    <div className="pipe-runs wide">
      <p>
        <button type="button" className="button small" onClick={onDraw}>
          {runs === null ? drawLabel : say`Draw another run`}
        </button>{" "}
        <button
          type="button"
          className="button small"
          onClick={() => onCommit(say`Type a pipe`, [...(runs ?? []), straightFrom(start)])}
        >
          {say`Type a run`}
        </button>{" "}
        {runs === null && proposed.length > 0 ? (
          <button
            type="button"
            className="button small"
            onClick={() => onCommit(say`Take the planner’s pipes over`, proposed)}
          >
            {say`Change the planner’s`}
          </button>
        ) : null}
        {runs === null ? null : (
          <button
            type="button"
            className="button small"
            onClick={() => onCommit(say`Let the planner lay the pipes`, null)}
          >
            {say`Let the planner lay it`}
          </button>
        )}
      </p>
      {numbered(runs ?? []).map(({ one: run, i, number }) => (
        <RunRows
          key={number}
          title={`${what} ${number}`}
          frameWords={frameWords}
          run={run}
          onChange={(next) => onCommit(say`Change a pipe`, changed(runs ?? [], i, next))}
        />
      ))}
    </div>
  );
}

/** The runs with one of them changed or taken out; null once none is left, for then the planner lays them again. */
function changed(runs: readonly Run[], i: number, next: Run | null): readonly Run[] | null {
  if (next) return runs.with(i, next);
  return runs.length > 1 ? runs.toSpliced(i, 1) : null;
}

/** A piece to be changed point by point, for whoever cannot draw on the plan. */
const straightFrom = ([x, y]: Point): Run => [
  [x, y],
  [x + METRE, y],
];

const METRE = 1000;

/** Runs and points have no names: their number in the list is who they are. */
const numbered = <T,>(list: readonly T[]) => list.map((one, i) => ({ one, i, number: i + 1 }));

interface RowsProps {
  readonly title: string;
  readonly frameWords: string;
  readonly run: Run;
  /** null takes the run out. */
  readonly onChange: (run: Run | null) => void;
}

function RunRows({ title, frameWords, run, onChange }: RowsProps) {
  const setPoint = (i: number, point: Point) => onChange(run.with(i, point));
  const takeOut = (i: number) => onChange(run.length <= 2 ? null : run.toSpliced(i, 1));
  const addAfter = (i: number) => {
    const [ax, ay] = run[i]!;
    const [bx, by] = run[i + 1]!;
    onChange(run.toSpliced(i + 1, 0, [(ax + bx) / 2, (ay + by) / 2]));
  };
  return (
    <details>
      <summary>{say`${title}: ${run.length} points`}</summary>
      <p className="quiet">{frameWords}</p>
      <ol>
        {numbered(run).map(({ one: [x, y], i, number }) => (
          <li key={number}>
            <LengthField
              bare
              may="negative"
              label={say`${title}, point ${number}, across`}
              value={x}
              onCommit={(next) => setPoint(i, [next, y])}
            />
            <LengthField
              bare
              may="negative"
              label={say`${title}, point ${number}, down`}
              value={y}
              onCommit={(next) => setPoint(i, [x, next])}
            />
            <button
              type="button"
              className="button small"
              aria-label={say`${title}: take out point ${number}`}
              onClick={() => takeOut(i)}
            >
              ×
            </button>
            {i < run.length - 1 ? (
              <button
                type="button"
                className="button small"
                aria-label={say`${title}: put a point after point ${number}`}
                onClick={() => addAfter(i)}
              >
                +
              </button>
            ) : null}
          </li>
        ))}
      </ol>
      <button type="button" className="button small" onClick={() => onChange(null)}>
        {say`Take this run out`}
      </button>
    </details>
  );
}
