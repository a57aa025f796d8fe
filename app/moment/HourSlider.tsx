import { useId, useMemo } from "react";
import { formatClock, type Site, say } from "../../src/index.ts";
import { HOUR_STEP, LAST_STEP, setMinutes, useMoment, useToldMinutes } from "./moment.ts";
import { momentWords, timeWords } from "./moment-words.ts";
import { dayMarks, sunSpans, sunThen } from "./sun-then.ts";

const FULL = 1440;

interface Props {
  readonly site: Site;
  readonly label: string;
  /** On the plan there is room for the track alone. */
  readonly bare?: boolean;
}

/** The hour of the day by the garden's clock. Its track shows night, day, and the sun behind the skyline. */
export function HourSlider({ site, label, bare = false }: Props) {
  const day = useMoment((s) => s.day);
  const minutes = useToldMinutes();
  const id = useId();
  const marks = useMemo(() => dayMarks(site, day), [site, day]);
  const spans = useMemo(() => sunSpans(site, day), [site, day]);
  const percent = (at: number) => `${(100 * at) / FULL}%`;
  const ticks = [marks.rise, marks.noon, marks.set].filter((at) => at !== null);
  return (
    <div className="moment-slider" data-bare={bare}>
      <label htmlFor={id} className={bare ? "unseen" : undefined}>
        {label}
      </label>
      {bare ? null : <strong>{timeWords(minutes, marks.noon)}</strong>}
      <span className="moment-track">
        <svg width="100%" height="10" aria-hidden="true">
          {spans.map(({ from, to, shines }) => (
            <rect key={from} data-sun={shines} x={percent(from)} width={percent(to - from)} height="10" />
          ))}
          {ticks.map((at) => (
            <line key={at} x1={percent(at)} x2={percent(at)} y1="0" y2="10" />
          ))}
        </svg>
        <input
          id={id}
          type="range"
          min={0}
          max={LAST_STEP}
          step={HOUR_STEP}
          value={minutes}
          aria-valuetext={momentWords(day, minutes, marks.noon, sunThen(site, day, minutes))}
          onChange={(event) => setMinutes(Number(event.target.value))}
        />
      </span>
      {bare ? null : (
        <span className="moment-jumps">
          {marks.rise === null ? null : <Jump name={say`Sunrise`} to={upTo(marks.rise)} shown={marks.rise} />}
          <Jump name={say`Noon`} note={say`, by the sun`} to={marks.noon} shown={marks.noon} />
          {marks.set === null ? null : <Jump name={say`Sunset`} to={downTo(marks.set)} shown={marks.set} />}
          {marks.polar === null ? null : (
            <span>{marks.polar === "day" ? say`the sun stays up` : say`the sun stays down`}</span>
          )}
        </span>
      )}
    </div>
  );
}

/** The first and the last step of the slider with the sun up. */
const upTo = (rise: number): number => Math.min(LAST_STEP, Math.floor(rise / HOUR_STEP + 1) * HOUR_STEP);
const downTo = (set: number): number => Math.max(0, Math.ceil(set / HOUR_STEP - 1) * HOUR_STEP);

interface JumpProps {
  readonly name: string;
  /** Said after it to those who do not see where it stands. */
  readonly note?: string;
  readonly to: number;
  readonly shown: number;
}

const Jump = ({ name, note = "", to, shown }: JumpProps) => (
  <button
    type="button"
    className="link"
    aria-label={`${name}, ${formatClock(shown)}${note}`}
    onClick={() => setMinutes(to)}
  >
    {name} {formatClock(shown)}
  </button>
);
