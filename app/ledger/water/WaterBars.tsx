import { formatWater, MONTH_NAMES, say, told, type Units } from "../../../src/index.ts";

interface Props {
  readonly litresAWeek: readonly number[];
  /** What a bar of full height stands for, litres a week. */
  readonly whole: number;
  readonly month: number;
  readonly units: Units;
  readonly name: string;
}

const HEIGHT = 30;
const LETTER = 13;
const COLUMN = 24;
const GAP = 3;

/** A bar a month; the one looked at is filled. */
export function WaterBars({ litresAWeek, whole, month, units, name }: Props) {
  const most = Math.max(...litresAWeek);
  const peak = litresAWeek.indexOf(most);
  const text =
    most > 0
      ? say`${name}: most in ${told(MONTH_NAMES[peak]!)}, ${formatWater(most, units)} a week`
      : say`${name}: no water in any month`;
  return (
    <svg
      className="water-bars"
      viewBox={`0 0 ${12 * COLUMN} ${HEIGHT + LETTER}`}
      role="img"
      aria-label={text}
    >
      {litresAWeek.map((litres, i) => {
        const height = whole > 0 ? (litres / whole) * HEIGHT : 0;
        return (
          <g key={MONTH_NAMES[i]} data-now={i === month}>
            <rect x={i * COLUMN + GAP} width={COLUMN - 2 * GAP} y={HEIGHT - height} height={height} />
            <text x={(i + 0.5) * COLUMN} y={HEIGHT + LETTER - 2}>
              {told(MONTH_NAMES[i]!).slice(0, 1)}
            </text>
          </g>
        );
      })}
      <line x1={0} x2={12 * COLUMN} y1={HEIGHT} y2={HEIGHT} />
    </svg>
  );
}
