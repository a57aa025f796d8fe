import { useEffect, useRef } from "react";
import {
  type BedSun,
  type DayHours,
  formatHours,
  type ItemId,
  type ItemOf,
  type Limits,
  nameOf,
  say,
} from "../../../src/index.ts";
import { dayWords } from "../../moment/year-days.ts";
import { BedYear } from "./BedYear.tsx";
import { BestPlaceFor } from "./BestPlaceFor.tsx";
import { DayBar } from "./DayBar.tsx";
import { StandingMark } from "./StandingMark.tsx";
import { shadeWords } from "./shade-words.ts";
import { standingOf, standingWords } from "./sun-standing.ts";
import { useSeen } from "./use-seen.ts";

interface Props {
  readonly sun: BedSun;
  readonly bed: ItemOf<"bed">;
  /** Its hours where it is under the hand now; the map follows. */
  readonly hours: number;
  readonly limits: Pick<Limits, "sun" | "sunLeast">;
  readonly selected: boolean;
  /** Hours the bars stand for. */
  readonly whole: number;
  readonly nameOf: (id: ItemId) => string | null;
  readonly onShow: () => void;
}

/**
 * One bed: its hours, how they stand, when in the day and the season they come, what takes sun from it. The one that is
 * selected tells more: the whole year, and the best place for it.
 */
export function BedSunEntry({ sun, bed, hours, limits, selected, whole, nameOf: named, onShow }: Props) {
  const row = useRef<HTMLLIElement>(null);
  const seen = useSeen(row);
  useEffect(() => {
    if (selected) row.current?.scrollIntoView({ block: "nearest" });
  }, [selected]);
  const standing = standingOf(hours, limits);
  return (
    <li ref={row} className="bed-sun" data-active={selected}>
      <StandingMark standing={standing} />
      <div className="bed-sun-body">
        <h3>
          <button type="button" className="snag-title" aria-pressed={selected} onClick={onShow}>
            {nameOf(bed)}
          </button>
          <span className="bed-hours">{say`${formatHours(hours)} a day`}</span>
        </h3>
        <p className="bed-standing">
          <strong>{standingWords(standing, limits)}</strong>
          <span>{say`worst corner ${formatHours(sun.worst.hours)}`}</span>
        </p>
        <DayBar parts={sun.parts} whole={whole} wanted={limits.sun} />
        {sun.shade ? <p className="bed-shade">{shadeWords(sun.shade, named)}</p> : null}
        <BedYear id={bed.id} wanted={seen || selected} whole={selected} />
        {selected ? (
          <>
            <p className="bed-shade">{say`Best day ${dayHours(sun.bestDay)}, worst ${dayHours(sun.worstDay)}.`}</p>
            <BestPlaceFor bed={bed} />
          </>
        ) : null}
      </div>
    </li>
  );
}

/** "21 June with 9.1 h". */
const dayHours = ({ day, hours }: DayHours): string => say`${dayWords(day)} with ${formatHours(hours)}`;
