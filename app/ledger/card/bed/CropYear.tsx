import { useId } from "react";
import {
  frostsOf,
  MONTH_NAMES,
  type PlantedPatch,
  type Site,
  type Standing,
  say,
} from "../../../../src/index.ts";
import { useMoment } from "../../../moment/moment.ts";
import { dayOfYear, YEAR_DAYS } from "../../../moment/year-days.ts";
import { cropTitle } from "../../../planting/crop-words.ts";
import { yearDayWords } from "../../../planting/day-words.ts";
import { showDay, useShownDay } from "../../../planting/shown-day.ts";
import { DAYS, fullestDay } from "../../../planting/standing-on.ts";

interface Props {
  readonly patches: readonly PlantedPatch[];
  readonly site: Site;
}

/** Where each month begins in the year, days. */
const MONTHS = MONTH_NAMES.map((name, i) => ({
  letter: name.charAt(0),
  at: YEAR_DAYS.indexOf(dayOfYear(i + 1, 1)),
}));

const part = (days: number): string => `${(100 * days) / DAYS}%`;

/** Which crop stands when: a strip of the year for each, what follows what at a glance, and the day that the plan shows. */
export function CropYear({ patches, site }: Props) {
  const { last, first } = frostsOf(site);
  return (
    <div className="crop-year">
      <div className="crop-year-months" aria-hidden="true">
        {MONTHS.map(({ letter, at }, i) => (
          <span key={at} style={{ left: part(at), width: part((MONTHS[i + 1]?.at ?? DAYS) - at) }}>
            {letter}
          </span>
        ))}
      </div>
      <div className="crop-year-rows" aria-hidden="true">
        {[last, first].map((day) => (
          <i key={day} className="crop-year-frost" style={{ left: part(day - 1) }} />
        ))}
        {patches.map(({ index, crop, standing }) => (
          <div key={index} className="crop-year-row">
            {stretches(standing).map(({ from, days, picking }) => (
              <span
                key={`${from} ${picking}`}
                data-picking={picking}
                style={{ left: part(from - 1), width: part(days) }}
              />
            ))}
            <b className="crop-year-name" style={nameAt(standing)}>
              {cropTitle(crop)}
            </b>
          </div>
        ))}
      </div>
      <DayField patches={patches} />
      <p className="crop-year-key">{say`Open: growing. Filled: ready to pick. Dashed: last frost ${yearDayWords(last)}, first frost ${yearDayWords(first)}.`}</p>
    </div>
  );
}

interface Stretch {
  readonly from: number;
  readonly days: number;
  readonly picking: boolean;
}

/** The stretches of the year a planting stands in: growing, then ready; each parted at new year. */
function stretches({ from, days, pickFrom }: Standing): readonly Stretch[] {
  const growing = Math.min(days, (((pickFrom - from) % DAYS) + DAYS) % DAYS);
  return [
    ...parted(from, growing).map((stretch) => ({ ...stretch, picking: false })),
    ...parted(from + growing, days - growing).map((stretch) => ({ ...stretch, picking: true })),
  ];
}

function parted(first: number, days: number): readonly { readonly from: number; readonly days: number }[] {
  if (days <= 0) return [];
  const from = ((first - 1) % DAYS) + 1;
  const over = from + days - 1 - DAYS;
  return over <= 0
    ? [{ from, days }]
    : [
        { from, days: days - over },
        { from: 1, days: over },
      ];
}

/** The name begins with its strip, or ends before it where the strip begins late in the year. */
const nameAt = ({ from }: Standing) =>
  from <= DAYS * 0.6 ? { left: part(from - 1) } : { right: part(DAYS - from + 1) };

/** The day whose crops are on the plan; each bed's own fullest day unless one is chosen. */
function DayField({ patches }: { readonly patches: readonly PlantedPatch[] }) {
  const id = useId();
  const chosen = useShownDay((s) => s.day);
  const bySun = useMoment((s) => s.open);
  if (bySun) return <p className="crop-year-key">{say`The plan shows the day of the Sun leaf.`}</p>;
  const day = chosen ?? fullestDay(patches) ?? 1;
  const words = yearDayWords(day);
  return (
    <div className="crop-year-day">
      <label htmlFor={id}>{say`On the plan`}</label>
      <span>
        <strong>{words}</strong>
        {chosen === null ? ` ${say`when most is planted`}` : null}
        {chosen === null ? null : (
          <button
            type="button"
            className="link"
            onClick={() => showDay(null)}
          >{say`When most is planted`}</button>
        )}
      </span>
      <input
        id={id}
        type="range"
        min={1}
        max={DAYS}
        value={day}
        aria-valuetext={words}
        onChange={({ target }) => showDay(Number(target.value))}
      />
    </div>
  );
}
