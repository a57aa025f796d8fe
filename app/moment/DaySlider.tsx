import { useId } from "react";
import { say, told } from "../../src/index.ts";
import { setDay, useMoment } from "./moment.ts";
import { dayOfYear, dayWords, shortDay, TURNING_DAYS, YEAR_DAYS } from "./year-days.ts";

const TURNS = TURNING_DAYS.map(({ day, month, name }) => ({ on: dayOfYear(month, day), name }));
const LAST = YEAR_DAYS.length - 1;

/** Today's place in the year, by the clock of this device. */
const today = (): string => dayOfYear(new Date().getMonth() + 1, new Date().getDate());

/** The day of the year, with the days marked at which the sun turns. */
export function DaySlider() {
  const day = useMoment((s) => s.day);
  const id = useId();
  return (
    <div className="moment-slider">
      <label htmlFor={id}>{say`Day`}</label>
      <span className="moment-value">
        <button type="button" className="link" onClick={() => setDay(today())}>{say`Today`}</button>
        <strong>{dayWords(day)}</strong>
      </span>
      <span className="moment-track">
        <svg width="100%" height="10" aria-hidden="true">
          <rect width="100%" height="10" />
          {TURNS.map(({ on }) => (
            <line key={on} x1={place(on)} x2={place(on)} y1="0" y2="10" />
          ))}
        </svg>
        <input
          id={id}
          type="range"
          min={0}
          max={LAST}
          value={YEAR_DAYS.indexOf(day)}
          aria-valuetext={dayWords(day)}
          onChange={(event) => setDay(YEAR_DAYS[Number(event.target.value)] ?? day)}
        />
      </span>
      <span className="moment-turns">
        {TURNS.map(({ on, name }) => (
          <button
            key={on}
            type="button"
            className="link"
            style={{ left: place(on) }}
            aria-label={`${told(name)}, ${shortDay(on)}`}
            title={told(name)}
            onClick={() => setDay(on)}
          >
            {shortDay(on)}
          </button>
        ))}
      </span>
    </div>
  );
}

const place = (day: string): string => `${(100 * YEAR_DAYS.indexOf(day)) / LAST}%`;
