import { say, told, word, type YearParts, type YearsAhead } from "../../../src/index.ts";

interface Props {
  readonly ahead: YearsAhead;
  readonly yearName: (year: number) => string;
  readonly money: (amount: number) => string;
}

const HEIGHT = 84;
const WIDTH = 20;
const BAR = 13;
/** What a bar is put together of, from below. */
const STACK: readonly {
  readonly parts: readonly (keyof YearParts)[];
  readonly label: string;
  readonly id: string;
}[] = [
  { id: "kept", label: word("Upkeep and water"), parts: ["topUp", "mulch", "seed", "refill", "water"] },
  { id: "renewed", label: word("Renewals"), parts: ["renewals"] },
];

/** What each year after the first costs, as bars; the first year's building is told in words, for it dwarfs the rest. */
export function YearsChart({ ahead: { years }, yearName, money }: Props) {
  const later = years.slice(1);
  const most = Math.max(...later.map(({ total }) => total), 0);
  if (most <= 0) return null;
  return (
    <figure className="years-chart">
      <svg
        viewBox={`0 0 ${later.length * WIDTH} ${HEIGHT + 2}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={say`Cost of each year after the first: ${later.map(({ year, total }) => `${yearName(year)} ${money(total)}`).join(", ")}`}
      >
        {later.map((year, i) => {
          let below = 0;
          return STACK.map(({ id, parts }) => {
            const amount = parts.reduce((sum, part) => sum + year[part], 0);
            const height = (amount / most) * HEIGHT;
            below += height;
            return (
              <rect
                key={`${id} ${year.year}`}
                data-part={id}
                x={i * WIDTH + (WIDTH - BAR) / 2}
                width={BAR}
                y={HEIGHT + 1 - below}
                height={height}
              />
            );
          });
        })}
        <line x1="0" x2={later.length * WIDTH} y1={HEIGHT + 1} y2={HEIGHT + 1} />
      </svg>
      <figcaption>
        <span>{yearName(1)}</span>
        <span>
          {STACK.map(({ id, label }) => (
            <span key={id} className="chart-key" data-part={id}>
              {told(label)}
            </span>
          ))}
          {say`highest ${money(most)}`}
        </span>
        <span>{yearName(years.length - 1)}</span>
      </figcaption>
    </figure>
  );
}
