import { lanesOf, MONTH_NAMES, say, type Task, told } from "../../../src/index.ts";
import { daySpan } from "./day-span.ts";
import { MONTH_LENGTHS } from "./month-tasks.ts";

interface Props {
  readonly tasks: readonly Task[];
  /** The month looked at, 0 for January. */
  readonly month: number;
  /** Today as a day of the year. */
  readonly today: number;
  readonly onMonth: (month: number) => void;
}

const ROW = 15;
const BAR = 9;
const DAYS = 365;
const COLUMNS = MONTH_LENGTHS.map((days) => `${days}fr`).join(" ");
const FIRST_DAYS = MONTH_LENGTHS.map((_, month) =>
  MONTH_LENGTHS.slice(0, month).reduce((sum, days) => sum + days, 0),
);

/** The year at a glance: a lane for each kind of task. The months along its top choose the one that is told below. */
export function YearStrip({ tasks, month, today, onMonth }: Props) {
  const lanes = lanesOf(tasks);
  const height = lanes.length * ROW;
  return (
    <div className="year-strip">
      <fieldset className="strip-months" style={{ gridTemplateColumns: COLUMNS }} aria-label={say`Month`}>
        {MONTH_NAMES.map(told).map((name, i) => (
          <button
            key={name}
            type="button"
            aria-pressed={i === month}
            aria-label={name}
            onClick={() => onMonth(i)}
          >
            {name.charAt(0)}
          </button>
        ))}
      </fieldset>
      <ul className="strip-kinds">
        {lanes.map(({ kind, label, stretches }) => (
          <li key={kind}>
            {label}
            <span className="unseen">: {stretches.map(daySpan).join(", ")}</span>
          </li>
        ))}
      </ul>
      <svg
        viewBox={`0 0 ${DAYS} ${height}`}
        // As high as the words beside it, however large those are.
        style={{ height: `${height / 16}rem` }}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <rect
          className="strip-month"
          x={FIRST_DAYS[month]}
          width={MONTH_LENGTHS[month]}
          y="0"
          height={height}
        />
        {FIRST_DAYS.slice(1).map((day) => (
          <line key={day} className="strip-rule" x1={day} x2={day} y1="0" y2={height} />
        ))}
        {lanes.map(({ kind, stretches }, row) =>
          stretches.map(({ from, days }) => (
            <rect
              key={`${kind} ${from}`}
              className="strip-bar"
              data-kind={kind}
              x={from - 1}
              width={days}
              y={row * ROW + (ROW - BAR) / 2}
              height={BAR}
            />
          )),
        )}
        <line className="strip-today" x1={today - 0.5} x2={today - 0.5} y1="0" y2={height} />
      </svg>
    </div>
  );
}
