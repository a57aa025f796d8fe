import {
  type BedWaterYear,
  capital,
  EFFICIENCY,
  formatWater,
  type ItemOf,
  nameOf,
  say,
  type Units,
} from "../../../src/index.ts";
import { guessWords } from "../../climate/guess-words.ts";
import { useEditor } from "../../store/use-editor.ts";
import { WaterBars } from "./WaterBars.tsx";
import { aWeek, everyWords, stepsOf, waterDepth } from "./water-words.ts";

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly year: BedWaterYear;
  readonly month: number;
  readonly whole: number;
  readonly units: Units;
}

/** One bed: what it asks in a week of the month, how often, its year, and how the figure came about. */
export function BedWaterEntry({ bed, year, month, whole, units }: Props) {
  const selected = useEditor((s) => s.selection.has(bed.id));
  const litres = year.litresAWeek[month]!;
  return (
    <li className="bed-water" data-active={selected}>
      <h4>
        <button
          type="button"
          className="snag-title"
          aria-pressed={selected}
          onClick={() => useEditor.getState().select([bed.id])}
        >
          {nameOf(bed)}
        </button>
        <span className="water-figure">{say`${formatWater(litres, units)} a week`}</span>
      </h4>
      <p className="water-words">{monthWords(year, month, units)}</p>
      <WaterBars
        litresAWeek={year.litresAWeek}
        whole={whole}
        month={month}
        units={units}
        name={nameOf(bed)}
      />
      <HowItCame bed={bed} year={year} month={month} units={units} />
    </li>
  );
}

function monthWords({ months, litresAWeek }: BedWaterYear, month: number, units: Units): string {
  if (!months)
    return litresAWeek[month]
      ? say`By the rule of thumb.`
      : say`Nothing grows in it, or frost has it at rest.`;
  const { need, cropEt, effectiveRain, everyDays } = months[month]!;
  if (cropEt === 0) return say`Nothing grows in it.`;
  const [given, served] = [need, effectiveRain].map((mm) => waterDepth(aWeek(mm, month), units)) as [
    string,
    string,
  ];
  if (need === 0 || everyDays === null)
    return say`Rain is enough: ${served} of it serve the crops in a week.`;
  return say`${given} in a week, ${everyWords(everyDays)}; rain adds ${served}.`;
}

function HowItCame({ bed, year, month, units }: Omit<Props, "whole">) {
  const need = year.months?.[month];
  const { by } = bed.watering;
  return (
    <details className="water-how">
      <summary>{say`How it came about`}</summary>
      {need ? (
        <dl>
          {stepsOf(need, month, year, EFFICIENCY[by].share, units).map(({ what, figure }) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{figure}</dd>
            </div>
          ))}
        </dl>
      ) : null}
      {year.guessed.length > 0 ? (
        <p>{say`Guessed where the climate does not tell: ${guessWords(year.guessed)}.`}</p>
      ) : null}
      <ul>
        {year.sources.map(({ text }) => (
          <li key={text}>{capital(text)}</li>
        ))}
      </ul>
    </details>
  );
}
