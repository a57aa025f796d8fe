import {
  type BedMonth,
  formatClock,
  formatHours,
  monthName,
  nameOf,
  type SunStretch,
  say,
} from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";

const ROW = 11;
const BAR = 8;
const AXIS = 13;
/** Hours of the clock that are lettered along the day. */
const LETTERED = [3, 6, 9, 12, 15, 18, 21];

interface Props {
  readonly months: readonly BedMonth[];
  readonly whole: boolean;
}

/** A bar of the day for each month from sunrise to sunset: filled where the bed is in the sun, pale where it is shaded. */
export function MonthBars({ months, whole }: Props) {
  const shown = whole ? months : months.filter(({ inSeason }) => inSeason);
  const [first, last] = spanOf(months);
  const percent = (minutes: number) => `${(100 * (minutes - first)) / (last - first)}%`;
  const height = shown.length * ROW + AXIS;
  return (
    <div className="month-bars">
      <ul>
        {shown.map(({ month, hours, inSeason }) => (
          <li key={month} data-season={inSeason}>
            <span>
              <span aria-hidden="true">{monthName(month).slice(0, 3)}</span>
              <span className="unseen">{monthName(month)}: </span>
            </span>
            <span>{formatHours(hours)}</span>
          </li>
        ))}
      </ul>
      <svg width="100%" height={height} aria-hidden="true">
        {shown.map(({ month, inSeason, stretches }, row) => (
          <g key={month} data-season={inSeason}>
            {stretches.map((stretch) => (
              <Stretch
                key={stretch.from}
                stretch={stretch}
                x={percent(stretch.from)}
                width={`${(100 * (stretch.to - stretch.from)) / (last - first)}%`}
                y={row * ROW}
              />
            ))}
          </g>
        ))}
        {LETTERED.map((hour) => hour * 60)
          .filter((minutes) => minutes > first + 30 && minutes < last - 30)
          .map((minutes) => (
            <g key={minutes} className="month-hour">
              <line x1={percent(minutes)} x2={percent(minutes)} y1="0" y2={height - AXIS} />
              <text x={percent(minutes)} y={height - 3}>
                {minutes / 60}
              </text>
            </g>
          ))}
      </svg>
    </div>
  );
}

interface StretchProps {
  readonly stretch: SunStretch;
  readonly x: string;
  readonly width: string;
  readonly y: number;
}

const Stretch = ({ stretch, x, width, y }: StretchProps) => {
  const words = useStretchWords(stretch);
  return (
    <g>
      <title>{words}</title>
      <rect className="month-day" x={x} width={width} y={y} height={BAR} />
      <rect className="month-lit" x={x} width={width} y={y} height={BAR} opacity={stretch.lit} />
    </g>
  );
};

/** "7:10 to 10:40, shaded by House". */
function useStretchWords({ from, to, lit, by, skyline }: SunStretch): string {
  const name = useEditor((s) => {
    const item = by && s.garden.items.find(({ id }) => id === by);
    return item ? nameOf(item) : null;
  });
  const time = `${formatClock(from)} to ${formatClock(to)}`;
  if (skyline) return say`${time}, sun behind the skyline`;
  if (lit >= 1) return say`${time}, in full sun`;
  const much = lit <= 0 ? say`shaded` : say`${Math.round(lit * 100)} % of the sun`;
  return name ? `${time}, ${much}: ${name}` : `${time}, ${much}`;
}

/** The longest day of the year from whole hour to whole hour, so that the bars of all months and beds stand under one another. */
function spanOf(months: readonly BedMonth[]): [number, number] {
  const stretches = months.flatMap((month) => month.stretches);
  const first = stretches.reduce((least, { from }) => Math.min(least, from), 12 * 60);
  const last = stretches.reduce((most, { to }) => Math.max(most, to), 12 * 60);
  return [Math.floor(first / 60) * 60, Math.ceil(last / 60) * 60 + (first === last ? 60 : 0)];
}
