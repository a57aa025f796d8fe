import { type BedSun, formatHours, type ItemId, type Limits } from "../../../src/index.ts";
import { DayBar } from "./DayBar.tsx";
import { StandingMark } from "./StandingMark.tsx";
import { shadeWords } from "./shade-words.ts";
import { standingOf, standingWords } from "./sun-standing.ts";

interface Props {
  readonly sun: BedSun;
  readonly name: string;
  readonly limits: Pick<Limits, "sun" | "sunLeast">;
  readonly selected: boolean;
  /** Hours the bars stand for. */
  readonly whole: number;
  readonly nameOf: (id: ItemId) => string | null;
  readonly onShow: () => void;
}

/** One bed: its hours, how they stand, when in the day they come, its worst corner, what takes sun from it. */
export function BedSunEntry({ sun, name, limits, selected, whole, nameOf, onShow }: Props) {
  const standing = standingOf(sun.hours, limits);
  return (
    <li className="bed-sun" data-active={selected}>
      <StandingMark standing={standing} />
      <div className="bed-sun-body">
        <h3>
          <button type="button" className="snag-title" aria-pressed={selected} onClick={onShow}>
            {name}
          </button>
          <span className="bed-hours">{formatHours(sun.hours)} a day</span>
        </h3>
        <p className="bed-standing">
          <strong>{standingWords(standing, limits)}</strong>
          <span>worst corner {formatHours(sun.worst.hours)}</span>
        </p>
        <DayBar parts={sun.parts} whole={whole} wanted={limits.sun} />
        {sun.shade ? <p className="bed-shade">{shadeWords(sun.shade, nameOf)}</p> : null}
      </div>
    </li>
  );
}
